package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;

/** Whole mornings on small offices, in this process. */
class MorningEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final Path SKELETON = Path.of("src", "test", "resources", "skeleton-office");
  private static final String LONG =
      "Analyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,7.0\nStarch,%,0.6\nCrude protein,%,9.9\n";

  @TempDir Path folder;

  private Path skeleton() {
    Path office = folder.resolve("office");
    try {
      BuiltJar.copy(SKELETON, office);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return office;
  }

  private static Map<String, String> row(
      List<Map<String, String>> rows, String column, String key) {
    return rows.stream().filter(r -> key.equals(r.get(column))).findFirst().orElseThrow();
  }

  @Test
  void everyFileEndsInOneRowAndTheUnreadableOneIsRefusedWithAReason() {
    MorningEnd end = SmallOffice.run(skeleton(), DAY);

    List<Map<String, String>> outcomes = SmallOffice.rows(end.out().resolve("outcomes.csv"));
    assertEquals(
        List.of("a-long-table.csv", "b-dry-matter-only.pdf", "c-unreadable.pdf"),
        outcomes.stream().map(r -> r.get("file")).toList());
    assertEquals("accepted", row(outcomes, "file", "a-long-table.csv").get("outcome"));
    assertEquals("refused", row(outcomes, "file", "c-unreadable.pdf").get("outcome"));
    assertEquals("damaged", row(outcomes, "file", "c-unreadable.pdf").get("reason_code"));
  }

  @Test
  void aSecondMorningWithTheSameContentSaysThatNothingIsNew() {
    Path office = skeleton();
    SmallOffice.run(office, DAY);

    assertTrue(SmallOffice.run(office, DAY).nothingNew());
  }

  @Test
  void theSameBytesOnALaterMorningAreKnownAndStillCount() {
    Path office = skeleton();
    SmallOffice.run(office, DAY);

    MorningEnd next = SmallOffice.run(office, DAY.plusDays(1));

    List<Map<String, String>> outcomes = SmallOffice.rows(next.out().resolve("outcomes.csv"));
    assertEquals("known", row(outcomes, "file", "a-long-table.csv").get("outcome"));
    List<Map<String, String>> before =
        SmallOffice.rows(office.resolve("mornings/2026-03-16/lots.csv"));
    assertEquals(before, SmallOffice.rows(next.out().resolve("lots.csv")));
  }

  @Test
  void aReportThatLeftTheInboxStillCounts() throws IOException {
    Path office = skeleton();
    SmallOffice.run(office, DAY);
    Files.delete(office.resolve("inbox/a-long-table.csv"));

    MorningEnd next = SmallOffice.run(office, DAY.plusDays(1));

    assertEquals(
        SmallOffice.rows(office.resolve("mornings/2026-03-16/lots.csv")),
        SmallOffice.rows(next.out().resolve("lots.csv")));
  }

  @Test
  void aDayBeforeTheLastFinishedMorningIsRefused() {
    Path office = skeleton();
    SmallOffice.run(office, DAY);

    UsageException e =
        assertThrows(UsageException.class, () -> SmallOffice.run(office, DAY.minusDays(1)));

    assertEquals(
        "--as-of 2026-03-15 lies before the last finished morning, 2026-03-16; a ledger only goes"
            + " forward.",
        e.getMessage());
  }

  @Test
  void anOfficeWithoutRegistersMakesAProvisionalLotAndAsks() throws IOException {
    Path office = folder.resolve("bare");
    Files.createDirectories(office.resolve("inbox"));
    Files.writeString(
        office.resolve("inbox/report.csv"), "Lot,FIELD-7\n" + LONG, StandardCharsets.UTF_8);

    MorningEnd end = SmallOffice.run(office, DAY);

    assertEquals("FIELD-7", SmallOffice.rows(end.out().resolve("lots.csv")).get(0).get("lot"));
    assertTrue(
        SmallOffice.rows(end.out().resolve("questions.csv")).stream()
            .anyMatch(q -> "lot-unknown".equals(q.get("kind"))));
  }

  @Test
  void aLowerBoundFromPartialEvidenceIsNoValueOfTheSample() throws IOException {
    Path office = folder.resolve("partial");
    Files.createDirectories(office.resolve("inbox"));
    Files.writeString(
        office.resolve("inbox/report.csv"), "Lot,FIELD-8\n" + LONG, StandardCharsets.UTF_8);

    MorningEnd end = SmallOffice.run(office, DAY);

    List<String> derived =
        SmallOffice.rows(end.out().resolve("analyses.csv")).stream()
            .filter(r -> "derived".equals(r.get("origin")))
            .map(r -> r.get("analyte"))
            .toList();
    assertEquals(List.of("NSC_WSC"), derived);
  }

  @Test
  void oddFilesEachEndInOneRowAndTheGoodReportIsAsWithoutThem() throws IOException {
    Path office = skeleton();
    SmallOffice.run(office, DAY);
    Path odd = folder.resolve("odd");
    copy(SKELETON, odd);
    Path inbox = odd.resolve("inbox");
    Files.write(inbox.resolve("empty.pdf"), new byte[0]);
    Files.write(inbox.resolve("zeros.csv"), new byte[4096]);
    Files.writeString(inbox.resolve("=cmd.csv"), "=1+1,2\n");
    Files.writeString(inbox.resolve("page.html"), "<html><body><p>none</p></body></html>");
    Files.writeString(inbox.resolve("broken.zip"), "PK\u0003\u0004 nothing");
    Files.createDirectories(inbox.resolve("folder.pdf"));
    Files.createSymbolicLink(inbox.resolve("out.csv"), odd.resolve("registers/horses.csv"));

    MorningEnd end = SmallOffice.run(odd, DAY);

    List<Map<String, String>> outcomes = SmallOffice.rows(end.out().resolve("outcomes.csv"));
    List<String> files = outcomes.stream().map(r -> r.get("file")).toList();
    assertEquals(files.stream().distinct().toList(), files);
    for (String name :
        List.of("empty.pdf", "zeros.csv", "'=cmd.csv", "page.html", "broken.zip", "out.csv")) {
      assertEquals("refused", row(outcomes, "file", name).get("outcome"), name);
    }
    assertEquals(
        SmallOffice.rows(office.resolve("mornings/2026-03-16/lots.csv")),
        SmallOffice.rows(end.out().resolve("lots.csv")));
    assertEquals(
        SmallOffice.rows(office.resolve("mornings/2026-03-16/horses.csv")),
        SmallOffice.rows(end.out().resolve("horses.csv")));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  @Test
  void anOutputFolderAroundTheInboxIsRefused() {
    Path office = skeleton();
    OfficeFolders usual = OfficeFolders.of(office);
    OfficeFolders wrong =
        new OfficeFolders(
            office,
            usual.inbox(),
            usual.registers(),
            usual.config(),
            usual.ledger(),
            Optional.of(office));

    assertThrows(UsageException.class, wrong::check);
  }

  @Test
  void aHorseWithABadRowStandsFirstWithFileRowAndColumn() throws IOException {
    Path office = skeleton();
    Path horses = office.resolve("registers/horses.csv");
    Files.writeString(horses, Files.readString(horses).replace("laminitis-past", "laminitis-pats"));

    MorningEnd end = SmallOffice.run(office, DAY);

    Map<String, String> first = SmallOffice.rows(end.out().resolve("horses.csv")).get(0);
    assertEquals("ask", first.get("priority"));
    assertTrue(String.valueOf(first.get("reason")).contains("horses.csv, row "), first::toString);
    assertTrue(String.valueOf(first.get("reason")).contains("laminitis-pats"), first::toString);
  }
}
