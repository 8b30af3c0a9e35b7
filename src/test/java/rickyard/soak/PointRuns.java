package rickyard.soak;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import rickyard.BuiltJar;

/** Mornings of one office, each hit at one point and then run again without harm. */
final class PointRuns {
  private static final int KILLED = 128 + 9;

  private final Path made;
  private final Path office;
  private final Path log;
  private final Path trace;
  private final Launch command;
  private final Outcome whole;
  private final Strace strace;
  private final Tally tally;

  /** Makes the run that all are compared with, and another that shows the points. */
  PointRuns(Path folder, Path made, Tally tally) throws IOException, InterruptedException {
    this.made = made;
    this.office = folder.resolve("office").toAbsolutePath();
    this.log = folder.resolve("log.txt");
    this.trace = folder.resolve("hit.txt");
    this.command = Launch.morning(office, SoakOffice.DAY);
    this.tally = tally;
    fresh();
    BuiltJar.Ended ended = command.run(log);
    if (ended.status() != 0) {
      throw new IllegalStateException(ended.output());
    }
    this.whole = Outcome.of(office);
    fresh();
    this.strace = Strace.learn(office, command, log);
    tally.complain("the traced run different", "", whole.differences(office));
    tally.add("calls of one run below the office, all threads", strace.all());
  }

  Strace strace() {
    return strace;
  }

  private void fresh() throws IOException {
    if (Files.exists(office)) {
      try (Stream<Path> files = Files.walk(office)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
    BuiltJar.copy(made, office);
  }

  private BuiltJar.Ended hit(Point point) throws IOException, InterruptedException {
    fresh();
    return command.under(strace.at(point.call(), point.what(), point.when(), trace)).run(log);
  }

  void killAt(List<Point> points) throws IOException, InterruptedException {
    tally.add("points", points.size());
    for (Point point : points) {
      int status = hit(point).status();
      if (status == KILLED) {
        tally.add("landed");
        tally.add("landed at " + point.call());
        tally.complain("torn", point.toString(), whole.torn(office));
        runAgain(point);
      } else {
        tally.add("not reached");
        tally.complain(
            "ended badly without a kill", point.toString(), status == 0 ? List.of() : said());
      }
      tally.write();
    }
  }

  void failAt(List<Point> points) throws IOException, InterruptedException {
    tally.add("points", points.size());
    for (Point point : points) {
      BuiltJar.Ended ended = hit(point);
      if (!Files.readString(trace).contains("(INJECTED)")) {
        tally.add("not reached");
        continue;
      }
      tally.add("landed");
      tally.add("landed at " + point.call());
      tally.complain("torn", point.toString(), whole.torn(office));
      if (ended.status() == 0) {
        tally.add("ended with success");
        tally.complain(
            "success with differing outputs", point.toString(), whole.differences(office));
      } else {
        tally.add("ended with status " + ended.status());
        boolean plain = ended.output().contains("rickyard: ") && !ended.output().contains("\tat ");
        tally.complain("not said in one sentence", point.toString(), plain ? List.of() : said());
      }
      runAgain(point);
      tally.write();
    }
  }

  private void runAgain(Point point) throws IOException, InterruptedException {
    BuiltJar.Ended ended = command.run(log);
    tally.complain(
        "the next run not ended well", point.toString(), ended.status() == 0 ? List.of() : said());
    tally.complain("different", point.toString(), whole.differences(office));
  }

  private List<String> said() throws IOException {
    return Files.readAllLines(log);
  }
}
