package rickyard.intake.isolate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.Reading;
import rickyard.core.quantity.Evidence;
import rickyard.intake.ReadDocument;
import rickyard.intake.ReadFile;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.ReadingProgress;
import rickyard.intake.grid.ocr.Recogniser;
import rickyard.tables.DictionaryTables;

/** A child reads every file as this process does, to the last field. */
@Timeout(value = 600, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class IsolatedReadingsTest {
  private static final List<Path> FOLDERS =
      List.of(Path.of("fixtures/office/inbox"), Path.of("fixtures/laboratories/reports"));

  /** Every third file in each build; all with {@code -Drickyard.every=1}. */
  private static final int STEP = Integer.getInteger("rickyard.every", 3);

  private static final ChildSetup SETUP =
      new ChildSetup(DictionaryTables.load(Optional.empty()), ReadLimits.DEFAULT);

  /** Waits for less than the stand-in of a recogniser takes. */
  private static final ProcessLimits IMPATIENT =
      new ProcessLimits(
          160,
          1L << 20,
          64,
          1_024,
          Duration.ofSeconds(20),
          Duration.ofSeconds(1),
          Duration.ofSeconds(3),
          Duration.ofSeconds(9),
          64,
          64);

  private static final String WORDS =
      """
      level\tpage_num\tblock_num
      5\t1\t1\t1\t1\t1\t100\t100\t60\t30\t90\tLot
      5\t1\t1\t1\t1\t2\t700\t100\t100\t30\t90\tGRD-9
      5\t1\t1\t1\t2\t1\t100\t180\t140\t30\t90\tAnalyte
      5\t1\t1\t1\t2\t2\t700\t180\t80\t30\t90\tUnit
      5\t1\t1\t1\t2\t3\t1300\t180\t60\t30\t90\tDry
      5\t1\t1\t1\t2\t4\t1370\t180\t120\t30\t90\tmatter
      5\t1\t1\t1\t3\t1\t100\t260\t60\t30\t90\tWSC
      5\t1\t1\t1\t3\t2\t700\t260\t20\t30\t90\t%
      5\t1\t1\t1\t3\t3\t1300\t260\t60\t30\t90\t7.4
      """;

  private static IsolatedIntake isolated(ChildSetup setup, ProcessLimits limits) {
    return new IsolatedIntake(setup, limits, 1, name -> ReadingProgress.none());
  }

  private static ReadFile here(ChildSetup setup, byte[] bytes, String name) {
    return ReaderMaker.usual(setup, ReadingProgress.none()).read(bytes, name);
  }

  @Test
  void everyFixtureIsReadInAChildAsInThisProcess() throws IOException {
    long reports = 0;
    try (IsolatedIntake intake = isolated(SETUP, ProcessLimits.DEFAULT)) {
      for (Path folder : FOLDERS) {
        try (Stream<Path> files = Files.walk(folder)) {
          List<Path> all = files.filter(Files::isRegularFile).sorted().toList();
          for (int i = 0; i < all.size(); i += STEP) {
            Path file = all.get(i);
            byte[] bytes = Files.readAllBytes(file);
            ReadFile read = intake.read(bytes, file.getFileName().toString());
            assertEquals(here(SETUP, bytes, file.getFileName().toString()), read, file.toString());
            reports += read.documents().stream().filter(d -> d.report().isPresent()).count();
          }
        }
      }
    }
    assertTrue(reports > 100 / STEP, "only " + reports + " reports");
  }

  @Test
  void aChildKnowsTheOfficesHints(@TempDir Path config) throws IOException {
    Files.writeString(
        config.resolve("layouts.csv"),
        "layout_words,what,about,value,source,status\n"
            + "Hollin Beck laboratory,basis,*,dm,its letter,office\n");
    byte[] page =
        "Laboratory,Hollin Beck laboratory\nLot,L-1\nAnalyte,Unit,Result\nWSC,%,7.0\nStarch,%,0.6\n"
            .getBytes(StandardCharsets.UTF_8);
    ChildSetup setup =
        new ChildSetup(DictionaryTables.load(Optional.of(config)), ReadLimits.DEFAULT);
    try (IsolatedIntake intake = isolated(setup, ProcessLimits.DEFAULT)) {

      ReadFile read = intake.read(page, "page.csv");

      assertEquals(here(setup, page, "page.csv"), read);
      assertTrue(
          read.documents().get(0).report().orElseThrow().samples().get(0).readings().stream()
              .flatMap(reading -> reading.value().stream())
              .anyMatch(value -> value.evidence() instanceof Evidence.Hinted));
    }
  }

  private static byte[] picture() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(1800, 400, BufferedImage.TYPE_BYTE_GRAY), "png", out);
    return out.toByteArray();
  }

  private static Recogniser standIn(Path folder, int seconds) throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")));
    Files.writeString(folder.resolve("words"), WORDS);
    Path program = folder.resolve("stand in");
    Files.writeString(
        program,
        "#!/bin/sh\necho $$ > '%s/pid'\nsleep %d\ncat '%s/words'\n"
            .formatted(folder, seconds, folder));
    Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
    return new Recogniser(program, "stand-in 1.0 eng", "eng");
  }

  @Test
  void aChildThatWaitsForTheRecogniserIsNotIdle(@TempDir Path folder) throws IOException {
    ChildSetup setup = SETUP.withRecogniser(Optional.of(standIn(folder, 6)));
    try (IsolatedIntake intake = isolated(setup, IMPATIENT)) {

      ReadFile read = intake.read(picture(), "scan.png");

      assertEquals(here(setup, picture(), "scan.png"), read);
      assertTrue(
          read.documents().get(0).report().orElseThrow().samples().stream()
              .flatMap(sample -> sample.readings().stream())
              .map(Reading::raw)
              .anyMatch("7.4"::equals));
    }
  }

  @Test
  void aRecogniserThatNeverEndsIsEndedWithItsChild(@TempDir Path folder) throws IOException {
    ChildSetup setup = SETUP.withRecogniser(Optional.of(standIn(folder, 3_600)));
    try (IsolatedIntake intake = isolated(setup, IMPATIENT)) {

      ReadDocument read = intake.read(picture(), "scan.png").documents().get(0);

      assertEquals("too-slow", read.code());
      long last = Long.parseLong(Files.readString(folder.resolve("pid")).strip());
      ProcessHandle.of(last)
          .ifPresent(
              left -> left.onExit().orTimeout(30, java.util.concurrent.TimeUnit.SECONDS).join());
    }
  }

  @Test
  void aChildThatWasGivenNoRecogniserLooksForNone() throws IOException {
    try (IsolatedIntake intake = isolated(SETUP, ProcessLimits.DEFAULT)) {
      assertEquals("no-text", intake.read(picture(), "scan.png").documents().get(0).code());
    }
  }
}
