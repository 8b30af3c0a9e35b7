package rickyard.soak;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import rickyard.BuiltJar;
import rickyard.report.Outputs;

/**
 * One command line that starts the built program, to be started any number of times.
 *
 * @param words the command
 */
record Launch(List<String> words) {
  /** Which families are written: less makes a soak quicker, all are published the same way. */
  static final String OUTPUTS =
      System.getProperty("rickyard.soak.outputs", String.join(",", Outputs.ALL));

  private static final long PATIENCE_SECONDS = 600;

  Launch {
    words = List.copyOf(words);
  }

  /** {@code morning OFFICE --as-of DATE}, one document at a time read by one child. */
  static Launch morning(Path office, String asOf) {
    return morning(office, asOf, 1);
  }

  /** The same with several documents read at a time. */
  static Launch morning(Path office, String asOf, int workers) {
    List<String> words = new ArrayList<>(java());
    words.addAll(List.of("-jar", BuiltJar.path().toString()));
    words.addAll(List.of("morning", office.toAbsolutePath().toString(), "--as-of", asOf));
    words.addAll(List.of("--workers", String.valueOf(workers), "--outputs", OUTPUTS));
    return new Launch(words);
  }

  /** A morning without {@code --as-of} on a machine whose clock shows a date. */
  static Launch undated(Path office, String today) {
    List<String> words = new ArrayList<>(java());
    String classPath =
        BuiltJar.path() + File.pathSeparator + Path.of("target", "test-classes").toAbsolutePath();
    words.addAll(List.of("-cp", classPath, OtherDay.class.getName()));
    words.addAll(List.of(office.toAbsolutePath().toString(), today, OUTPUTS));
    return new Launch(words);
  }

  private static List<String> java() {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(BuiltJar.quick());
    return words;
  }

  /** The same command with another program in front of it. */
  Launch under(List<String> other) {
    List<String> all = new ArrayList<>(other);
    all.addAll(words);
    return new Launch(all);
  }

  /** The same command with more for the virtual machine. */
  Launch with(String... machine) {
    List<String> all = new ArrayList<>(words.subList(0, 1));
    all.addAll(List.of(machine));
    all.addAll(words.subList(1, words.size()));
    return new Launch(all);
  }

  Process start(Path log) throws IOException {
    return new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(log.toFile()).start();
  }

  /** Runs it to its end; one that does not come to its end in ten minutes is a failure. */
  BuiltJar.Ended run(Path log) throws IOException, InterruptedException {
    Process process = start(log);
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly().waitFor();
      return new BuiltJar.Ended(-1, "did not end: " + Files.readString(log));
    }
    return new BuiltJar.Ended(process.exitValue(), Files.readString(log));
  }
}
