package rickyard.soak;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import rickyard.BuiltJar;

/**
 * Rounds of one morning, interrupted up to five times and then left to end by itself.
 *
 * <p>Every fourth round crosses midnight: it is started without a date, and after the first
 * interruption the clock shows the next day.
 */
final class Interruptions {
  private static final int MOST_PER_ROUND = 5;
  private static final double SHARE_WHILE_PUBLISHING = 0.65;

  private final Path folder;
  private final boolean polite;
  private final Random random;
  private final Tally tally;
  private final Path made;
  private final Path log;
  private final Outcome today;
  private final Outcome tomorrow;
  private final Outcome bothDays;
  private final long usualMillis;

  /**
   * Runs the mornings that everything is compared with.
   *
   * @param made the office, copied for each round
   * @param polite whether runs are asked to end (SIGTERM) instead of killed
   */
  Interruptions(Path folder, Path made, boolean polite, long seed, Tally tally)
      throws IOException, InterruptedException {
    this.folder = folder;
    this.polite = polite;
    this.random = new Random(seed);
    this.tally = tally;
    this.made = made;
    this.log = folder.resolve("log.txt");
    Path office = fresh("whole");
    long start = System.nanoTime();
    require(Launch.morning(office, SoakOffice.DAY).run(log));
    this.usualMillis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    this.today = Outcome.of(office);
    require(Launch.morning(office, SoakOffice.NEXT_DAY).run(log));
    this.bothDays = Outcome.of(office);
    Path other = fresh("tomorrow");
    require(Launch.morning(other, SoakOffice.NEXT_DAY).run(log));
    this.tomorrow = Outcome.of(other);
  }

  private Path fresh(String name) throws IOException {
    Path office = folder.resolve(name);
    BuiltJar.copy(made, office);
    return office;
  }

  private static void require(BuiltJar.Ended ended) {
    if (ended.status() != 0) {
      throw new IllegalStateException("ended with " + ended.status() + ": " + ended.output());
    }
  }

  /** Goes on until enough interruptions have landed. */
  void run(int wanted) throws IOException, InterruptedException {
    for (int round = 1; tally.count("landed") < wanted; round++) {
      Path office = fresh("round");
      if (round % 4 == 0) {
        acrossMidnight(office, "round " + round);
      } else {
        sameDay(office, "round " + round);
      }
      tally.add("rounds");
      tally.write();
      remove(office);
    }
  }

  private void sameDay(Path office, String name) throws IOException, InterruptedException {
    Launch command = Launch.morning(office, SoakOffice.DAY);
    int most = 1 + random.nextInt(MOST_PER_ROUND);
    for (int nth = 1; nth <= most && interrupt(command, office, nth, name); nth++) {
      tally.complain("torn", name, today.torn(office));
    }
    finish(command, office, name, List.of(today));
    Map<String, String> before = Outcome.stamps(office);
    BuiltJar.Ended again = command.run(log);
    boolean said = again.status() == 0 && again.output().contains("Nothing is new");
    tally.complain("a rerun not saying so", name, said ? List.of() : List.of(again.output()));
    boolean same = before.equals(Outcome.stamps(office));
    tally.complain("changed by a rerun", name, same ? List.of() : List.of("outputs"));
  }

  private void acrossMidnight(Path office, String name) throws IOException, InterruptedException {
    tally.add("rounds across midnight");
    Launch before = Launch.undated(office, SoakOffice.DAY);
    Launch after = Launch.undated(office, SoakOffice.NEXT_DAY);
    int most = 1 + random.nextInt(MOST_PER_ROUND);
    for (int nth = 1; nth <= most; nth++) {
      if (!interrupt(nth == 1 ? before : after, office, nth, name)) {
        break;
      }
      tally.complain("torn", name, bothDays.torn(office).isEmpty() ? List.of() : torn(office));
    }
    // Begun and not finished: under its own date. Finished, or not begun: the new day's.
    finish(after, office, name, List.of(today, tomorrow, bothDays));
    boolean resumed = today.differences(office).isEmpty();
    tally.add(resumed ? "resumed under the day before" : "made under the new day");
    BuiltJar.Ended again = after.run(log);
    boolean whole =
        again.status() == 0
            && (bothDays.differences(office).isEmpty() || tomorrow.differences(office).isEmpty());
    tally.complain("the new day after it different", name, whole ? List.of() : List.of("outputs"));
  }

  private List<String> torn(Path office) throws IOException {
    List<String> torn = new ArrayList<>(tomorrow.torn(office));
    torn.retainAll(bothDays.torn(office));
    return torn;
  }

  /** Whether it landed: a run that ended first was not interrupted. */
  private boolean interrupt(Launch command, Path office, int nth, String name)
      throws IOException, InterruptedException {
    Moment moment =
        random.nextDouble() < SHARE_WHILE_PUBLISHING
            ? Moment.whilePublishing(random, SoakOffice.out(office), today.outputs())
            : Moment.anywhere(random, nth == 1 ? usualMillis : usualMillis / 2);
    boolean alone = !polite && random.nextInt(3) == 0;
    Process run = command.start(log);
    if (!moment.await(run)) {
      run.waitFor();
      tally.add("ended before the moment");
      return false;
    }
    Victim victim = new Victim(run);
    long start = System.nanoTime();
    if (polite) {
      victim.ask();
    } else {
      victim.kill(!alone);
    }
    tally.complain("processes left", name, victim.waitForAll());
    long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    tally.most("longest time to the end, ms", millis);
    if (run.exitValue() == 0) {
      tally.add("ended before the moment");
      return false;
    }
    note(office, nth, alone);
    return true;
  }

  private void note(Path office, int nth, boolean alone) throws IOException {
    tally.add("landed");
    tally.add("landed while outputs were partly written", isPartlyWritten(office) ? 1 : 0);
    tally.add("landed in a run that recovered", nth > 1 ? 1 : 0);
    tally.add("landed on the parent alone", alone ? 1 : 0);
    List<String> lines = Files.readAllLines(log);
    String stage = lines.isEmpty() ? "start" : lines.get(lines.size() - 1).split(" ", 2)[0];
    tally.add("landed after '" + stage + "'");
  }

  /** A morning has some outputs but not the mark that all are there, or a temporary name. */
  private static boolean isPartlyWritten(Path office) throws IOException {
    for (String day : List.of(SoakOffice.DAY, SoakOffice.NEXT_DAY)) {
      Path out = office.resolve("mornings").resolve(day);
      boolean whole = Files.exists(out.resolve("run.json"));
      if (Moment.count(out) > 0 && (!whole || hasTemporary(out))) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasTemporary(Path out) throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      return files.anyMatch(f -> Outcome.isTemporary(f.toString()));
    }
  }

  private void finish(Launch command, Path office, String name, List<Outcome> allowed)
      throws IOException, InterruptedException {
    BuiltJar.Ended ended = command.run(log);
    tally.complain(
        "not ended well", name, ended.status() == 0 ? List.of() : List.of(ended.output()));
    List<String> different = allowed.get(0).differences(office);
    for (Outcome outcome : allowed) {
      if (outcome.differences(office).isEmpty()) {
        different = List.of();
      }
    }
    tally.complain("different", name, different);
    tally.add("files compared", allowed.get(0).paths().size());
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
