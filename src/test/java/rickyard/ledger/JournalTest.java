package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the journal takes for sound, how far it goes and what it says of a file that is no good. */
class JournalTest {
  @TempDir Path temp;
  private Path folder = Path.of("");
  private Journal journal = new Journal(folder);

  @BeforeEach
  void inAFolderThatIsNotThereYet() {
    folder = temp.resolve("journal");
    journal = new Journal(folder);
  }

  private void threeMornings() {
    for (int n = 1; n <= 3; n++) {
      journal.write(KeptLedger.entry(n));
    }
  }

  private static JournalEntry entry(int format, int number) {
    JournalEntry e = KeptLedger.entry(number);
    return new JournalEntry(
        format,
        number,
        e.asOf(),
        e.identity(),
        e.content(),
        e.version(),
        e.arrivals(),
        e.registers(),
        e.state());
  }

  private static Head.Begun begun(int number) {
    return new Head.Begun(number, "2026-03-19", "identity-" + number, "content", "out");
  }

  /** An entry as it was written before entries were sealed. */
  private void writeUnsealed(int number, int format) throws IOException {
    journal.write(entry(format, number));
    String sealed = Files.readString(journal.file(number));
    Files.writeString(
        journal.file(number),
        sealed.replaceAll(",\"past\":\"[0-9a-f]*\",\"sha256\":\"[0-9a-f]{64}\"\\}$", "}"));
  }

  private String refusal(int number) {
    return String.valueOf(
        assertThrows(LedgerException.class, () -> journal.find(number)).getMessage());
  }

  private static void assertSurvey(int last, boolean tail, Survey survey) {
    assertEquals(last, survey.last());
    assertEquals(last, survey.digests().size());
    assertEquals(tail, survey.tail().isPresent(), survey.tail()::toString);
  }

  @Test
  void aNewOfficeHasAnEmptyJournal() {
    assertEquals(List.of(), journal.numbers());
    assertEquals(Optional.empty(), journal.head());
    assertFalse(journal.hasHead());
    assertEquals(Optional.empty(), journal.find(1));
    assertEquals("", journal.digest(1));
    assertSurvey(0, false, journal.survey(Optional.empty()));
    assertSurvey(0, false, journal.survey(Optional.of(Head.of(0))));
  }

  @Test
  void anEntryIsReadAsItWasWritten() throws IOException {
    threeMornings();

    assertEquals(Optional.of(KeptLedger.entry(2)), journal.find(2));
    assertEquals(Originals.sha256(Files.readAllBytes(folder.resolve("2.json"))), journal.digest(2));
  }

  @Test
  void theJournalIsItsOwnersAlone() throws IOException {
    threeMornings();

    assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
  }

  @Test
  void onlyFilesNamedAfterAMorningAreEntries() throws IOException {
    threeMornings();
    for (String name : List.of("0.json", "02.json", "4.json.bak", "x.json", "head.json")) {
      Files.writeString(folder.resolve(name), "{}");
    }

    assertEquals(List.of(1, 2, 3), journal.numbers());
  }

  @Test
  void anEntryWrittenAgainIsTheSameToTheByte() throws IOException {
    threeMornings();
    byte[] before = Files.readAllBytes(journal.file(2));

    journal.write(KeptLedger.entry(2));

    assertArrayEquals(before, Files.readAllBytes(journal.file(2)));
  }

  @Test
  void aSoundJournalGoesAsFarAsItsFiles() {
    threeMornings();

    assertSurvey(3, false, journal.survey(Optional.empty()));
    assertSurvey(3, false, journal.survey(Optional.of(Head.of(3))));
    assertSurvey(3, false, journal.survey(Optional.of(Head.of(1))));
    assertEquals(journal.digest(3), journal.survey(Optional.empty()).digests().get(3));
  }

  @Test
  void aMorningUnderWayDoesNotCount() {
    threeMornings();

    assertSurvey(2, false, journal.survey(Optional.of(Head.of(2).withBegun(begun(3)))));
    assertSurvey(3, false, journal.survey(Optional.of(Head.of(3).withBegun(begun(4)))));
  }

  @Test
  void aMorningThatTheHeadKnowsAndNoFileHoldsIsTheTail() {
    threeMornings();

    Survey survey = journal.survey(Optional.of(Head.of(4)));

    assertSurvey(3, true, survey);
    assertEquals(
        "The journal file " + journal.file(4) + " is missing." + Journal.REMEDY,
        survey.tail().orElseThrow().getMessage());
  }

  @Test
  void aDamagedFileIsTheTailAtTheEndAndARefusalBefore() throws IOException {
    threeMornings();
    Files.writeString(journal.file(3), "{");
    assertSurvey(2, true, journal.survey(Optional.of(Head.of(3))));

    Files.writeString(journal.file(2), "{");
    LedgerException thrown =
        assertThrows(LedgerException.class, () -> journal.survey(Optional.of(Head.of(3))));
    assertEquals(
        "The journal file " + journal.file(2) + " is damaged." + Journal.REMEDY,
        thrown.getMessage());
  }

  @Test
  void aNewerEntryIsNeverTakenForDamageNotEvenAtTheEnd() {
    threeMornings();
    journal.write(entry(JournalEntry.FORMAT + 1, 4));

    LedgerException thrown =
        assertThrows(LedgerException.class, () -> journal.survey(Optional.empty()));
    assertTrue(thrown.isNewer());
    assertTrue(refusal(4).startsWith("This ledger was written by a newer Rickyard"), refusal(4));
  }

  @Test
  void anEntryWrittenBeforeEntriesWereSealedIsRead() throws IOException {
    writeUnsealed(1, 1);
    journal.write(KeptLedger.entry(2));

    assertEquals(1, journal.find(1).orElseThrow().format());
    assertSurvey(2, false, journal.survey(Optional.empty()));
  }

  @Test
  void anEntryThatLostItsSealIsDamaged() throws IOException {
    writeUnsealed(1, JournalEntry.FORMAT);

    assertEquals(
        "The journal file " + journal.file(1) + " is damaged." + Journal.REMEDY, refusal(1));
  }

  @Test
  void anEntryWithAFalseSealIsDamaged() throws IOException {
    threeMornings();
    String text = Files.readString(journal.file(1));
    Files.writeString(journal.file(1), text.replace("identity-1", "identity-9"));

    assertEquals(
        "The journal file " + journal.file(1) + " is damaged." + Journal.REMEDY, refusal(1));
  }

  @Test
  void anEntryUnderAnotherNumberBelongsToAnotherMorning() throws IOException {
    threeMornings();
    Files.copy(journal.file(1), journal.file(4));

    assertEquals(
        "The journal file " + journal.file(4) + " belongs to another morning." + Journal.REMEDY,
        refusal(4));
  }

  @Test
  void aFileThatCannotBeReadOrWrittenIsNamed() throws IOException {
    Files.createDirectories(journal.file(1));
    assertTrue(
        refusal(1).startsWith("The journal file " + journal.file(1) + " cannot be read: "),
        refusal(1));

    Journal blocked = new Journal(Files.writeString(temp.resolve("file"), ""));
    LedgerException thrown = assertThrows(LedgerException.class, () -> blocked.write(Head.of(0)));
    assertTrue(
        String.valueOf(thrown.getMessage())
            .startsWith("The journal file " + blocked.file(1).resolveSibling("head.json")),
        thrown::toString);
  }

  @Test
  void theHeadIsReadAsItWasWrittenUnlessAByteOfItChanged() throws IOException {
    Head head = Head.of(2).withBegun(begun(3));
    journal.write(head);

    assertTrue(journal.hasHead());
    assertEquals(Optional.of(head), journal.head());

    Path file = folder.resolve("head.json");
    Files.writeString(file, Files.readString(file).replace("\"finished\":2", "\"finished\":1"));
    assertTrue(journal.hasHead());
    assertEquals(Optional.empty(), journal.head());
  }

  @Test
  void aHeadKnowsWhichMorningIsUnderWay() {
    Head head = Head.of(2).withBegun(begun(3));

    assertEquals(Head.FORMAT, head.format());
    assertEquals(2, head.finished());
    assertTrue(head.isBegun(3));
    assertFalse(head.isBegun(2));
    assertFalse(Head.of(2).isBegun(3));
    assertTrue(head.isBegun(3, "identity-3"));
    assertFalse(head.isBegun(3, "identity-4"));
    assertFalse(head.isBegun(2, "identity-3"));
  }

  @Test
  void anEntryIsARowOfItsMorning() {
    assertEquals(KeptLedger.morning(2, true), KeptLedger.entry(2).row(true));
    assertEquals(KeptLedger.morning(2, false), KeptLedger.entry(2).row(false));
  }

  @Test
  void aSealTellsWhereOnePartEndsAndTheNextBegins() {
    assertFalse(Seal.of("ab", "c").equals(Seal.of("a", "bc")));
    assertEquals(
        Originals.sha256(new byte[] {0, 0, 0, 2, 'a', 'b', 0, 0, 0, 1, 'c'}), Seal.of("ab", "c"));
  }

  @Test
  void whatWasSealedSoFarCanBeGoneOnWith() {
    Seal seal = new Seal().add("a");

    assertEquals(Seal.of("a"), seal.hexSoFar());
    assertEquals(Seal.of("a", "b"), seal.add("b").hex());
  }

  @Test
  void onlyATrueSealIsSound() {
    byte[] sealed = SealedJson.seal("{\"a\":1}");

    assertTrue(SealedJson.isSealed(sealed) && SealedJson.isSound(sealed));
    byte[] changed = sealed.clone();
    changed[5] = '2';
    assertTrue(SealedJson.isSealed(changed));
    assertFalse(SealedJson.isSound(changed));
    byte[] plain = "{\"a\":1}".getBytes(StandardCharsets.UTF_8);
    assertFalse(SealedJson.isSealed(plain) || SealedJson.isSound(plain));
  }
}
