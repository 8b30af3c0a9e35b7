package rickyard.intake.isolate;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * How a child is started.
 *
 * @param program the program to start
 * @param classPath where the child finds its classes
 * @param heapMib its heap, MiB
 */
record ChildCommand(Path program, String classPath, int heapMib) {

  /** Where the launcher says that its archive of loaded classes lies. */
  private static final String ARCHIVE = "rickyard.classes";

  /** All that a child gets to know of the environment: what programs need to be found and run. */
  private static final Set<String> ENVIRONMENT =
      Set.of(
          "PATH",
          "PATHEXT",
          "SYSTEMROOT",
          "WINDIR",
          "LD_LIBRARY_PATH",
          "TMPDIR",
          "TEMP",
          "TMP",
          "TESSDATA_PREFIX");

  /** The Java and the classes of this very process. */
  static ChildCommand ofThisProcess() {
    Path bin = Path.of(System.getProperty("java.home"), "bin");
    Path windows = bin.resolve("java.exe");
    return new ChildCommand(
        Files.exists(windows) ? windows : bin.resolve("java"),
        System.getProperty("java.class.path"),
        ProcessLimits.DEFAULT.heapMib());
  }

  ChildCommand withHeap(int mib) {
    return new ChildCommand(program, classPath, mib);
  }

  ProcessBuilder builder() {
    ProcessBuilder builder = new ProcessBuilder(words());
    Map<String, String> all = new TreeMap<>(builder.environment());
    builder.environment().clear();
    all.forEach(
        (name, value) -> {
          if (ENVIRONMENT.contains(name.toUpperCase(Locale.ROOT))) {
            builder.environment().put(name, value);
          }
        });
    return builder;
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    words.add(program.toString());
    words.add("-Xmx" + heapMib + "m");
    // A small machine that starts quickly and gives up at once when memory is used up.
    words.addAll(
        List.of(
            "-XX:+UseSerialGC",
            "-Xshare:auto",
            "-XX:MaxDirectMemorySize=64m",
            "-XX:MaxMetaspaceSize=128m",
            "-XX:+ExitOnOutOfMemoryError"));
    if (heapMib <= ProcessLimits.DEFAULT.heapMib()) {
      // Quick to start; a child for one large file is better off with the full compiler.
      words.add("-XX:TieredStopAtLevel=1");
    }
    // No file and no line of the machine's own: not in the folder, not among the answers.
    words.addAll(
        List.of(
            "-XX:-UsePerfData",
            "-XX:+SuppressFatalErrorMessage",
            "-XX:+DisplayVMOutputToStderr",
            "-Djava.awt.headless=true",
            "-Dfile.encoding=UTF-8"));
    // The archive of loaded classes that the launcher has made: the child starts from it as well.
    Optional.ofNullable(System.getProperty(ARCHIVE))
        .ifPresent(
            archive ->
                words.addAll(
                    List.of(
                        "-Xlog:disable",
                        "-Xlog:all=error,cds*=off:stderr",
                        "-XX:SharedArchiveFile=" + archive)));
    words.addAll(
        List.of(
            "-cp",
            classPath,
            ReadingChild.class.getName(),
            String.valueOf(ProcessHandle.current().pid())));
    return words;
  }
}
