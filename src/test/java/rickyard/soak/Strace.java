package rickyard.soak;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The system's call tracer as a way to stop a program, or to fail it, at one of its calls. */
final class Strace {
  /** Calls by which something on the disk changes or is made to last. */
  static final List<String> CALLS =
      List.of(
          "write",
          "pwrite64",
          "fsync",
          "fdatasync",
          "rename",
          "renameat",
          "renameat2",
          "unlink",
          "unlinkat",
          "ftruncate");

  private static final Pattern CALL = Pattern.compile("([0-9]+) +([a-z0-9_]+)\\(.*");

  private final Path office;
  private final SortedSet<String> paths = new TreeSet<>();

  /** Most calls of one thread, by call. */
  private final SortedMap<String, Integer> calls = new TreeMap<>();

  private int all;

  private Strace(Path office) {
    this.office = office.toAbsolutePath();
  }

  /** Whether the tracer is installed and may trace. */
  static boolean isHere() {
    try {
      Process process =
          new ProcessBuilder("strace", "-f", "-o", "/dev/null", "true")
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Knows the paths already, relative to the office. */
  static Strace of(Path office, List<String> paths) {
    Strace strace = new Strace(office);
    paths.forEach(path -> strace.paths.add(strace.office.resolve(path).toString()));
    return strace;
  }

  /** Runs a command over an office once and notes every path below it that it writes. */
  static Strace learn(Path office, Launch command, Path log)
      throws IOException, InterruptedException {
    Strace strace = new Strace(office);
    Path trace = log.resolveSibling("trace.txt");
    List<String> words = List.of("strace", "-f", "-y", "-s", "0", "-o", trace.toString());
    List<String> all = new ArrayList<>(words);
    all.addAll(List.of("-e", "trace=" + String.join(",", CALLS)));
    if (command.under(all).run(log).status() != 0) {
      throw new IllegalStateException("the traced run failed: " + Files.readString(log));
    }
    strace.read(trace);
    return strace;
  }

  private void read(Path trace) throws IOException {
    Pattern path = Pattern.compile("[<\"](" + Pattern.quote(office.toString()) + "/[^>\"]*)[>\"]");
    Map<String, Integer> byThread = new TreeMap<>();
    try (Stream<String> lines = Files.lines(trace)) {
      for (String line : (Iterable<String>) lines::iterator) {
        Matcher call = CALL.matcher(line);
        Matcher found = path.matcher(line);
        boolean ours = false;
        while (found.find()) {
          paths.add(found.group(1));
          ours = true;
        }
        if (ours && call.matches()) {
          all++;
          int nth = byThread.merge(call.group(1) + " " + call.group(2), 1, Integer::sum);
          calls.merge(call.group(2), nth, Math::max);
        }
      }
    }
  }

  /** How often the busiest thread made each call below the office. */
  SortedMap<String, Integer> calls() {
    return calls;
  }

  /** Calls of all threads together. */
  int all() {
    return all;
  }

  /**
   * Words to put before a command so that something happens at a call below the office.
   *
   * @param call the call
   * @param what {@code signal=SIGKILL} or {@code error=ENOSPC}
   * @param when the number of the call within its thread, with {@code +} from then on
   * @param trace where it is noted
   */
  List<String> at(String call, String what, String when, Path trace) {
    List<String> words = new ArrayList<>(List.of("strace", "-f", "-s", "0"));
    if (!what.startsWith("signal")) {
      // Looks only at the calls asked for, which is quicker; signals get lost that way.
      words.add("--seccomp-bpf");
    }
    words.add("-o");
    words.add(trace.toString());
    for (String path : paths) {
      words.add("-P");
      words.add(path);
    }
    words.add("-e");
    words.add("trace=" + call);
    words.add("-e");
    words.add("inject=" + call + ":" + what + ":when=" + when);
    return words;
  }
}
