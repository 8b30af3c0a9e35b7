package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/**
 * What can be put right of the truth itself without losing a report, and the refusal where it
 * cannot.
 */
final class Repair {
  private final Path folder;
  private final Journal journal;
  private final Originals originals;
  private final Rescue rescue;

  Repair(Path folder, Journal journal, Originals originals, Rescue rescue) {
    this.folder = folder;
    this.journal = journal;
    this.originals = originals;
    this.rescue = rescue;
  }

  /** How far the journal goes where its head is lost and the index is sound. */
  Head headOf(SortedMap<Integer, MorningIndex.Row> rows, Survey survey) {
    sayIfDamaged();
    Optional<MorningRow> running =
        rows.values().stream()
            .map(MorningIndex.Row::morning)
            .filter(m -> !m.finished())
            .reduce((a, b) -> b);
    int finished =
        rows.values().stream()
            .map(MorningIndex.Row::morning)
            .filter(MorningRow::finished)
            .mapToInt(MorningRow::number)
            .max()
            .orElse(0);
    if (running.isPresent() && running.get().number() == finished + 1) {
      MorningRow m = running.get();
      return Head.of(finished)
          .withBegun(
              new Head.Begun(m.number(), m.asOf().toString(), m.identity(), m.content(), ""));
    }
    return Head.of(Math.max(finished, survey.last()));
  }

  /**
   * How far the journal goes where head and index are both lost: as far as its files, unless there
   * are originals that none of them names.
   */
  Head headWithoutIndex(Survey survey) {
    sayIfDamaged();
    if (survey.tail().isEmpty()) {
      requireNoOrphans(
          survey,
          "The originals in "
              + folder.resolve("originals")
              + " hold a report that no journal file names (%s). If the last journal file was lost,"
              + " put it back from a backup of the ledger; otherwise copy that original into the"
              + " inbox. Then run the same command again.");
    }
    return Head.of(survey.last() + (survey.tail().isPresent() ? 1 : 0));
  }

  private void sayIfDamaged() {
    if (journal.hasHead()) {
      rescue.say("repair   journal/" + Journal.HEAD + " was damaged; written again");
    }
  }

  private void requireNoOrphans(Survey survey, String sentence) {
    Set<String> named = new HashSet<>();
    for (int n : survey.digests().keySet()) {
      journal.find(n).orElseThrow().arrivals().forEach(a -> named.add(a.sha256()));
    }
    for (String original : originals.all()) {
      if (!named.contains(original) && rescue.find(original).isEmpty()) {
        throw new LedgerException(sentence.formatted(original));
      }
    }
  }

  /**
   * A last entry that is no good is done without where every report that it may have named is still
   * in the inbox: that morning is run again.
   *
   * @throws LedgerException about the entry where a report would be lost
   */
  Head tail(Head head, Survey survey) {
    if (survey.tail().isEmpty()) {
      return head.begun().isPresent() || head.finished() >= survey.last()
          ? head
          : Head.of(survey.last());
    }
    LedgerException trouble = survey.tail().get();
    if (head.finished() > survey.last() + 1) {
      throw trouble;
    }
    try {
      requireNoOrphans(survey, "%s");
    } catch (LedgerException lost) {
      throw trouble;
    }
    int number = survey.last() + 1;
    journal.numbers().stream().filter(n -> n >= number).forEach(this::putAside);
    rescue.say(
        "repair   journal/"
            + number
            + ".json was damaged or missing; all its reports are in the inbox, so that morning is"
            + " run again");
    return Head.of(survey.last());
  }

  private void putAside(int number) {
    Path file = journal.file(number);
    try {
      if (Files.exists(file)) {
        DurableFiles.privateFolder(folder.resolve("set-aside"));
        DurableFiles.rename(file, folder.resolve("set-aside").resolve(number + ".json"));
      }
    } catch (IOException e) {
      throw new LedgerException(
          "The journal file " + file + " cannot be put aside: " + DurableFiles.why(e), e);
    }
  }

  /**
   * Sees that every document of a finished morning is kept.
   *
   * @throws LedgerException about the first that is missing or cut and not in the inbox either
   */
  void requireOriginals(Mornings mornings) {
    List<ArrivalRow> damaged =
        mornings.documents().stream().filter(a -> !originals.has(a.sha256(), a.bytes())).toList();
    damaged.forEach(a -> originals.read(a.sha256()));
  }
}
