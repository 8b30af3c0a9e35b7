package rickyard.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import rickyard.bench.LongTable;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.forage.Sample;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/**
 * Tables of a season: a row says the same wherever it stands, and what one row settles for the
 * whole document is settled for all of them.
 */
class LongTablesTest {
  private static final long SEED = 7;
  private static final int SAMPLES = 600;
  private static final int PORTION = 37;

  private static final Intake INTAKE =
      new Intake(
          new DocumentReader(),
          new Interpreter(DictionaryTables.load(Optional.empty())),
          ReadLimits.DEFAULT);

  private static Report report(byte[] table) {
    ReadDocument read = INTAKE.read(table, "long.csv").documents().get(0);
    return read.report().orElseThrow(() -> new AssertionError(read.code() + " " + read.reason()));
  }

  private static Report report(String table) {
    return report(table.getBytes(StandardCharsets.UTF_8));
  }

  /** All that a reading says but its place. */
  private static String words(Reading reading) {
    return String.join(
        " | ",
        reading.analyte().value(),
        reading.raw(),
        reading.rawUnit(),
        reading.rawBasis(),
        reading.method().code(),
        reading.doubt(),
        reading.unit().toString(),
        reading
            .value()
            .map(v -> List.of(v.best(), v.low(), v.high(), v.u()) + " " + v.unit() + v.basis())
            .orElse(""));
  }

  private static List<String> words(Sample sample, boolean sorted) {
    List<String> words = new ArrayList<>(sample.readings().stream().map(r -> words(r)).toList());
    if (sorted) {
      words.sort(null);
    }
    words.add(sample.label() + " " + sample.sampledOn() + " " + sample.checks());
    sample.doubts().forEach(d -> words.add(d.code() + " " + d.question()));
    return words;
  }

  private static Map<String, List<String>> byLabel(Report report, boolean sorted) {
    Map<String, List<String>> samples = new TreeMap<>();
    report.samples().forEach(s -> samples.put(s.label(), words(s, sorted)));
    assertEquals(report.samples().size(), samples.size());
    return samples;
  }

  /** The same rows in tables of so many, each under the head. */
  private static Map<String, List<String>> inPortions(byte[] table, int rows) {
    List<String> lines = new String(table, StandardCharsets.UTF_8).lines().toList();
    Map<String, List<String>> samples = new TreeMap<>();
    for (int from = 1; from < lines.size(); from += rows) {
      List<String> some = lines.subList(from, Math.min(from + rows, lines.size()));
      samples.putAll(byLabel(report(lines.get(0) + "\n" + String.join("\n", some) + "\n"), false));
    }
    return samples;
  }

  @Test
  void aRowOfAWideTableSaysTheSameInAShortTable() {
    byte[] table = LongTable.wide(SAMPLES, SEED);

    Map<String, List<String>> whole = byLabel(report(table), false);

    assertEquals(SAMPLES, whole.size());
    assertEquals(inPortions(table, PORTION), whole);
  }

  @Test
  void rowsOfFiguresSayTheSameInAShortTable() {
    byte[] table = LongTable.byFigure(SAMPLES / 3 * LongTable.ANALYTES, SEED);

    Map<String, List<String>> whole = byLabel(report(table), false);

    assertEquals(SAMPLES / 3, whole.size());
    assertEquals(inPortions(table, PORTION * LongTable.ANALYTES), whole);
  }

  @Test
  void aTableSortedByAnalyteHoldsTheSameSamples() {
    int rows = SAMPLES / 3 * LongTable.ANALYTES;

    assertEquals(
        byLabel(report(LongTable.byFigure(rows, SEED)), true),
        byLabel(report(LongTable.byAnalyte(rows, SEED)), true));
  }

  @Test
  void everyFigureNamesItsOwnRow() {
    List<Sample> samples = report(LongTable.wide(SAMPLES, SEED)).samples();

    for (int at = 0; at < SAMPLES; at++) {
      int row = at + 2;
      assertTrue(samples.get(at).readings().stream().allMatch(r -> r.place().row() == row));
    }
  }

  /** A wide table of two columns, the line of one sample replaced or followed by another. */
  private static String table(String mark, Function<Integer, String> row) {
    StringBuilder text =
        new StringBuilder(String.join(mark, "Lot", "Sampled", "WSC (% DM)", "Starch (% DM)"));
    for (int at = 0; at < SAMPLES; at++) {
      text.append('\n').append(row.apply(at));
    }
    return text.append('\n').toString();
  }

  @Test
  void oneDateFarDownTellsTheOrderOfAllDates() {
    String open = table(",", at -> "L-" + at + ",03/04/2026,9.4,1.2");
    String told =
        table(",", at -> "L-" + at + (at == 550 ? ",25/04/2026" : ",03/04/2026") + ",9.4,1.2");

    assertTrue(report(open).samples().stream().allMatch(s -> s.sampledOn().isEmpty()));
    assertEquals("2026-04-03", report(told).samples().get(3).sampledOn().orElseThrow().toString());
  }

  @Test
  void oneFigureFarDownTellsTheDecimalMarkOfAllFigures() {
    String open = table(";", at -> "L-" + at + ";2026-04-03;1,234;2");
    String told =
        table(";", at -> "L-" + at + ";2026-04-03;" + (at == 550 ? "9,4" : "1,234") + ";2");

    assertTrue(wsc(report(open).samples().get(3)).value().isEmpty());
    assertEquals(1.234, wsc(report(told).samples().get(3)).value().orElseThrow().best(), 1e-12);
  }

  private static Reading wsc(Sample sample) {
    return sample.readings().stream()
        .filter(r -> r.analyte().value().equals("WSC"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aStatementBetweenTwoRowsIsHeard() {
    String plain = "L-%d,2026-04-03,9.4,1.2";
    String head = "Lot,Sampled,WSC %,Starch %\n";
    StringBuilder text = new StringBuilder(head);
    for (int at = 0; at < SAMPLES; at++) {
      text.append(plain.formatted(at)).append('\n');
    }
    assertTrue(wsc(report(text.toString()).samples().get(3)).value().isEmpty());

    text.append("All results are on a dry matter basis\n");

    assertEquals("dm", wsc(report(text.toString()).samples().get(3)).rawBasis());
  }

  @Test
  void rowsThatContradictEachOtherAboutTheReportSayNothingOfItAndAStandingHoldsForItsSample() {
    String head = "Lot,Report no,Status,Analyte,Result,Unit,Basis\n";
    String row = "L-%d,%s,%s,WSC,9.4,%%,dry matter\n";
    StringBuilder one = new StringBuilder(head);
    StringBuilder torn = new StringBuilder(head);
    for (int at = 0; at < SAMPLES; at++) {
      one.append(row.formatted(at, "R-7", "final"));
      torn.append(
          row.formatted(at, at == 550 ? "R-8" : "R-7", at == 500 ? "preliminary" : "final"));
    }

    assertEquals("R-7", report(one.toString()).reportNo());
    assertEquals("", report(torn.toString()).reportNo());
    Report preliminary = report(torn.toString());
    assertEquals(
        List.of("L-500"),
        preliminary.samples().stream()
            .filter(s -> s.standing().orElse(preliminary.status()).code().equals("preliminary"))
            .map(Sample::label)
            .toList());
  }

  @Test
  void aRepeatedHeadAndAnEarlierLotChangeNothing() {
    byte[] table = LongTable.wide(SAMPLES, SEED);
    List<String> lines =
        new ArrayList<>(new String(table, StandardCharsets.UTF_8).lines().toList());
    List<String> again = new ArrayList<>(lines);
    again.add(500, lines.get(0));
    again.add(250, lines.get(0));

    assertEquals(
        byLabel(report(table), false), byLabel(report(String.join("\n", again) + "\n"), false));

    again.add(lines.get(1).replaceAll(",[0-9.]+$", ",999"));
    List<Reading> iron =
        report(String.join("\n", again) + "\n").samples().get(0).readings().stream()
            .filter(r -> r.analyte().value().equals("FE"))
            .toList();
    assertEquals(1, iron.size());
    assertEquals("printed-twice", iron.get(0).doubt());
  }
}
