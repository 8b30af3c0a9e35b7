package rickyard.report.page;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.PortionLine;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;
import rickyard.report.view.RetestRow;
import rickyard.report.view.ShareRow;
import rickyard.report.view.ShortageRow;

/**
 * Whose hay goes where. Horses that stay on what they are fed and need no cleared hay are counted,
 * not listed: they stand in share.csv.
 *
 * @param isShown whether a register has hay of a co-op or for sale
 * @param unit kg or lb
 */
public record CoOpPages(
    boolean isShown,
    String unit,
    List<Shortage> shortages,
    Listed<Share> shares,
    String staying,
    String outside,
    List<Retest> retests,
    List<String> notes) {

  private static final int MOST_NAMED = 12;

  /** A group that lacks hay. */
  public record Shortage(String group, String tonnes, String runsOut, String horses, String why) {}

  /** Hay for a horse. */
  public record Share(
      String horse,
      String client,
      String lot,
      String perDay,
      String days,
      String verdict,
      String why,
      String own) {}

  /** A test that might free hay. */
  public record Retest(
      String rank, String lot, String chance, String frees, String expected, String why) {}

  /** What a page or paper shows of it. */
  public static CoOpPages of(MorningView view, CoOpView coOp) {
    Mass mass = Mass.named(view.units());
    OwnProposals own = new OwnProposals(view, coOp);
    List<ShareRow> told = coOp.shares().stream().filter(CoOpPages::isTold).toList();
    long staying =
        coOp.shares().stream().map(ShareRow::horse).distinct().count()
            - told.stream().map(ShareRow::horse).distinct().count();
    return new CoOpPages(
        !coOp.hasNothing(),
        mass.unit(),
        coOp.shortages().stream().map(row -> shortage(view, row)).toList(),
        Listed.first(told, row -> share(view, mass, row, own), "share.csv"),
        staying == 0
            ? ""
            : Shown.count(staying, "horse stays", "horses stay")
                + (staying == 1 ? " on what it is fed and needs" : " on what they are fed and need")
                + " no cleared hay; see share.csv.",
        outside(view, coOp),
        coOp.retests().stream().map(row -> retest(mass, row)).toList(),
        coOp.notes().stream().map(Plain::line).toList());
  }

  private static boolean isTold(ShareRow row) {
    return !row.group().isEmpty() || row.lot().isEmpty() || !row.now().contains(row.lot());
  }

  private static String group(String group) {
    return group.isEmpty() ? "horses that need no cleared hay" : Words.of("group", group);
  }

  private static Shortage shortage(MorningView view, ShortageRow row) {
    Stream<String> horses = row.horses().stream().map(horse -> Names.horse(view, horse));
    return new Shortage(
        group(row.group()),
        Shown.number(Double.valueOf(row.shortKg() / 1000)),
        Harmless.line(row.runsOutOn()),
        String.join(", ", horses.toList()),
        Plain.line(row.why()));
  }

  private static Share share(MorningView view, Mass mass, ShareRow row, OwnProposals own) {
    return new Share(
        Names.horse(view, row.horse()),
        Names.client(view, row.client()),
        row.lot().isEmpty() ? "nothing" : Harmless.line(row.lot()),
        amount(view, mass, row),
        Shown.days(row.days()),
        row.verdict().isEmpty() ? "" : Words.of("verdict", row.verdict()),
        Plain.line(row.why()),
        own.of(row.horse()));
  }

  /** Who stays is fed as today, whatever round amount the plan reckons with. */
  private static String amount(MorningView view, Mass mass, ShareRow row) {
    Double kg = row.kgPerDay();
    if (kg == null) {
      return "";
    }
    double fed = row.why().startsWith("stays") ? fed(view, row) : 0;
    String planned = mass.digits(kg);
    return fed <= 0 || mass.digits(fed).equals(planned)
        ? planned
        : mass.digits(fed) + " as now (the plan reckons with " + planned + ")";
  }

  private static double fed(MorningView view, ShareRow row) {
    return view.horses().stream()
        .filter(horse -> horse.horse().equals(row.horse()))
        .map(HorseAdvice::after)
        .flatMap(Stream::ofNullable)
        .flatMap(diet -> diet.portions().stream())
        .filter(portion -> portion.item().equals(row.lot()))
        .mapToDouble(PortionLine::kg)
        .sum();
  }

  /** The horses that the plan has no row for, by name: nobody is left out silently. */
  private static String outside(MorningView view, CoOpView coOp) {
    Set<String> planned = coOp.shares().stream().map(ShareRow::horse).collect(Collectors.toSet());
    List<String> others =
        view.horses().stream()
            .map(HorseAdvice::horse)
            .filter(horse -> !planned.contains(horse))
            .map(horse -> Names.horse(view, horse))
            .toList();
    int more = others.size() - MOST_NAMED;
    return others.isEmpty() || planned.isEmpty()
        ? ""
        : Shown.count(others.size(), "horse is", "horses are")
            + " not in the plan, which has no hay on record to reckon with for them: "
            + String.join(", ", others.subList(0, Math.min(MOST_NAMED, others.size())))
            + (more > 0 ? " and " + more + " more" : "")
            + ".";
  }

  private static Retest retest(Mass mass, RetestRow row) {
    return new Retest(
        Integer.toString(row.rank()),
        Harmless.line(row.lot()),
        Shown.chance(row.chance()),
        mass.digits(row.freesKg()),
        row.expectedKg() == null ? Shown.UNKNOWN : mass.digits(row.expectedKg()),
        Plain.line(row.why()));
  }
}
