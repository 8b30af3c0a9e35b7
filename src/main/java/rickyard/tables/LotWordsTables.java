package rickyard.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.judgement.Caution;
import rickyard.core.judgement.LotNote;
import rickyard.core.judgement.Word;

/**
 * {@code config/lot-notes.csv} and {@code config/cautions.csv}: sentences that stand beside lots
 * and decide nothing.
 *
 * @param notes in the order of the table
 * @param cautions in the order of the table
 * @param files both tables read; a row with a problem is not in the lists
 */
record LotWordsTables(List<LotNote> notes, List<Caution> cautions, List<TableFile> files) {
  private static final List<String> NOTE_COLUMNS =
      List.of(
          "note_id",
          "quantity",
          "verdicts",
          "beside",
          "beside_over",
          "materials",
          "text",
          "source",
          "locator",
          "status");
  private static final List<String> CAUTION_COLUMNS =
      List.of("caution_id", "materials", "hazards", "text", "source", "locator", "status");

  LotWordsTables {
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
    files = List.copyOf(files);
  }

  /** Loads both, with the office's overrides where it has a config folder. */
  static LotWordsTables load(Optional<Path> officeConfig) {
    TableFile notes =
        TableFile.load("lot-notes.csv", NOTE_COLUMNS, List.of("note_id"), officeConfig);
    TableFile cautions =
        TableFile.load("cautions.csv", CAUTION_COLUMNS, List.of("caution_id"), officeConfig);
    List<LotNote> readNotes = new ArrayList<>();
    notes.rows().forEach(row -> note(row).ifPresent(readNotes::add));
    List<Caution> readCautions = new ArrayList<>();
    cautions.rows().forEach(row -> readCautions.add(caution(row)));
    return new LotWordsTables(readNotes, readCautions, List.of(notes, cautions));
  }

  private static Optional<LotNote> note(TableRow row) {
    Optional<Set<Word>> words = words(row);
    Optional<AnalyteCode> beside = beside(row);
    OptionalDouble over = row.number("beside_over");
    boolean isPair = beside.isPresent() == over.isPresent();
    boolean isMaterial = List.of("", "hay", "haylage").contains(row.text("materials"));
    if (!isPair) {
      row.problem("beside_over", "not-a-pair", "a number where beside names an analyte");
    }
    if (!isMaterial) {
      row.problem("materials", "unknown-word", "hay, haylage or blank");
    }
    if (words.isEmpty() || !isPair || !isMaterial) {
      return Optional.empty();
    }
    return Optional.of(
        new LotNote(
            row.required("note_id"),
            row.required("quantity"),
            words.get(),
            beside,
            over,
            row.text("materials"),
            row.required("text"),
            row.text("source"),
            row.text("status")));
  }

  private static Optional<Set<Word>> words(TableRow row) {
    Set<Word> words = new TreeSet<>();
    for (String code : row.required("verdicts").split(";", -1)) {
      Optional<Word> word =
          Arrays.stream(Word.values()).filter(w -> w.code().equals(code.strip())).findFirst();
      if (word.isEmpty()) {
        row.problem("verdicts", "unknown-word", "words of verdicts, ';' between");
        return Optional.empty();
      }
      words.add(word.get());
    }
    return Optional.of(words);
  }

  private static Optional<AnalyteCode> beside(TableRow row) {
    String code = row.text("beside");
    if (code.isEmpty()) {
      return Optional.empty();
    }
    if (!code.matches("[A-Z][A-Z0-9_]*")) {
      row.problem("beside", "unknown-analyte", "an analyte code");
      return Optional.empty();
    }
    return Optional.of(new AnalyteCode(code));
  }

  private static Caution caution(TableRow row) {
    return new Caution(
        row.required("caution_id"),
        list(row.text("materials")),
        list(row.text("hazards")),
        row.required("text"),
        row.text("source"),
        row.text("status"));
  }

  private static Set<String> list(String cell) {
    Set<String> found = new TreeSet<>();
    Arrays.stream(cell.split(";", -1))
        .map(String::strip)
        .filter(c -> !c.isEmpty())
        .forEach(found::add);
    return found;
  }
}
