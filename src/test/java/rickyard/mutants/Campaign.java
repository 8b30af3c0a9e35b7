package rickyard.mutants;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import rickyard.core.forage.Lot;
import rickyard.core.forage.Report;
import rickyard.fixtures.RandomReports;
import rickyard.intake.grid.Grid;
import rickyard.intake.interpret.Dictionary;
import rickyard.mutants.Court.Trial;

/** Alters good reports one by one and holds what becomes of them against what they were. */
final class Campaign {
  private static final List<PrintedAs> TABLES =
      List.of(PrintedAs.SEMICOLONS, PrintedAs.TABS, PrintedAs.HTML, PrintedAs.MAILED);
  private static final int TRIES = 40;

  private final Dictionary truthDictionary;
  private final Reader reader;
  private final GoodReports reports;
  private final Court court;
  private final Map<String, Trial> before = new TreeMap<>();

  private Campaign(Dictionary truth, GoodReports reports, Court court, Dictionary tested) {
    this.truthDictionary = truth;
    this.reports = reports;
    this.court = court;
    this.reader = new Reader(tested);
  }

  /**
   * Reads the reports to alter.
   *
   * @param dictionary the built-in one
   * @param randomReports how many to draw beside the fixtures
   */
  static Campaign of(Dictionary dictionary, long seed, int randomReports) throws IOException {
    GoodReports reports = new GoodReports(new Reader(dictionary));
    RandomReports random = new RandomReports(seed);
    reports.addOffice();
    reports.addOthers();
    reports.addRandom(random, randomReports);
    List<Lot> lots = new ArrayList<>(Court.demoLots());
    random.lots().forEach(l -> lots.add(Court.lot(l, "grass-hay")));
    return new Campaign(dictionary, reports, new Court(dictionary, lots), dictionary);
  }

  /** The same reports, read by another reader once they are altered. */
  Campaign readBy(Dictionary tested) {
    return new Campaign(truthDictionary, reports, court, tested);
  }

  GoodReports reports() {
    return reports;
  }

  /** Alters reports, the kinds in turn, until there are so many mutants. */
  Tally run(long seed, int mutants, List<Kind> kinds) {
    Random random = new Random(seed);
    Tally tally = new Tally();
    int turn = 0;
    while (tally.mutants() < mutants) {
      Kind kind = kinds.get(turn++ % kinds.size());
      one(kind, random, tally);
    }
    return tally;
  }

  private void one(Kind kind, Random random, Tally tally) {
    List<GoodReport> good = reports.good();
    for (int i = 0; i < TRIES; i++) {
      GoodReport report = good.get(random.nextInt(good.size()));
      Paper paper = report.paper().copy();
      if (kind.apply(paper, report, random)) {
        judge(kind, report, paper, random, tally);
        return;
      }
    }
  }

  private void judge(Kind kind, GoodReport report, Paper paper, Random random, Tally tally) {
    Optional<PrintedAs> form = form(report, random);
    Optional<Report> altered =
        form.isPresent() ? reader.report(form.get(), paper) : reader.report(paper);
    Trial was = before.computeIfAbsent(report.name(), n -> court.judge(List.of(report.report())));
    Trial is = court.judge(altered.map(List::of).orElseGet(List::of));
    Inquest inquest = Inquest.of(was, is, court);
    Fate fate = inquest.fate();
    if (fate == Fate.FALSE_CLEAR) {
      Optional<NoEvidence> why =
          altered.flatMap(a -> NoEvidence.of(kind, report, a, inquest, truthDictionary.analytes()));
      why.ifPresent(tally::addUnseen);
      fate = why.isPresent() ? Fate.NO_EVIDENCE : fate;
    }
    if (fate == Fate.FALSE_CLEAR) {
      tally.addFalseClear(
          kind.words()
              + ": "
              + report.name()
              + form.map(f -> " as " + f).orElse("")
              + " clears "
              + inquest.falseClears()
              + ", wrong "
              + inquest.wrong());
    }
    tally.add(kind, fate);
  }

  /** Half of the text reports are printed again and read from bytes; pages are read from cells. */
  private static Optional<PrintedAs> form(GoodReport report, Random random) {
    if (report.kind().equals("pdf") || random.nextBoolean()) {
      return Optional.empty();
    }
    return Optional.of(
        report.paper().kind() == Grid.Kind.PLACED
            ? PrintedAs.LINES
            : TABLES.get(random.nextInt(TABLES.size())));
  }
}
