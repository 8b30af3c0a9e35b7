package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;

/** What is found wrong with the truth itself: named with its remedy, or mended without a loss. */
class JournalDamageTest {
  private static final String REMEDY =
      " Put it back from a backup of the ledger, then run the same command again.";

  @TempDir static Path shared;

  @TempDir Path temp;
  private Path folder = Path.of("");
  private Path journal = Path.of("");
  private Path originals = Path.of("");
  private final KeptLedger.Inbox inbox = new KeptLedger.Inbox();

  @BeforeAll
  static void threeMorningsAreFinished() {
    try (Ledger ledger = Ledger.open(shared, Rescue.none())) {
      for (int n = 1; n <= 3; n++) {
        KeptLedger.finish(ledger, n);
      }
    }
  }

  @BeforeEach
  void copyThem() throws IOException {
    folder = temp.resolve("ledger");
    BuiltJar.copy(shared, folder);
    journal = folder.resolve("journal");
    originals = folder.resolve("originals");
  }

  private String refusal() {
    LedgerException e =
        assertThrows(LedgerException.class, () -> Ledger.open(folder, inbox).close());
    return String.valueOf(e.getMessage());
  }

  private void assertOpens(int finished) {
    try (Ledger ledger = Ledger.open(folder, inbox)) {
      assertEquals(finished, ledger.mornings().count());
      assertEquals(
          "identity-" + finished, ledger.mornings().lastFinished().orElseThrow().identity());
    }
  }

  private void change(Path file, String was, String is) throws IOException {
    String text = Files.readString(file);
    assertTrue(text.contains(was), text);
    Files.writeString(file, text.replace(was, is));
  }

  @Test
  void anEntryWithAChangedByteIsNamed() throws IOException {
    change(journal.resolve("2.json"), "report-3.csv", "report-8.csv");

    assertEquals(
        "The journal file " + journal.resolve("2.json") + " is damaged." + REMEDY, refusal());
  }

  @Test
  void everyChangedByteOfAnEntryIsSeen() throws IOException {
    byte[] bytes = Files.readAllBytes(journal.resolve("2.json"));
    Random random = new Random(4);
    for (int round = 0; round < 200; round++) {
      byte[] changed = bytes.clone();
      int at = round < 40 ? bytes.length - 1 - round : random.nextInt(bytes.length);
      changed[at] ^= (byte) (1 + random.nextInt(255));
      Files.write(journal.resolve("2.json"), changed);
      assertThrows(
          LedgerException.class,
          () -> new Journal(journal).survey(new Journal(journal).head()),
          "byte " + at);
    }
  }

  @Test
  void anEntryThatIsCutIsNamed() throws IOException {
    byte[] bytes = Files.readAllBytes(journal.resolve("1.json"));
    Files.write(journal.resolve("1.json"), java.util.Arrays.copyOf(bytes, bytes.length / 2));

    assertEquals(
        "The journal file " + journal.resolve("1.json") + " is damaged." + REMEDY, refusal());
  }

  @Test
  void aMissingEntryInTheMiddleIsNamed() throws IOException {
    Files.delete(journal.resolve("2.json"));

    assertEquals(
        "The journal file " + journal.resolve("2.json") + " is missing." + REMEDY, refusal());
  }

  @Test
  void aSoundEntryInThePlaceOfAnotherIsSeen() throws IOException {
    byte[] other =
        SealedJson.seal(
            Files.readString(journal.resolve("2.json"))
                .replaceAll(",\"sha256\":\"[0-9a-f]{64}\"\\}$", "}")
                .replace("identity-2", "identity-8"));
    Files.write(journal.resolve("2.json"), other);

    assertEquals(
        "The journal file "
            + journal.resolve("3.json")
            + " was not written after the files before it: one of them was changed or exchanged."
            + " Put the whole folder back from a backup of the ledger, then run the same command"
            + " again.",
        refusal());
  }

  @Test
  void anEntryOfANewerProgramIsRefused() throws IOException {
    Files.write(
        journal.resolve("2.json"),
        SealedJson.seal(
            Files.readString(journal.resolve("2.json"))
                .replaceAll(",\"sha256\":\"[0-9a-f]{64}\"\\}$", "}")
                .replace("{\"format\":2", "{\"format\":3")));

    assertTrue(refusal().startsWith("This ledger was written by a newer Rickyard"), refusal());
  }

  @Test
  void aLastEntryThatIsGoneIsNamedWhereAReportWouldBeLost() throws IOException {
    Files.delete(journal.resolve("3.json"));
    inbox.with(KeptLedger.document(5));

    assertEquals(
        "The journal file " + journal.resolve("3.json") + " is missing." + REMEDY, refusal());
  }

  @Test
  void aLastEntryIsDoneWithoutWhereItsReportsAreStillInTheInbox() throws IOException {
    Files.write(journal.resolve("3.json"), "{\"format\":2,".getBytes(StandardCharsets.UTF_8));
    inbox.with(KeptLedger.document(5)).with(KeptLedger.document(6));

    assertOpens(2);
    assertEquals(
        List.of(
            "repair   journal/3.json was damaged or missing; all its reports are in the inbox, so"
                + " that morning is run again"),
        inbox.said());
    assertTrue(Files.exists(folder.resolve("set-aside/3.json")));
    assertFalse(Files.exists(journal.resolve("3.json")));
    assertOpens(2);
  }

  @Test
  void aHeadThatIsGoneIsWrittenAgain() throws IOException {
    Files.delete(journal.resolve("head.json"));

    assertOpens(3);
    assertTrue(Files.exists(journal.resolve("head.json")));
  }

  @Test
  void aHeadWithAChangedByteIsWrittenAgainAndSaidSo() throws IOException {
    change(journal.resolve("head.json"), "\"finished\":3", "\"finished\":1");

    assertOpens(3);
    assertEquals(List.of("repair   journal/head.json was damaged; written again"), inbox.said());
  }

  @Test
  void withoutHeadAndDatabaseALostLastEntryIsSeenByItsOriginals() throws IOException {
    Files.delete(journal.resolve("head.json"));
    Files.delete(KeptLedger.database(folder));
    Files.delete(journal.resolve("3.json"));

    String first =
        List.of(KeptLedger.arrival(5).sha256(), KeptLedger.arrival(6).sha256()).stream()
            .sorted()
            .findFirst()
            .orElseThrow();
    assertEquals(
        "The originals in "
            + originals
            + " hold a report that no journal file names ("
            + first
            + "). If the last journal file was lost, put it back from a backup of the ledger;"
            + " otherwise copy that original into the inbox. Then run the same command again.",
        refusal());

    inbox.with(KeptLedger.document(5)).with(KeptLedger.document(6));
    assertOpens(2);
  }

  @Test
  void theEntryOfAMorningUnderWayDoesNotCountAsFinished() throws IOException {
    try (Ledger ledger = Ledger.open(folder, inbox)) {
      KeptLedger.begin(ledger, 4);
      ledger.journal().write(KeptLedger.entry(4));
    }
    Files.delete(KeptLedger.database(folder));

    try (Ledger ledger = Ledger.open(folder, inbox)) {
      assertEquals(3, ledger.mornings().lastFinished().orElseThrow().number());
      assertEquals(4, ledger.mornings().unfinished().orElseThrow().morning().number());
      assertFalse(ledger.mornings().isIndexed(KeptLedger.morning(4, false)));
    }
  }

  @Test
  void aMissingOriginalIsNamedAndPutBackFromTheInboxWhereItIsThere() throws IOException {
    Path file = originals.resolve(KeptLedger.arrival(2).sha256());
    Files.delete(file);

    assertEquals(
        "The original "
            + file
            + " is missing. Put it back from a backup of the ledger, or put the report into the"
            + " inbox again, then run the same command again.",
        refusal());

    inbox.with(KeptLedger.document(2));
    assertOpens(3);
    assertEquals(
        List.of("restore  The original " + file + " is missing; put back from the inbox"),
        inbox.said());
    assertEquals(
        new String(KeptLedger.document(2), StandardCharsets.UTF_8), Files.readString(file));
  }

  @Test
  void anOriginalThatIsCutIsFoundAtTheOpening() throws IOException {
    Path file = originals.resolve(KeptLedger.arrival(2).sha256());
    Files.writeString(file, "Lot,");

    assertTrue(refusal().contains("is damaged: its content no longer matches its name"), refusal());
  }

  @Test
  void anOriginalOfTheSameSizeWithAnotherByteIsNeverRead() throws IOException {
    Path file = originals.resolve(KeptLedger.arrival(2).sha256());
    change(file, "2.5", "3.5");

    try (Ledger ledger = Ledger.open(folder, inbox)) {
      LedgerException e =
          assertThrows(
              LedgerException.class, () -> ledger.originals().read(KeptLedger.arrival(2).sha256()));
      assertTrue(String.valueOf(e.getMessage()).contains("is damaged"), e::toString);
      inbox.with(KeptLedger.document(2));
      assertEquals(
          new String(KeptLedger.document(2), StandardCharsets.UTF_8),
          new String(
              ledger.originals().read(KeptLedger.arrival(2).sha256()), StandardCharsets.UTF_8));
    }
  }
}
