package rickyard.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;

/**
 * One office on machines set otherwise: twelve time zones, three locales with other digits, commas
 * and cases, one to eight workers, and an inbox whose files lie in another order on the disk each
 * time. Every output, the journal and the originals must be the same to the byte.
 */
class OtherMachinesSoak {
  /** From the far west to the far east, half hours and quarters of an hour among them. */
  private static final List<String> ZONES =
      List.of(
          "Etc/GMT+12",
          "Pacific/Apia",
          "America/Los_Angeles",
          "America/St_Johns",
          "America/Sao_Paulo",
          "UTC",
          "Europe/Dublin",
          "Africa/Cairo",
          "Asia/Tehran",
          "Asia/Kathmandu",
          "Australia/Lord_Howe",
          "Pacific/Kiritimati");

  /** Arabic digits; the dotless i; the comma as decimal mark and the point for thousands. */
  private static final List<List<String>> LOCALES =
      List.of(List.of("ar", "EG"), List.of("tr", "TR"), List.of("de", "DE"));

  private static final int MOST_WORKERS = 8;

  private final Random random = new Random(Long.getLong("rickyard.soak.seed", 20260316L));

  @Test
  void noByteDependsOnTheMachine(@TempDir Path folder) throws IOException, InterruptedException {
    Tally tally = new Tally("other-machines");
    Path made = SoakOffice.sixty(folder.resolve("made"));
    Path whole = folder.resolve("whole");
    BuiltJar.copy(made, whole);
    assertEquals(0, Launch.morning(whole, SoakOffice.DAY).run(folder.resolve("log.txt")).status());
    Outcome expected = Outcome.of(whole);
    int machine = 0;
    for (String zone : ZONES) {
      for (List<String> locale : LOCALES) {
        int workers = machine % MOST_WORKERS + 1;
        Path office = folder.resolve("machine" + machine);
        inAnotherOrder(made, office);
        String name = String.join(" ", zone, locale.get(0), workers + " workers");
        BuiltJar.Ended ended = run(office, zone, locale, workers, folder.resolve("log.txt"));
        tally.add("machines");
        tally.complain("failed", name, ended.status() == 0 ? List.of() : List.of(ended.output()));
        tally.complain("different", name, expected.differences(office));
        tally.write();
        machine++;
      }
    }
    assertEquals(List.of(), tally.complaints());
  }

  private static BuiltJar.Ended run(
      Path office, String zone, List<String> locale, int workers, Path log)
      throws IOException, InterruptedException {
    return Launch.morning(office, SoakOffice.DAY, workers)
        .with(
            "-Duser.timezone=" + zone,
            "-Duser.language=" + locale.get(0),
            "-Duser.country=" + locale.get(1),
            "-Dfile.encoding=ISO-8859-1")
        .run(log);
  }

  /** The order in which files were made is, on many disks, the order in which they are listed. */
  private void inAnotherOrder(Path made, Path office) throws IOException {
    BuiltJar.copy(made.resolve("registers"), office.resolve("registers"));
    Files.createDirectories(office.resolve("inbox"));
    List<Path> files;
    try (Stream<Path> found = Files.list(made.resolve("inbox"))) {
      files = new ArrayList<>(found.sorted().toList());
    }
    Collections.shuffle(files, random);
    for (Path file : files) {
      Files.copy(file, office.resolve("inbox").resolve(file.getFileName().toString()));
    }
  }
}
