package rickyard.report.page;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
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
    List<Retest> retests,
    List<String> notes) {

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

  static CoOpPages of(MorningView view, CoOpView coOp) {
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
                + " on what it is fed and needs no cleared hay; see share.csv.",
        coOp.retests().stream().map(row -> retest(mass, row)).toList(),
        coOp.notes().stream().map(Harmless::line).toList());
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
        Harmless.line(row.why()));
  }

  private static Share share(MorningView view, Mass mass, ShareRow row, OwnProposals own) {
    return new Share(
        Names.horse(view, row.horse()),
        Names.client(view, row.client()),
        row.lot().isEmpty() ? "nothing" : Harmless.line(row.lot()),
        amount(mass, row.kgPerDay()),
        Shown.number(row.days()),
        row.verdict().isEmpty() ? "" : Words.of("verdict", row.verdict()),
        Harmless.line(row.why()),
        own.of(row.horse()));
  }

  private static String amount(Mass mass, @Nullable Double kg) {
    return kg == null ? "" : mass.digits(kg);
  }

  private static Retest retest(Mass mass, RetestRow row) {
    return new Retest(
        Integer.toString(row.rank()),
        Harmless.line(row.lot()),
        Shown.chance(row.chance()),
        mass.digits(row.freesKg()),
        row.expectedKg() == null ? Shown.UNKNOWN : mass.digits(row.expectedKg()),
        Harmless.line(row.why()));
  }
}
