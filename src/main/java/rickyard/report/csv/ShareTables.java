package rickyard.report.csv;

import static rickyard.report.csv.Field.count;
import static rickyard.report.csv.Field.list;
import static rickyard.report.csv.Field.number;
import static rickyard.report.csv.Field.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.report.view.CoOpView;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.RetestRow;
import rickyard.report.view.ShareRow;
import rickyard.report.view.ShortageRow;

/** How a co-op's hay is shared out, what is short, and what to test again. */
public final class ShareTables {
  private static final double KG_PER_TONNE = 1000;
  private static final String UNKNOWN_COST = "unknown";

  private ShareTables() {}

  /** share.csv. */
  public static Table share(CoOpView coOp) {
    return Table.of(
        "share.csv",
        "horse,lot,kg_per_day,days,kg,verdict,why,client,group,from,fed_now,lot_verdict",
        coOp.shares(),
        ShareTables::row);
  }

  private static List<Field> row(ShareRow row) {
    return List.of(
        text(row.horse()),
        text(row.lot()),
        number(row.kgPerDay()),
        number(row.days()),
        number(row.kg()),
        text(row.verdict()),
        text(row.why()),
        text(row.client()),
        text(row.group()),
        text(row.from()),
        list(row.now()),
        text(row.lotVerdict()));
  }

  /** shortage.csv. */
  public static Table shortage(CoOpView coOp) {
    return Table.of(
        "shortage.csv",
        "group,horses,needed_kg,found_kg,short_kg,why,short_t,runs_out_on,horizon_days",
        coOp.shortages(),
        ShareTables::row);
  }

  private static List<Field> row(ShortageRow row) {
    return List.of(
        text(row.group()),
        list(row.horses()),
        number(row.neededKg()),
        number(row.foundKg()),
        number(Double.valueOf(row.shortKg())),
        text(row.why()),
        number(Double.valueOf(row.shortKg() / KG_PER_TONNE)),
        text(row.runsOutOn()),
        number(Double.valueOf(row.days())));
  }

  /** The tests that would free hay, alone. */
  public static Table ranked(CoOpView coOp) {
    return Table.of(
        "retests.csv",
        "rank,lot,groups,chance,frees_kg,expected_kg,cost,why",
        coOp.retests(),
        ShareTables::row);
  }

  private static List<Field> row(RetestRow row) {
    return List.of(
        count(row.rank()),
        text(row.lot()),
        list(row.groups()),
        number(row.chance()),
        number(Double.valueOf(row.freesKg())),
        number(row.expectedKg()),
        text(UNKNOWN_COST),
        text(row.why()));
  }

  /**
   * retests.csv: first the tests that would free hay, by what may be expected of them, then the
   * follow-ups that are tests of other lots; each with what is known of the lot, as a list to send
   * bags by.
   */
  public static Table retests(MorningView view, CoOpView coOp) {
    Map<String, LotRow> lots = new HashMap<>();
    view.lots().forEach(lot -> lots.putIfAbsent(lot.lot(), lot));
    List<List<Field>> rows = new ArrayList<>();
    String today = view.asOf().toString();
    coOp.retests().forEach(r -> rows.add(row(r, today, find(lots, r.lot()))));
    Set<String> ranked = coOp.retests().stream().map(RetestRow::lot).collect(Collectors.toSet());
    view.followUps().stream()
        .filter(row -> row.kind().equals("retest") && !ranked.contains(row.about()))
        .forEach(row -> rows.add(row(row, find(lots, row.about()))));
    return Table.of(
        "retests.csv",
        "lot,holder,due,what,why,stock_kg,lab,sampled_on,undecided,rank,groups,chance,frees_kg,"
            + "expected_kg,cost",
        rows);
  }

  private static Optional<LotRow> find(Map<String, LotRow> lots, String lot) {
    return Optional.ofNullable(lots.get(lot));
  }

  private static List<Field> row(FollowUpRow row, Optional<LotRow> lot) {
    return join(
        known(row.about(), row.due(), row.what(), row.why(), lot),
        List.of(number(null), text(""), number(null), number(null), number(null), text("")));
  }

  private static List<Field> row(RetestRow row, String today, Optional<LotRow> lot) {
    return join(
        known(row.lot(), today, "test it again", row.why(), lot),
        List.of(
            count(row.rank()),
            list(row.groups()),
            number(row.chance()),
            number(Double.valueOf(row.freesKg())),
            number(row.expectedKg()),
            text(UNKNOWN_COST)));
  }

  private static List<Field> join(List<Field> first, List<Field> second) {
    return Stream.concat(first.stream(), second.stream()).toList();
  }

  private static List<Field> known(
      String about, String due, String what, String why, Optional<LotRow> lot) {
    return List.of(
        text(about),
        text(lot.map(LotRow::holder).orElse("")),
        text(due),
        text(what),
        text(why),
        number(lot.map(LotRow::stockKg).orElse(null)),
        text(lot.map(LotRow::lab).orElse("")),
        text(lot.map(LotRow::sampledOn).orElse("")),
        list(lot.map(LotRow::undecided).orElse(List.of())));
  }
}
