package rickyard.bench;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * docs/benchmarks.md.
 *
 * @param times how often each thing was run
 * @param parts which comparisons were made
 * @param load how busy the machine was before, processes that wanted a core
 */
record BenchPage(int times, Set<String> parts, double load) {

  static BenchPage of(int times, Set<String> parts) {
    double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    return new BenchPage(times, Set.copyOf(parts), load);
  }

  String text(List<Comparison> time, List<Comparison> growth, List<Comparison> memory) {
    StringBuilder page = new StringBuilder("# Benchmarks\n\n");
    page.append(
        "Written by `mvn -P bench verify`. Each line is measured as whole processes, start and end"
            + " included, ours by the launcher of the package with its archive of loaded classes;"
            + " both sides in turns, the middle of "
            + (times == 1 ? "one run" : times + " runs")
            + ". Processor time is user and system time of all processes of a run. No test depends"
            + " on a time.\n\n");
    page.append(machine());
    if (!time.isEmpty()) {
      page.append(
          "\n| what, and what with | ours | other | ratio | aim | ours, processor | other,"
              + " processor | ratio |\n|---|---|---|---|---|---|---|---|\n");
      time.forEach(c -> page.append(c.row()).append('\n'));
    }
    if (!growth.isEmpty()) {
      page.append(
          "\n## Growth\n\n| what, and what with | larger | smaller | ratio | aim | larger,"
              + " processor | smaller, processor | ratio |\n|---|---|---|---|---|---|---|---|\n");
      growth.forEach(c -> page.append(c.row()).append('\n'));
    }
    if (!memory.isEmpty()) {
      page.append(
          "\n| most memory of all processes | larger | smaller | ratio | aim |\n"
              + "|---|---|---|---|---|\n");
      memory.forEach(c -> page.append(c.memory(1.3)).append('\n'));
    }
    return page.toString();
  }

  private String machine() {
    Runtime java = Runtime.getRuntime();
    long mib =
        ManagementFactory.getOperatingSystemMXBean()
                instanceof com.sun.management.OperatingSystemMXBean system
            ? system.getTotalMemorySize() >> 20
            : 0;
    String busy =
        load > java.availableProcessors() / 2.0
            ? String.format(
                Locale.ROOT,
                " **The machine was busy with other work (%.1f processes wanted a core before it"
                    + " began): times on the wall say little, ratios are rough.**",
                load)
            : "";
    String few = times < 5 ? " **Fewer than five runs each.**" : "";
    String some = parts.size() < 4 ? " **Not all comparisons were made: " + sorted() + ".**" : "";
    return String.format(
        Locale.ROOT,
        "Machine: %d cores, %,d MiB, %s %s, Java %s.%s%s%s%n",
        java.availableProcessors(),
        mib,
        System.getProperty("os.name"),
        System.getProperty("os.arch"),
        Runtime.version(),
        busy,
        few,
        some);
  }

  private String sorted() {
    return String.join(", ", parts.stream().sorted().toList());
  }
}
