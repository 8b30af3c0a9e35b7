package rickyard.intake.grid.ocr;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.Doubt;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;
import rickyard.intake.Intake;
import rickyard.intake.ReadDocument;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/** Pictures are read by a program of the machine, here by a stand-in, and never believed. */
class ScannedPagesTest {
  private static final String[][] TABLE = {
    {"Lot", "GRD-9"},
    {"Analyte", "Unit", "Dry matter"},
    {"WSC", "%", "7.4"},
    {"Starch", "%", "0.7"},
  };

  @TempDir Path folder;

  @BeforeEach
  void needsAShellForTheStandIn() {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")));
  }

  /** A stand-in for the recogniser: answers what it is, and one table for every picture. */
  private Recogniser standIn(String reading) throws IOException {
    String script =
        """
        #!/bin/sh
        case "$1" in
          --version) echo "standin 1.0" ;;
          --list-langs) printf 'List:\\neng\\nosd\\n' ;;
          *) echo "$@" > "%s/arguments"; %s ;;
        esac
        """
            .formatted(folder, reading);
    Path program = folder.resolve("stand in");
    Files.writeString(program, script);
    Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
    return Recogniser.find(Optional.of(program.toString()), Optional.empty()).orElseThrow();
  }

  private Recogniser answering(String table) throws IOException {
    Files.writeString(folder.resolve("table"), table);
    return standIn("cat > \"" + folder + "/picture\"; cat \"" + folder + "/table\"");
  }

  private static String table() {
    StringBuilder out =
        new StringBuilder("level\tpage_num\tblock_num\n1\t1\t0\t0\t0\t0\t0\t0\t9\t9\t-1\t\n");
    for (int line = 0; line < TABLE.length; line++) {
      for (int column = 0; column < TABLE[line].length; column++) {
        int word = 0;
        for (String text : TABLE[line][column].split(" ", -1)) {
          out.append(
              "5\t1\t1\t1\t%d\t%d\t%d\t%d\t%d\t30\t90\t%s\n"
                  .formatted(
                      line + 1,
                      column + 1,
                      100 + 600 * column + 100 * word++,
                      100 + 80 * line,
                      20 * text.length(),
                      text));
        }
      }
    }
    return out.toString();
  }

  private static BufferedImage picture() {
    BufferedImage image = new BufferedImage(1800, 700, BufferedImage.TYPE_INT_RGB);
    Graphics2D paper = image.createGraphics();
    paper.setColor(Color.WHITE);
    paper.fillRect(0, 0, 1800, 700);
    paper.setColor(Color.BLACK);
    paper.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    paper.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 44));
    for (int line = 0; line < TABLE.length; line++) {
      for (int column = 0; column < TABLE[line].length; column++) {
        paper.drawString(TABLE[line][column], 100 + 600 * column, 130 + 120 * line);
      }
    }
    paper.dispose();
    return image;
  }

  private static byte[] png() throws IOException {
    return encoded("png");
  }

  private static byte[] encoded(String kind) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(picture(), kind, out));
    return out.toByteArray();
  }

  private static byte[] pdf(PDRectangle sheet) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(sheet);
      document.addPage(page);
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.drawImage(LosslessFactory.createFromImage(document, picture()), 20, 400, 500, 194);
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }

  private static Opened open(byte[] bytes, Recogniser recogniser) {
    return new DocumentReader(ReadLimits.DEFAULT, Optional.of(recogniser)).open(bytes, "x.csv");
  }

  private static String code(Opened opened) {
    return opened.fold(cells -> "cells", parts -> "parts", Opened.Unreadable::code);
  }

  private static Sample sample(byte[] bytes, Recogniser recogniser) {
    Intake intake =
        new Intake(
            new DocumentReader(ReadLimits.DEFAULT, Optional.of(recogniser)),
            new Interpreter(DictionaryTables.load(Optional.empty())),
            ReadLimits.DEFAULT);
    ReadDocument document = intake.read(bytes, "scan").documents().get(0);
    return document
        .report()
        .orElseThrow(() -> new AssertionError(document.reason()))
        .samples()
        .get(0);
  }

  @Test
  void everyFigureOfAPictureIsAQuestion() throws IOException {
    Sample sample = sample(png(), answering(table()));
    assertEquals("GRD-9", sample.label());
    assertEquals(2, sample.readings().size());
    for (Reading reading : sample.readings()) {
      assertFalse(reading.isSettled());
      assertEquals("read-by-ocr", reading.doubt());
    }
    List<Doubt> doubts = sample.doubts();
    assertEquals(
        "The report was read from a picture: are its names right (lot \"GRD-9\", status \"final\";"
            + " 2 figures)?",
        doubts.get(0).question());
    assertEquals(
        "Read from a picture, compare with it: is each figure right? (WSC \"7.4\", STARCH \"0.7\")",
        doubts.get(1).question());
    assertEquals(List.of("as read", "leave out"), doubts.get(1).choices());
  }

  @Test
  void aScanInAPdfAndOtherPicturesAreReadAlike() throws IOException {
    Recogniser recogniser = answering(table());
    for (byte[] each : List.of(pdf(PDRectangle.A4), encoded("jpg"), encoded("tiff"))) {
      assertEquals("7.4", sample(each, recogniser).readings().get(0).raw());
    }
  }

  @Test
  void theProgramGetsItsArgumentsOneByOneAndThePictureAsItsInput() throws IOException {
    code(open(png(), answering(table())));
    assertEquals(
        "stdin stdout -l eng --dpi 300 --psm 6 tsv\n",
        Files.readString(folder.resolve("arguments")));
    byte[] picture = Files.readAllBytes(folder.resolve("picture"));
    assertTrue(
        new String(picture, 0, 16, java.nio.charset.StandardCharsets.US_ASCII)
            .startsWith("P5 1800 700 255"));
  }

  @Test
  void aProgramThatFailsOrAnswersWithoutEndIsAnOutcome() throws IOException {
    assertEquals("ocr-failed", code(open(png(), standIn("cat > /dev/null; exit 3"))));
    assertEquals("ocr-failed", code(open(png(), standIn("yes"))));
    assertEquals("no-text", code(open(png(), standIn("cat > /dev/null; echo nothing"))));
    assertEquals("ocr-failed", code(open(png(), standIn("kill -9 $$"))));
  }

  @Test
  void aProgramThatHangsIsStopped() throws IOException {
    standIn("sleep 60");
    List<String> command = List.of(folder.resolve("stand in").toString(), "x");
    String code =
        assertTimeoutPreemptively(
            Duration.ofSeconds(20),
            () -> {
              try {
                Running.of(command, Optional.empty(), Duration.ofMillis(300), 100);
                return "answered";
              } catch (rickyard.intake.grid.UnreadableException reason) {
                return reason.code();
              }
            });
    assertEquals("ocr-failed", code);
  }

  /** On a small machine the common pool has one thread, and newer Java always uses it. */
  @Test
  void feedingAndReadingWaitForNoThreadOfOthers() throws Exception {
    byte[] much = new byte[1 << 20];
    CountDownLatch over = new CountDownLatch(1);
    for (int i = 0; i < ForkJoinPool.getCommonPoolParallelism(); i++) {
      ForkJoinPool.commonPool()
          .execute(
              () -> {
                try {
                  over.await();
                } catch (InterruptedException e) {
                  Thread.currentThread().interrupt();
                }
              });
    }
    try {
      String said = Running.of(List.of("cat"), Optional.of(much), Duration.ofSeconds(20), 2 << 20);
      assertEquals(much.length, said.length());
    } finally {
      over.countDown();
    }
  }

  @Test
  void withoutAProgramTheSentenceSaysSo() throws IOException {
    assertEquals(Optional.empty(), Recogniser.find(Optional.of("none"), Optional.of("/usr/bin")));
    assertEquals(Optional.empty(), Recogniser.find(Optional.empty(), Optional.of("")));
    List<String> reasons = new ArrayList<>();
    for (byte[] each : List.of(png(), pdf(PDRectangle.A4))) {
      reasons.add(
          new DocumentReader()
              .open(each, "x")
              .fold(cells -> "", parts -> "", Opened.Unreadable::reason));
    }
    assertEquals(
        List.of(
            "It is a picture, and no OCR program is installed to read it: install tesseract, type"
                + " the figures in, or ask the laboratory for its file.",
            "It is a scan, and no OCR program is installed to read it: install tesseract, type the"
                + " figures in, or ask the laboratory for its file."),
        reasons);
  }

  @Test
  void picturesWithoutEndAreRefusedBeforeTheyAreUnpacked() throws IOException {
    Recogniser recogniser = answering(table());
    byte[] png = png();
    // The head of a PNG says its size; here 100 000 by 100 000 with a right check sum.
    byte[] lying = png.clone();
    java.nio.ByteBuffer.wrap(lying).putInt(16, 100_000).putInt(20, 100_000);
    CRC32 crc = new CRC32();
    crc.update(lying, 12, 17);
    java.nio.ByteBuffer.wrap(lying).putInt(29, (int) crc.getValue());
    assertEquals("too-large", code(open(lying, recogniser)));
    assertEquals("too-large", code(open(pdf(new PDRectangle(90_000, 90_000)), recogniser)));
    assertEquals("damaged", code(open(java.util.Arrays.copyOf(png, 60), recogniser)));
  }

  @Test
  void theProgramOfThisMachineReadsAPlainTable() throws IOException {
    Optional<Recogniser> installed =
        Recogniser.find(Optional.empty(), Optional.ofNullable(System.getenv("PATH")));
    assumeTrue(installed.isPresent());
    Sample sample = sample(png(), installed.get());
    assertEquals("7.4", sample.readings().get(0).raw());
    assertTrue(sample.readings().stream().noneMatch(Reading::isSettled));
  }
}
