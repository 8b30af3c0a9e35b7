package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.intake.grid.Cell;
import rickyard.tables.DictionaryTables;

/** A line that is not asked has nothing to say: asked in full, it gives no answer either. */
class VoiceTest {
  private static final Dictionary DICTIONARY = DictionaryTables.load(Optional.empty());

  private static final List<String> PARTS =
      List.of(
          "L-000123",
          "8.1",
          "2026-02-13",
          "grass hay",
          "dry matter",
          "DM",
          "as",
          "fed",
          "basis",
          "all results",
          "are",
          "is",
          "on",
          "d.",
          "m.",
          "D.M.",
          "WSC",
          "NSC",
          "+",
          "starch",
          "=",
          "sugar",
          "Units:",
          "% ",
          "mg/kg",
          "expressed",
          "final",
          "preliminary",
          "report",
          "replaces",
          "R-7",
          "revision",
          "2",
          "(1)",
          "12.",
          "not",
          "Trockenmasse",
          "bezogen auf",
          "sur sec",
          "NIR",
          "amended",
          "Crude protein",
          "n.d.",
          "means",
          "&",
          "*",
          "\u00B2",
          "ersetzt");

  private static Line line(List<String> texts) {
    Piece.Reading reading =
        new Piece.Reading(
            DICTIONARY,
            Dialect.POINT,
            Legend.of(
                DICTIONARY,
                new rickyard.intake.grid.Grid(
                    rickyard.intake.grid.Grid.Kind.TABLE, List.of(), List.of())),
            ColumnKey.of(
                DICTIONARY,
                new rickyard.intake.grid.Grid(
                    rickyard.intake.grid.Grid.Kind.TABLE, List.of(), List.of())),
            true);
    List<Piece> pieces = new ArrayList<>();
    for (int at = 0; at < texts.size(); at++) {
      pieces.add(Piece.of(reading, new Cell(texts.get(at), 100.0 * at, 100.0 * at + 99, at + 1)));
    }
    return new Line(1, 1, pieces);
  }

  private static List<String> said(Line line) {
    List<String> said = new ArrayList<>();
    Sentences sentences = new Sentences(DICTIONARY);
    sentences
        .basis(line.text(), 0, line.pieces().size() == 1)
        .ifPresent(b -> said.add("basis " + b));
    line.pieces()
        .forEach(p -> sentences.basis(p.text(), 0, false).ifPresent(b -> said.add("basis " + b)));
    said.addAll(Definitions.in(DICTIONARY, line.text()));
    said.addAll(defined(line));
    Meaning head = DICTIONARY.read(line.text(), EnumSet.of(Kind.FIELD, Kind.STATUS));
    if (head.has(Kind.FIELD, "replaces") || head.has(Kind.STATUS)) {
      said.add("head " + head.phrases());
    }
    return said;
  }

  private static List<String> defined(Line line) {
    List<String> said =
        new ArrayList<>(
            DICTIONARY.read(line.text(), EnumSet.of(Kind.DEFINITION)).all(Kind.DEFINITION));
    UnitNote.read(DICTIONARY, line.text()).ifPresent(note -> said.add("units " + note));
    return said;
  }

  @Test
  void aSilentLineSaysNothing() {
    Random random = new Random(11);
    TreeMap<Boolean, Integer> seen = new TreeMap<>();
    for (int round = 0; round < 10_000; round++) {
      List<String> texts = new ArrayList<>();
      int cells = 1 + random.nextInt(4);
      for (int cell = 0; cell < cells; cell++) {
        String first = PARTS.get(random.nextInt(PARTS.size()));
        String second = PARTS.get(random.nextInt(PARTS.size()));
        texts.add((random.nextInt(4) > 0 ? first : first + " " + second).strip());
      }
      Line line = line(texts);
      if (line.isSilent()) {
        assertEquals(List.of(), said(line), () -> texts.toString());
      }
      if (!line.mayDefine()) {
        assertEquals(List.of(), defined(line), () -> texts.toString());
      }
      seen.merge(line.isSilent(), 1, Integer::sum);
    }
    assertTrue(seen.getOrDefault(true, 0) > 300, seen.toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "L-000123;SILENT",
        "8.1;SILENT",
        "2026-02-13;SILENT",
        "Crude protein;SILENT",
        "dry matter;STATING",
        "preliminary;STATING",
        "Basis: dry matter;OPEN",
        "NSC = WSC + starch;OPEN",
        "D.M.;OPEN",
        "Results (1);OPEN"
      })
  void aCellHasItsVoice(String text, Voice voice) {
    assertEquals(voice, DICTIONARY.voice(text));
  }
}
