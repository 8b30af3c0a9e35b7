package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.forage.Reports.AS_OF;
import static rickyard.core.forage.Reports.N2;
import static rickyard.core.forage.Reports.answer;
import static rickyard.core.forage.Reports.fin;
import static rickyard.core.forage.Reports.hasAnalysis;
import static rickyard.core.forage.Reports.outcome;
import static rickyard.core.forage.Reports.question;
import static rickyard.core.forage.Reports.sugars;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;

/** Layouts over several mornings, each morning with the book of the one before. */
class LayoutMemoryTest {
  private static final Lot N3 = Reports.lot("N3", Optional.of(LocalDate.of(2026, 7, 1)));
  private static final Lot N4 = Reports.lot("N4", Optional.of(LocalDate.of(2026, 7, 1)));
  private static final Layout USUAL =
      layout("fellside", List.of("analyte", "unit", "as fed=af", "dry matter=dm"), "%", "af", "dm");

  private static Layout layout(String lab, List<String> headings, String unit, String... bases) {
    List<LayoutLine> lines = List.of(line("WSC", unit, bases), line("STARCH", unit, bases));
    return new Layout(
        lab,
        headings.stream().map(LayoutMemoryTest::heading).toList(),
        new TreeSet<>(),
        new TreeSet<>(List.of("lot")),
        lines);
  }

  private static LayoutHeading heading(String text) {
    String[] parts = text.split("=", -1);
    return new LayoutHeading(parts[0], "", parts.length > 1 ? parts[1] : "", "");
  }

  private static LayoutLine line(String code, String unit, String... bases) {
    return new LayoutLine(
        code,
        new TreeSet<>(List.of(code.toLowerCase(java.util.Locale.ROOT))),
        new TreeSet<>(List.of(unit)),
        new TreeSet<>(List.of(bases)));
  }

  private static Layout columns(String... headings) {
    return layout("fellside", List.of(headings), "%", "af", "dm");
  }

  private static Received with(Received r, Layout layout) {
    Report o = r.report();
    return new Received(
        new Report(
            o.document(),
            o.lab(),
            o.reportNo(),
            o.revision(),
            o.replaces(),
            o.status(),
            o.reportedOn(),
            o.samples(),
            o.notes(),
            layout),
        r.readOn(),
        r.path());
  }

  private static Received report(String document, String lot, Layout layout) {
    return with(fin(document, "R-" + document, sugars(lot, 8, 1)), layout);
  }

  private static Settled settle(
      LayoutBook book, List<Answer> answers, List<Decision> decisions, Received... reports) {
    return Reports.settle(
        new Unsettled(
            List.of(reports), List.of(N2, N3, N4), List.of(), answers, decisions, AS_OF, book));
  }

  private static Settled settle(LayoutBook book, Received... reports) {
    return settle(book, List.of(), List.of(), reports);
  }

  private static LayoutBook knowing(Layout layout) {
    return LayoutBook.empty()
        .after(settle(LayoutBook.empty(), report("d0", "N4", layout)).layouts());
  }

  private static LayoutSeen seen(Settled settled, String document) {
    return settled.layouts().stream()
        .filter(s -> s.document().equals(document))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theFirstReportIsNewAndTheNextOneIsKnown() {
    Settled first = settle(LayoutBook.empty(), report("d1", "N2", USUAL));
    Settled next = settle(LayoutBook.empty().after(first.layouts()), report("d2", "N3", USUAL));

    assertEquals("new", seen(first, "d1").state());
    assertEquals("known", seen(next, "d2").state());
    assertEquals(List.of(), first.questions());
    assertEquals(List.of(), next.questions());
  }

  @Test
  void anAnalyteMoreOrLessIsNoDrift() {
    Layout more =
        new Layout(
            USUAL.lab(),
            USUAL.headings(),
            USUAL.more(),
            USUAL.fields(),
            List.of(line("WSC", "%", "af", "dm"), line("SE", "mg/kg", "af", "dm")));

    Settled settled = settle(knowing(USUAL), report("d1", "N2", more));

    assertEquals("known", seen(settled, "d1").state());
    assertEquals(List.of(), settled.questions());
  }

  @Test
  void aRenamedHeadingThatSaysTheSameIsShownAndNotAsked() {
    Layout renamed = columns("analyte", "unit", "as fed=af", "dm basis=dm");

    Settled settled = settle(knowing(USUAL), report("d1", "N2", renamed));

    assertEquals("changed", seen(settled, "d1").state());
    assertEquals(
        List.of("heading \"dry matter\" is now \"dm basis\""), seen(settled, "d1").notes());
    assertEquals(List.of(), settled.questions());
    assertTrue(seen(settled, "d1").remembered());
  }

  @Test
  void aHeadingThatNowSaysAnotherBasisOrHoldsSomethingElseIsAsked() {
    Layout otherBasis = columns("analyte", "unit", "as fed=af", "fresh weight=af");

    Settled settled = settle(knowing(USUAL), report("d1", "N2", otherBasis));

    assertTrue(
        question(settled, "layout-changed")
            .question()
            .contains("heading \"dry matter\" is now \"fresh weight\""));
  }

  @Test
  void anotherBasisOfAKnownLineIsAsked() {
    Layout dry = layout("fellside", List.of("analyte", "result"), "%", "dm");
    Layout fed = layout("fellside", List.of("analyte", "result"), "%", "af");

    Settled settled = settle(knowing(dry), report("d1", "N2", fed));

    assertEquals(
        List.of("basis of WSC, STARCH is as fed, was dry matter"), seen(settled, "d1").notes());
    assertEquals(1, settled.questions().size());
  }

  @Test
  void aColumnThatIsNoLongerPrintedIsShownAndNotAsked() {
    Layout less = layout("fellside", List.of("analyte", "unit", "as fed=af"), "%", "af");

    Settled settled = settle(knowing(USUAL), report("d1", "N2", less));

    assertEquals(List.of("column \"dry matter\" is not printed"), seen(settled, "d1").notes());
    assertEquals(List.of(), settled.questions());
  }

  @Test
  void anotherUnitOfAKnownLineIsAskedAndNothingClearsMeanwhile() {
    Layout grams =
        layout(
            "fellside",
            List.of("analyte", "unit", "as fed=af", "dry matter=dm"),
            "g/kg",
            "af",
            "dm");

    Settled settled = settle(knowing(USUAL), report("d1", "N2", grams));

    assertEquals(
        "The layout of Fellside is not the one that was read before: unit of WSC, STARCH is g/kg,"
            + " was %. Are the figures right as read?",
        question(settled, "layout-changed").question());
    assertEquals("question", outcome(settled, "d1"));
    assertTrue(!hasAnalysis(settled, "N2"));
    assertTrue(!seen(settled, "d1").remembered());
  }

  @Test
  void columnsThatChangedPlacesAreAsked() {
    Layout swapped = columns("analyte", "unit", "dry matter=dm", "as fed=af");

    Settled settled = settle(knowing(USUAL), report("d1", "N2", swapped));

    assertTrue(
        question(settled, "layout-changed")
            .question()
            .contains("column \"dry matter\" stands where \"as fed\" was"));
  }

  @Test
  void columnsThatTheFiguresThemselvesProveAreNotAsked() {
    Layout swapped = columns("analyte", "unit", "dry matter=dm", "as fed=af");
    List<Check> ratios =
        List.of("WSC", "STARCH", "CP").stream()
            .map(
                c ->
                    new Check(
                        "as fed / dry matter = DM",
                        Check.Kind.EXACT,
                        true,
                        List.of(new AnalyteCode(c)),
                        ""))
            .toList();
    Sample proven = Samples.with(sugars("N2", 8, 1), List.of(), ratios);
    Sample broken =
        Samples.with(
            sugars("N2", 8, 1),
            List.of(),
            List.of(
                ratios.get(0),
                ratios.get(1),
                new Check("as fed / dry matter = DM", Check.Kind.EXACT, false, List.of(), "")));

    assertEquals(
        List.of(), settle(knowing(USUAL), with(fin("d1", "R-1", proven), swapped)).questions());
    assertEquals(
        1, settle(knowing(USUAL), with(fin("d1", "R-1", broken), swapped)).questions().size());
  }

  @Test
  void theAnswerAsReadAcceptsTheChangeAndItIsRememberedFromThenOn() {
    Layout swapped = columns("analyte", "unit", "dry matter=dm", "as fed=af");
    LayoutBook book = knowing(USUAL);
    Received report = report("d1", "N2", swapped);
    String id = question(settle(book, report), "layout-changed").id();

    Settled answered = settle(book, List.of(answer(id, "as read")), List.of(), report);
    Settled next = settle(book.after(answered.layouts()), report, report("d2", "N3", swapped));

    assertEquals("accepted", outcome(answered, "d1"));
    assertEquals(List.of(), next.questions());
    assertEquals("known", seen(next, "d2").state());
  }

  @Test
  void theAnswerLeaveOutTakesTheReportOut() {
    Layout swapped = columns("analyte", "unit", "dry matter=dm", "as fed=af");
    Received report = report("d1", "N2", swapped);
    String id = question(settle(knowing(USUAL), report), "layout-changed").id();

    Settled settled = settle(knowing(USUAL), List.of(answer(id, "leave out")), List.of(), report);

    assertTrue(!hasAnalysis(settled, "N2"));
    assertTrue(!seen(settled, "d1").remembered());
  }

  @Test
  void threeReportsThatChangedInTheSameWayAskOneQuestion() {
    Layout swapped = columns("analyte", "unit", "dry matter=dm", "as fed=af");

    Settled settled =
        settle(
            knowing(USUAL),
            report("d1", "N2", swapped),
            report("d2", "N3", swapped),
            report("d3", "N4", swapped));

    assertEquals(1, settled.questions().size(), () -> settled.questions().toString());
    for (String lot : List.of("N2", "N3", "N4")) {
      assertTrue(!hasAnalysis(settled, lot), lot);
    }
  }

  @Test
  void aReportThatAsksForItsBasisAnywayIsNotAskedTwice() {
    Layout swapped = columns("analyte", "unit", "dry matter=dm", "as fed=af");
    Doubt basis =
        new Doubt(
            "basis-not-stated",
            "WSC",
            Optional.empty(),
            "As fed or on dry matter?",
            List.of("as fed", "dry matter"),
            "",
            "");
    Sample open =
        Samples.with(
            Samples.of(
                "N2",
                Samples.inDoubt(Samples.dm("WSC", 8), "basis-not-stated"),
                Samples.dm("STARCH", 1)),
            List.of(basis),
            List.of());

    Settled settled = settle(knowing(USUAL), with(fin("d1", "R-1", open), swapped));

    assertEquals(
        List.of("basis-not-stated"), settled.questions().stream().map(Question::kind).toList());
    assertEquals("changed", seen(settled, "d1").state());
  }

  @Test
  void anotherLaboratoryAndOneWithoutANameAreNewAndNeverAChange() {
    Layout other =
        layout(
            "hollow farm", List.of("analyte", "unit", "dry matter=dm", "as fed=af"), "g/kg", "af");
    Layout nameless = layout("", List.of("analyte", "result"), "%", "dm");
    Layout namelessGrams = layout("", List.of("analyte", "result"), "g/kg", "dm");

    Settled settled =
        settle(knowing(USUAL), report("d1", "N2", other), report("d2", "N3", nameless));
    Settled next =
        settle(LayoutBook.empty().after(settled.layouts()), report("d3", "N4", namelessGrams));

    assertEquals("new", seen(settled, "d1").state());
    assertEquals("new", seen(settled, "d2").state());
    assertEquals("known", seen(next, "d3").state());
    assertEquals(List.of(), next.questions());
  }

  @Test
  void anotherKindOfDocumentOfALaboratoryIsANewLayoutAndNoChange() {
    Layout export = layout("fellside", List.of("lab no", "lot", "sampled"), "g/kg", "dm");

    Settled settled = settle(knowing(USUAL), report("d1", "N2", export));

    assertEquals("new", seen(settled, "d1").state());
    assertEquals(List.of(), settled.questions());
  }

  @Test
  void neitherTheOrderOfReportsNorTheirPlaceInTheMorningChangesAnything() {
    Layout swapped = columns("analyte", "unit", "dry matter=dm", "as fed=af");
    List<Received> reports =
        new ArrayList<>(
            List.of(
                report("d1", "N2", USUAL), report("d2", "N3", swapped), report("d3", "N4", USUAL)));
    Settled forward = settle(LayoutBook.empty(), reports.toArray(Received[]::new));
    Collections.reverse(reports);
    Settled backward = settle(LayoutBook.empty(), reports.toArray(Received[]::new));

    assertEquals(forward.layouts(), backward.layouts());
    assertEquals(List.of(), forward.questions());
    assertEquals(
        List.of("new", "new", "new"), forward.layouts().stream().map(LayoutSeen::state).toList());
    assertEquals(
        LayoutBook.empty().after(forward.layouts()), LayoutBook.empty().after(backward.layouts()));
  }

  @Test
  void aBetterReaderThatFindsOtherWordsOnAcceptedReportsReopensNothing() {
    LayoutBook book =
        LayoutBook.empty().after(settle(LayoutBook.empty(), report("d1", "N2", USUAL)).layouts());
    Layout better = columns("test", "measure", "dry matter=dm", "as fed=af");

    Settled settled =
        settle(
            book,
            Reports.read(report("d1", "N2", better), AS_OF.minusDays(1)),
            report("d2", "N3", better));

    assertEquals(List.of(), settled.questions());
    assertEquals("known", seen(settled, "d2").state());
  }

  @Test
  void aCorrectedFigureMakesTheNextReportOfItsLayoutAsk() {
    Received misread = Reports.read(report("d1", "N2", USUAL), AS_OF.minusDays(5));
    LayoutBook book = LayoutBook.empty().after(settle(LayoutBook.empty(), misread).layouts());
    Received next = report("d2", "N3", USUAL);
    Received other = report("d3", "N4", layout("hollow farm", List.of("analyte"), "%", "dm"));
    Decision correction =
        new Decision(
            AS_OF.minusDays(1), "N2 WSC", "correction", "8.8", Optional.empty(), "ruth", "", 2);

    Settled asked = settle(book, List.of(), List.of(correction), misread, next, other);
    Question question = question(asked, "layout-misread");
    Settled answered =
        settle(
            book,
            List.of(answer(question.id(), "as read")),
            List.of(correction),
            misread,
            next,
            other);

    assertTrue(question.question().startsWith("This layout was misread before (N2 WSC"));
    assertEquals("question", outcome(asked, "d2"));
    assertEquals("accepted", outcome(asked, "d1"));
    assertEquals("accepted", outcome(asked, "d3"));
    assertEquals("accepted", outcome(answered, "d2"));
    assertEquals(List.of(), answered.questions());
  }

  @Test
  void aReportThatCameBeforeTheCorrectionIsNotAskedAbout() {
    Received misread = Reports.read(report("d1", "N2", USUAL), AS_OF.minusDays(5));
    Received before = Reports.read(report("d2", "N3", USUAL), AS_OF.minusDays(2));
    Decision correction =
        new Decision(
            AS_OF.minusDays(1), "N2 WSC", "correction", "8.8", Optional.empty(), "ruth", "", 2);

    Settled settled = settle(LayoutBook.empty(), List.of(), List.of(correction), misread, before);

    assertEquals(List.of(), settled.questions());
  }

  private static Received basisOpen(String document, String lot, Layout layout) {
    List<Reading> readings = new ArrayList<>();
    for (String code : List.of("WSC", "STARCH")) {
      Reading dm = Samples.dm(code, code.equals("WSC") ? 8 : 1);
      readings.add(
          new Reading(
              dm.analyte(),
              dm.raw(),
              "%",
              "",
              dm.method(),
              dm.place(),
              Optional.empty(),
              "basis-not-stated"));
    }
    Doubt doubt =
        new Doubt(
            "basis-not-stated",
            "report",
            Optional.empty(),
            "As fed or on dry matter?",
            List.of("as fed", "dry matter", "leave out"),
            "",
            "");
    Sample sample =
        Samples.with(Samples.of(lot, readings.toArray(Reading[]::new)), List.of(doubt), List.of());
    return with(fin(document, "R-" + document, sample), layout);
  }

  private static final Layout OPEN = layout("fellside", List.of("analyte", "result"), "%", "");

  private static Answer forLayout(String id, String said) {
    return new Answer(id, said, "ruth", AS_OF, "", "layout");
  }

  private static String idOf(Received report) {
    return question(settle(LayoutBook.empty(), report), "basis-not-stated").id();
  }

  @Test
  void anAnswerForTheLayoutHoldsForItsOtherReportsWithItsEvidence() {
    Received first = basisOpen("d1", "N2", OPEN);
    Received next = basisOpen("d2", "N3", OPEN);

    Settled settled =
        settle(
            LayoutBook.empty(),
            List.of(forLayout(idOf(first), "dry matter")),
            List.of(),
            first,
            next);

    assertEquals(List.of(), settled.questions());
    Reading wsc = Reports.sample(settled, "d2").sample().readings().get(0);
    assertEquals(Basis.DRY_MATTER, wsc.value().orElseThrow().basis());
    assertEquals("answered", wsc.value().orElseThrow().evidence().origin());
    assertTrue(
        wsc.value().orElseThrow().evidence().toString().contains("for layout fellside (L-"),
        () -> wsc.toString());
    assertEquals(
        1,
        seen(settled, "d2").notes().stream()
            .filter(n -> n.startsWith("answer \"dry matter\" of ruth, 2026-11-02 (q-"))
            .count());
  }

  @Test
  void anAnswerForOneReportHoldsForThatReportAlone() {
    Received first = basisOpen("d1", "N2", OPEN);

    Settled settled =
        settle(
            LayoutBook.empty(),
            List.of(answer(idOf(first), "dry matter")),
            List.of(),
            first,
            basisOpen("d2", "N3", OPEN));

    assertEquals(1, settled.questions().size());
  }

  @Test
  void anAnswerForTheLayoutIsNotUsedAfterAChangeNorForAnotherOrNamelessLayout() {
    Received first = basisOpen("d1", "N2", OPEN);
    List<Answer> answers = List.of(forLayout(idOf(first), "dry matter"));
    Layout grams = layout("fellside", List.of("analyte", "result"), "g/kg", "");
    Layout otherLab = layout("hollow farm", List.of("analyte", "result"), "%", "");
    Layout otherHead = layout("fellside", List.of("analyte", "value"), "%", "");

    for (Layout layout : List.of(grams, otherLab, otherHead)) {
      Settled settled =
          settle(LayoutBook.empty(), answers, List.of(), first, basisOpen("d2", "N3", layout));
      assertEquals(1, settled.questions().size(), layout::toString);
    }

    Layout nameless = layout("", List.of("analyte", "result"), "%", "");
    Received one = basisOpen("d1", "N2", nameless);
    Settled settled =
        settle(
            LayoutBook.empty(),
            List.of(forLayout(idOf(one), "dry matter")),
            List.of(),
            one,
            basisOpen("d2", "N3", nameless));
    assertEquals(1, settled.questions().size());
  }

  @Test
  void aHeadWithFieldsOfItsOwnIsNotAnsweredForTheOther() {
    Received first = basisOpen("d1", "N2", headed("lot", "client"));
    List<Answer> answers = List.of(forLayout(idOf(first), "dry matter"));

    assertEquals(
        0,
        settle(LayoutBook.empty(), answers, List.of(), first, basisOpen("d2", "N3", headed("lot")))
            .questions()
            .size());
    assertEquals(
        1,
        settle(
                LayoutBook.empty(),
                answers,
                List.of(),
                first,
                basisOpen("d2", "N3", headed("lot", "grower")))
            .questions()
            .size());
  }

  private static Layout headed(String... fields) {
    return new Layout(
        OPEN.lab(), OPEN.headings(), OPEN.more(), new TreeSet<>(List.of(fields)), OPEN.lines());
  }

  @Test
  void aUnitAnsweredForTheLayoutHoldsForItsOwnLinesAlone() {
    Layout plain = layout("fellside", List.of("analyte", "dry matter=dm"), "", "dm");
    Received first = with(unitOpen("d1", "N2", "CA", "P"), plain);
    String id = question(settle(LayoutBook.empty(), first), "unit-not-stated").id();
    List<Answer> answers = List.of(forLayout(id, "g/kg"));

    Received same = with(unitOpen("d2", "N3", "P"), plain);
    Received other = with(unitOpen("d3", "N4", "P", "FE"), plain);
    Settled settled = settle(LayoutBook.empty(), answers, List.of(), first, same, other);

    assertEquals("accepted", outcome(settled, "d2"));
    assertEquals(List.of("d3"), settled.questions().stream().map(Question::document).toList());
  }

  private static Received unitOpen(String document, String lot, String... codes) {
    List<Reading> readings = new ArrayList<>();
    for (String code : codes) {
      Reading dm = Samples.dm(code, 3);
      readings.add(
          new Reading(
              dm.analyte(),
              "3.1",
              "",
              "dm",
              dm.method(),
              dm.place(),
              Optional.empty(),
              "unit-not-stated"));
    }
    Doubt doubt =
        new Doubt(
            "unit-not-stated",
            codes.length == 1 ? codes[0] : "report",
            Optional.empty(),
            "In which unit?",
            List.of("%", "g/kg", "mg/kg", "leave out"),
            "",
            "");
    Sample sample =
        Samples.with(Samples.of(lot, readings.toArray(Reading[]::new)), List.of(doubt), List.of());
    return fin(document, "R-" + document, sample);
  }

  @Test
  void anAnswerForTheLayoutIsNotUsedWhereAFigureOfTheLayoutWasMisread() {
    Received first = Reports.read(basisOpen("d1", "N2", OPEN), AS_OF.minusDays(5));
    Decision correction =
        new Decision(
            AS_OF.minusDays(1), "N2 WSC", "correction", "8.8", Optional.empty(), "ruth", "", 2);

    Settled settled =
        settle(
            LayoutBook.empty(),
            List.of(forLayout(idOf(first), "dry matter")),
            List.of(correction),
            first,
            basisOpen("d2", "N3", OPEN));

    assertEquals(
        new TreeSet<>(List.of("basis-not-stated", "layout-misread")),
        new TreeSet<>(settled.questions().stream().map(Question::kind).toList()));
  }

  @Test
  void twoAnswersForTheLayoutThatContradictEachOtherAreNotUsed() {
    Received first = basisOpen("d1", "N2", OPEN);
    Received second = basisOpen("d2", "N3", OPEN);

    Settled settled =
        settle(
            LayoutBook.empty(),
            List.of(forLayout(idOf(first), "dry matter"), forLayout(idOf(second), "as fed")),
            List.of(),
            first,
            second,
            basisOpen("d3", "N4", OPEN));

    assertEquals(
        List.of("basis-not-stated"), settled.questions().stream().map(Question::kind).toList());
    assertEquals("question", outcome(settled, "d3"));
  }

  @Test
  void aDayAnsweredForTheLayoutGivesTheOrderOfDayAndMonthOfTheNext() {
    Layout plain = layout("fellside", List.of("analyte", "dry matter=dm"), "%", "dm");
    Received first = with(dated("d1", "N2", "2026-05-03", "2026-03-05"), plain);
    Received next = with(dated("d2", "N3", "2026-08-02", "2026-02-08"), plain);
    String id = question(settle(LayoutBook.empty(), first), "date-ambiguous").id();

    Settled settled =
        settle(LayoutBook.empty(), List.of(forLayout(id, "2026-05-03")), List.of(), first, next);

    assertEquals(
        Optional.of(LocalDate.of(2026, 8, 2)), Reports.sample(settled, "d2").sample().sampledOn());
  }

  private static Received dated(String document, String lot, String dayFirst, String monthFirst) {
    Doubt doubt =
        new Doubt(
            "date-ambiguous",
            "date",
            Optional.empty(),
            "Which day?",
            List.of(dayFirst, monthFirst),
            "",
            "");
    return fin(
        document, "R-" + document, Samples.with(sugars(lot, 8, 1), List.of(doubt), List.of()));
  }
}
