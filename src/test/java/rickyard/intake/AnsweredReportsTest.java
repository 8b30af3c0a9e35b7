package rickyard.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.Analyte;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Answer;
import rickyard.core.forage.AnswerUse;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Lot;
import rickyard.core.forage.Question;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Received;
import rickyard.core.forage.Settled;
import rickyard.core.forage.SettledSample;
import rickyard.core.forage.Settlement;
import rickyard.core.forage.Unsettled;
import rickyard.core.quantity.Evidence;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Dictionary;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;
import rickyard.tables.UncertaintyTable;

/** Every question about a report, from the bytes to the answer and what it does. */
class AnsweredReportsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final Dictionary DICTIONARY = DictionaryTables.load(Optional.empty());
  private static final Intake INTAKE =
      new Intake(
          new DocumentReader(ReadLimits.DEFAULT), new Interpreter(DICTIONARY), ReadLimits.DEFAULT);

  private static final List<String> SHOWN =
      List.of("WSC", "STARCH", "NSC_ESC", "NO3", "CA", "FE", "NDF");
  private static final Map<String, String> FILES = files();

  private static Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    files.put(
        "no-basis",
        "Lot,N2\nAnalyte,Unit,Result,Detection limit\nDry matter,%,88.0,\nWSC,%,8.8,\n"
            + "Starch,%,ND,0.4\n");
    files.put(
        "two-bases",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC (as fed),%,8.8\nStarch,%,0.9\n");
    files.put(
        "no-unit", "Lot,N2\nAnalyte,Dry matter\nDry matter,88.0\nWSC,95\nStarch,9\nCalcium,4.5\n");
    files.put(
        "wrong-unit",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,Mcal/kg,9.5\nStarch,%,0.9\n");
    files.put("heading", "Lot,N2\nAnalyte,Unit,Zorb\nDry matter,%,88.0\nWSC,%,8.8\nStarch,%,0.9\n");
    files.put(
        "letters", "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.S\nStarch,%,0.9\n");
    files.put(
        "negative",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,-9.5\nStarch,%,0.9\n");
    files.put(
        "about", "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,~9.5\nStarch,%,0.9\n");
    files.put(
        "range",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.1 - 9.9\nStarch,%,0.9\n");
    files.put(
        "not-detected",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\nStarch,%,ND\n");
    files.put(
        "trace", "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\nStarch,%,trace\n");
    files.put(
        "marks",
        "Lot;N2\nAnalyte;Unit;Dry matter\nDry matter;%;88\nIron;mg/kg;1,250\nStarch;%;1\nWSC;%;9\n");
    files.put(
        "mixed-marks",
        "Lot;N2\nAnalyte;Unit;Dry matter\nDry matter;%;88.0\nWSC;%;9,5\nStarch;%;0,9\n");
    files.put("nsc", "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nNSC,%,10.4\n");
    files.put(
        "sugar", "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nSugar,%,9.5\nStarch,%,0.9\n");
    files.put(
        "nitrate",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\nNitrate,ppm,4430\n");
    files.put(
        "twice",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\nWSC,%,9.9\nStarch,%,0.9\n");
    files.put(
        "sum",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\nStarch,%,0.9\n"
            + "NSC (WSC + starch),%,14.0\n");
    files.put(
        "order",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\nStarch,%,0.9\nADF,%,60.1\n"
            + "NDF,%,50.2\n");
    files.put(
        "swapped",
        "Lot,N2\nAnalyte,Unit,As fed,Dry matter\nWSC,%,10.0,8.80\nStarch,%,1.0,0.88\n"
            + "Crude protein,%,10.0,8.80\nDry matter,%,88.0,\n");
    files.put(
        "same",
        "Lot,N2\nAnalyte,Unit,As fed,Dry matter\nWSC,%,8.80,8.80\nStarch,%,0.88,0.88\n"
            + "Crude protein,%,8.80,8.80\nDry matter,%,88.0,\n");
    files.put(
        "unusual",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,46.1\nStarch,%,0.9\n");
    files.put(
        "impossible",
        "Lot,N2\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,95.0\nStarch,%,0.9\n");
    files.put(
        "date",
        "Lot,N2\nDate sampled,03/02/2026\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\n"
            + "Starch,%,0.9\n");
    files.put(
        "no-date",
        "Lot,N2\nDate sampled,31/02/2026\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\n"
            + "Starch,%,0.9\n");
    files.put(
        "future",
        "Lot,N2\nDate sampled,2026-05-02\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,9.5\n"
            + "Starch,%,0.9\n");
    return files;
  }

  static Lot lot(String id) {
    return new Lot(
        id,
        "co-op",
        "grass-hay",
        OptionalDouble.empty(),
        "1",
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        OptionalInt.of(12),
        Optional.empty(),
        "");
  }

  private static Settled settle(String file, List<Answer> answers) {
    byte[] bytes = FILES.getOrDefault(file, "").getBytes(StandardCharsets.UTF_8);
    List<Received> received = new ArrayList<>();
    for (ReadDocument document : INTAKE.read(bytes, file + ".csv").documents()) {
      document.report().ifPresent(r -> received.add(new Received(r, DAY, file + ".csv")));
    }
    Map<AnalyteCode, Analyte> analytes = new TreeMap<>();
    DICTIONARY.analytes().forEach((code, rule) -> analytes.put(code, rule.analyte()));
    return new Settlement(
            new AnalysisMaker(UncertaintyTable.load(Optional.empty()).uncertainties()), analytes)
        .settle(new Unsettled(received, List.of(lot("N2")), List.of(), answers, List.of(), DAY));
  }

  private static List<Question> ofKind(Settled settled, String kind) {
    return settled.questions().stream().filter(q -> q.kind().equals(kind)).toList();
  }

  private static Answer answer(Question question, String said) {
    return new Answer(question.id(), said, "ruth", DAY, "");
  }

  /** Some values in force of lot N2, on dry matter. */
  private static String values(Settled settled) {
    return settled
        .find("N2", "")
        .flatMap(InForce::analysis)
        .map(
            a ->
                a.analysis().contents().entrySet().stream()
                    .filter(e -> SHOWN.contains(e.getKey().value()))
                    .filter(e -> e.getValue().isBoundedAbove())
                    .map(
                        e -> String.format(Locale.ROOT, "%s %.4g", e.getKey(), e.getValue().best()))
                    .collect(Collectors.joining(", ")))
        .orElse("none");
  }

  private static List<Reading> readings(Settled settled) {
    return settled.samples().stream()
        .map(SettledSample::sample)
        .flatMap(s -> s.readings().stream())
        .toList();
  }

  @ParameterizedTest(name = "{0}: {1} answered \"{2}\"")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          no-basis     | basis-not-stated           | as fed         | 'STARCH 0.2273, WSC 10.00'
          no-basis     | basis-not-stated           | dry matter     | 'STARCH 0.2000, WSC 8.800'
          two-bases    | basis-contradiction        | as fed         | 'STARCH 0.9000, WSC 10.00'
          no-unit      | unit-not-stated            | g/kg           | 'CA 0.4500, STARCH 0.9000, WSC 9.500'
          wrong-unit   | unit-not-possible          | %              | 'STARCH 0.9000, WSC 9.500'
          heading      | column-not-understood      | as fed         | 'STARCH 1.023, WSC 10.00'
          letters      | letters-in-number          | 9.5            | 'STARCH 0.9000, WSC 9.500'
          negative     | negative-number            | 9.5            | 'STARCH 0.9000, WSC 9.500'
          about        | approximate-number         | 9.5            | 'STARCH 0.9000, WSC 9.500'
          range        | range-printed              | 9.9            | 'STARCH 0.9000, WSC 9.900'
          not-detected | detection-limit-not-stated | 0.4            | 'STARCH 0.2000, WSC 9.500'
          trace        | trace-without-limit        | 0.4            | 'STARCH 0.2000, WSC 9.500'
          marks        | number-ambiguous           | 1250           | 'FE 1250, STARCH 1.000, WSC 9.000'
          mixed-marks  | decimal-mark-mixed         | decimal mark   | 'STARCH 0.9000, WSC 9.500'
          nsc          | nsc-definition-unknown     | NSC_ESC        | 'NSC_ESC 10.40'
          sugar        | sugar-not-defined          | WSC            | 'STARCH 0.9000, WSC 9.500'
          nitrate      | nitrate-form-unknown       | NO3            | 'NO3 4430, WSC 9.500'
          twice        | printed-twice              | 9.9 %          | 'STARCH 0.9000, WSC 9.900'
          sum          | identity-broken            | as printed     | 'STARCH 0.9000, WSC 9.500'
          sum          | identity-broken            | leave out NSC_WSC | 'STARCH 0.9000, WSC 9.500'
          order        | order-broken               | leave out      | 'STARCH 0.9000, WSC 9.500'
          swapped      | columns-swapped            | swapped        | 'STARCH 1.000, WSC 10.00'
          same         | columns-same-basis         | as fed         | 'STARCH 1.000, WSC 10.00'
          unusual      | outside-usual-range        | as printed     | 'STARCH 0.9000, WSC 46.10'
          unusual      | outside-usual-range        | 16.1           | 'STARCH 0.9000, WSC 16.10'
          impossible   | implausible-figure         | 9.5            | 'STARCH 0.9000, WSC 9.500'
          date         | date-ambiguous             | 2026-02-03     | 'STARCH 0.9000, WSC 9.500'
          no-date      | date-not-understood        | 2026-02-28     | 'STARCH 0.9000, WSC 9.500'
          future       | date-in-future             | 2026-02-05     | 'STARCH 0.9000, WSC 9.500'
          """)
  void anAnswerSettlesTheQuestion(String file, String kind, String said, String values) {
    Settled open = settle(file, List.of());
    List<Question> asked = ofKind(open, kind);
    assertFalse(asked.isEmpty(), () -> kind + " in " + open.questions());
    List<Answer> answers = asked.stream().map(q -> answer(q, said)).toList();

    Settled settled = settle(file, answers);

    assertEquals(List.of(), settled.questions());
    assertEquals(values, values(settled));
    assertTrue(
        settled.answers().stream().allMatch(a -> a.effect().equals(AnswerUse.SETTLED)),
        () -> settled.answers().toString());
    assertEquals(List.of(), ofKind(settled, kind));
  }

  @ParameterizedTest(name = "{0}: {1} left out")
  @CsvSource({
    "no-basis,basis-not-stated",
    "no-unit,unit-not-stated",
    "letters,letters-in-number",
    "range,range-printed",
    "trace,trace-without-limit",
    "nsc,nsc-definition-unknown",
    "twice,printed-twice",
    "sum,identity-broken",
    "swapped,columns-swapped",
    "unusual,outside-usual-range",
    "impossible,implausible-figure"
  })
  void leftOutFiguresAreNeverInForce(String file, String kind) {
    List<Question> asked = ofKind(settle(file, List.of()), kind);
    Settled settled = settle(file, asked.stream().map(q -> answer(q, "leave out")).toList());

    assertEquals(List.of(), settled.questions());
    assertTrue(readings(settled).stream().anyMatch(r -> r.doubt().equals("left-out")));
    readings(settled).stream()
        .filter(r -> r.doubt().equals("left-out"))
        .forEach(
            r ->
                assertTrue(
                    settled
                        .find("N2", "")
                        .flatMap(InForce::analysis)
                        .flatMap(a -> a.analysis().find(r.analyte()))
                        .filter(
                            v -> v.isBoundedAbove() && !(v.evidence() instanceof Evidence.Derived))
                        .isEmpty(),
                    r::toString));
  }

  @ParameterizedTest(name = "{0}: \"{2}\" is no answer to {1}")
  @CsvSource({
    "no-basis,basis-not-stated,wet",
    "no-unit,unit-not-stated,furlongs",
    "letters,letters-in-number,nine",
    "nsc,nsc-definition-unknown,WSC",
    "sum,identity-broken,leave out CA",
    "swapped,columns-swapped,as printed",
    "impossible,implausible-figure,as printed",
    "date,date-ambiguous,2026-01-01",
    "no-date,date-not-understood,soon"
  })
  void aWrongAnswerLeavesTheQuestionOpenAndSaysSo(String file, String kind, String said) {
    Settled open = settle(file, List.of());
    Question asked = ofKind(open, kind).get(0);

    Settled settled = settle(file, List.of(answer(asked, said)));

    Question still = ofKind(settled, kind).get(0);
    assertEquals(asked.id(), still.id());
    assertTrue(
        still.why().endsWith("The answer \"" + said + "\" of ruth, 2026-03-16, is not a choice."),
        still.why());
    assertEquals(AnswerUse.NOT_A_CHOICE, settled.answers().get(0).effect());
    assertEquals(values(open), values(settled));
  }

  @Test
  void anAnsweredFigureSaysWhoAndWhen() {
    Question asked = ofKind(settle("letters", List.of()), "letters-in-number").get(0);

    Settled settled = settle("letters", List.of(answer(asked, "9.5")));

    Reading wsc =
        readings(settled).stream()
            .filter(r -> r.analyte().value().equals("WSC"))
            .findFirst()
            .orElseThrow();
    assertEquals("9.S", wsc.raw());
    assertEquals(
        new Evidence.Answered(asked.id(), "ruth", "2026-03-16"),
        wsc.value().orElseThrow().evidence());
  }

  @Test
  void anAnswerToNoQuestionCostsNothingAndIsListed() {
    Settled settled = settle("sum", List.of(new Answer("q-gone", "yes", "ruth", DAY, "")));

    assertEquals(AnswerUse.NO_SUCH_QUESTION, settled.answers().get(0).effect());
    assertEquals(settle("sum", List.of()).questions(), settled.questions());
  }
}
