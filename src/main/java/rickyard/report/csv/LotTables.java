package rickyard.report.csv;

import static rickyard.report.csv.Field.list;
import static rickyard.report.csv.Field.number;
import static rickyard.report.csv.Field.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rickyard.report.view.CoOpView;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.RecallRow;
import rickyard.report.view.ShareRow;
import rickyard.report.view.ShortageRow;
import rickyard.report.view.VerdictRow;

/** What is said of lots: verdicts, suitability, what is due, who shares what, who must be told. */
final class LotTables {
  private LotTables() {}

  static Table verdicts(MorningView view) {
    return Table.of(
        "verdicts.csv",
        "lot,group,limit_id,quantity,limit,unit,value,low,high,u,p_over,verdict,reason,risk,"
            + "severity",
        view.lots().stream().flatMap(lot -> lot.verdicts().stream()).toList(),
        LotTables::row);
  }

  private static List<Field> row(VerdictRow row) {
    return List.of(
        text(row.lot()),
        text(row.group()),
        text(row.limitId()),
        text(row.quantity()),
        number(row.limit()),
        text(row.unit()),
        number(row.value()),
        number(row.low()),
        number(row.high()),
        number(row.u()),
        number(row.pOver()),
        text(row.verdict()),
        text(row.reason()),
        number(row.risk()),
        text(row.severity()));
  }

  static Table lots(MorningView view) {
    return Table.of(
        "lots.csv",
        "lot,holder,material,cutting,stock_kg,nsc_wsc,nsc_esc,starch,suits,not_for,undecided,"
            + "reason",
        view.lots(),
        LotTables::row);
  }

  private static List<Field> row(LotRow row) {
    return List.of(
        text(row.lot()),
        text(row.holder()),
        text(row.material()),
        text(row.cutting()),
        number(row.stockKg()),
        number(row.nscWsc()),
        number(row.nscEsc()),
        number(row.starch()),
        list(row.suits()),
        list(row.notFor()),
        list(row.undecided()),
        text(row.reason()));
  }

  static Table followUps(MorningView view) {
    return Table.of("follow-ups.csv", "due,kind,about,what,why", view.followUps(), LotTables::row);
  }

  /** The follow-ups that are tests, with what is known of the lot, as a list to send bags by. */
  static Table retests(MorningView view) {
    Map<String, LotRow> lots = new HashMap<>();
    view.lots().forEach(lot -> lots.putIfAbsent(lot.lot(), lot));
    return Table.of(
        "retests.csv",
        "lot,holder,due,what,why,stock_kg,lab,sampled_on,undecided",
        view.followUps().stream()
            .filter(row -> row.kind().equals("retest"))
            .map(row -> retest(row, Optional.ofNullable(lots.get(row.about()))))
            .toList());
  }

  private static List<Field> retest(FollowUpRow row, Optional<LotRow> about) {
    Stream<Field> known =
        about
            .map(
                lot ->
                    Stream.of(
                        text(lot.holder()),
                        number(lot.stockKg()),
                        text(lot.lab()),
                        text(lot.sampledOn()),
                        list(lot.undecided())))
            .orElseGet(() -> Stream.of(text(""), number(null), text(""), text(""), text("")));
    List<Field> lot = known.toList();
    return List.of(
        text(row.about()),
        lot.get(0),
        text(row.due()),
        text(row.what()),
        text(row.why()),
        lot.get(1),
        lot.get(2),
        lot.get(3),
        lot.get(4));
  }

  private static List<Field> row(FollowUpRow row) {
    return List.of(
        text(row.due()), text(row.kind()), text(row.about()), text(row.what()), text(row.why()));
  }

  static Table recalls(MorningView view) {
    return Table.of(
        "recalls.csv",
        "lot,client,horse,delivered_on,told_on,what",
        view.recalls(),
        LotTables::row);
  }

  private static List<Field> row(RecallRow row) {
    return List.of(
        text(row.lot()),
        text(row.client()),
        text(row.horse()),
        text(row.deliveredOn()),
        text(row.toldOn()),
        text(row.what()));
  }

  static Table share(CoOpView coOp) {
    return Table.of(
        "share.csv", "horse,lot,kg_per_day,days,kg,verdict,why", coOp.shares(), LotTables::row);
  }

  private static List<Field> row(ShareRow row) {
    return List.of(
        text(row.horse()),
        text(row.lot()),
        number(row.kgPerDay()),
        number(row.days()),
        number(row.kg()),
        text(row.verdict()),
        text(row.why()));
  }

  static Table shortage(CoOpView coOp) {
    return Table.of(
        "shortage.csv",
        "group,horses,needed_kg,found_kg,short_kg,why",
        coOp.shortages(),
        LotTables::row);
  }

  private static List<Field> row(ShortageRow row) {
    return List.of(
        text(row.group()),
        list(row.horses()),
        number(row.neededKg()),
        number(row.foundKg()),
        number(Double.valueOf(row.neededKg() - row.foundKg())),
        text(row.why()));
  }
}
