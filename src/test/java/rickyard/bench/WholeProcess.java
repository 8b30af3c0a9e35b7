package rickyard.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A program started, awaited and measured from outside, with everything that it starts itself. */
final class WholeProcess {
  private static final long LOOK_MILLIS = 50;
  private static final Pattern TIMES = Pattern.compile("(\\d+)m([0-9.]+)s (\\d+)m([0-9.]+)s");

  /**
   * What one run cost.
   *
   * @param seconds on the wall
   * @param computing seconds of processor time, user and system, of all its processes
   * @param peakMib the most memory that its processes held, each at its own peak, added up; 0 where
   *     the system does not tell
   * @param output what it printed
   */
  record Cost(double seconds, double computing, long peakMib, String output) {}

  private final Map<String, String> environment;

  WholeProcess(Map<String, String> environment) {
    this.environment = new TreeMap<>(environment);
  }

  /** Runs a command to its end; one that fails stops the benchmark. */
  Cost run(List<String> command) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of("sh", "-c", "\"$@\"; s=$?; times; exit $s", "sh"));
    words.addAll(command);
    Path said = Files.createTempFile("bench", ".txt");
    try {
      ProcessBuilder builder =
          new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(said.toFile());
      builder.environment().putAll(environment);
      long begun = System.nanoTime();
      Process process = builder.start();
      Map<Long, Long> peaks = new TreeMap<>();
      while (!process.waitFor(LOOK_MILLIS, TimeUnit.MILLISECONDS)) {
        look(process, peaks);
      }
      double seconds = (System.nanoTime() - begun) / 1e9;
      String output = Files.readString(said, StandardCharsets.UTF_8);
      if (process.exitValue() != 0) {
        throw new IOException("a measured run failed: " + output);
      }
      long kib = peaks.values().stream().mapToLong(Long::longValue).sum();
      return new Cost(seconds, computing(output), kib >> 10, output);
    } finally {
      Files.delete(said);
    }
  }

  /** The last line of the shell's {@code times}: user and system time of its children. */
  private static double computing(String output) {
    Matcher found = TIMES.matcher(output);
    double seconds = 0;
    while (found.find()) {
      seconds =
          60 * Integer.parseInt(found.group(1))
              + Double.parseDouble(found.group(2))
              + 60 * Integer.parseInt(found.group(3))
              + Double.parseDouble(found.group(4));
    }
    return seconds;
  }

  private static void look(Process process, Map<Long, Long> peaks) {
    process
        .descendants()
        .forEach(child -> peakKib(child.pid(), peaks.getOrDefault(child.pid(), 0L), peaks));
  }

  private static void peakKib(long pid, long before, Map<Long, Long> peaks) {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
          .findFirst()
          .ifPresent(kib -> peaks.put(pid, Math.max(before, kib)));
    } catch (IOException | RuntimeException gone) {
      // It has ended, or the system keeps no such file: what was seen until now counts.
      return;
    }
  }

  /** The middle of several figures. */
  static double median(List<Double> figures) {
    List<Double> sorted = figures.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }

  static String seconds(double seconds) {
    return String.format(Locale.ROOT, seconds < 0.1 ? "%.4f s" : "%.2f s", seconds);
  }
}
