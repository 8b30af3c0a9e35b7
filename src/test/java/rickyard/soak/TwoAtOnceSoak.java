package rickyard.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;

/** Two copies of one command started at once: one works, the other says so and ends with 3. */
class TwoAtOnceSoak {
  private static final String SENT_AWAY = "Another run holds this office";

  @Test
  void oneWorksAndTheOtherIsSentAway(@TempDir Path folder) throws Exception {
    int wanted = Integer.getInteger("rickyard.soak.pairs", 30);
    Tally tally = new Tally("two-at-once");
    Path made = SoakOffice.three(folder.resolve("made"));
    Path office = folder.resolve("whole");
    BuiltJar.copy(made, office);
    assertEquals(0, Launch.morning(office, SoakOffice.DAY).run(folder.resolve("log.txt")).status());
    Outcome whole = Outcome.of(office);
    for (int pair = 1; pair <= wanted; pair++) {
      Path shared = folder.resolve("pair" + pair);
      BuiltJar.copy(made, shared);
      startTwo(shared, folder, "pair " + pair, tally);
      tally.complain("different", "pair " + pair, whole.differences(shared));
      tally.write();
    }
    assertEquals(List.of(), tally.complaints());
  }

  private static void startTwo(Path office, Path folder, String name, Tally tally)
      throws IOException, InterruptedException {
    Launch command = Launch.morning(office, SoakOffice.DAY);
    Process one = command.start(folder.resolve("one.txt"));
    Process two = command.start(folder.resolve("two.txt"));
    int first = one.waitFor();
    int second = two.waitFor();
    tally.add("pairs");
    boolean apart = Math.min(first, second) == 0 && Math.max(first, second) == 3;
    tally.complain(
        "not one working and one sent away",
        name,
        apart ? List.of() : List.of(first + " and " + second + said(folder)));
    if (apart) {
      String other = Files.readString(folder.resolve(first == 3 ? "one.txt" : "two.txt"));
      tally.add("sent away", other.contains(SENT_AWAY) ? 1 : 0);
      tally.add("the second one worked", first == 3 ? 1 : 0);
      tally.complain(
          "sent away without a word", name, other.contains(SENT_AWAY) ? List.of() : List.of(other));
    }
  }

  private static String said(Path folder) throws IOException {
    StringBuilder said = new StringBuilder();
    try (Stream<Path> logs = Files.list(folder).filter(f -> f.toString().endsWith(".txt"))) {
      for (Path log : logs.sorted().toList()) {
        said.append('\n').append(Files.readString(log));
      }
    }
    return said.toString();
  }
}
