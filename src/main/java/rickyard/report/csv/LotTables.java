package rickyard.report.csv;

import static rickyard.report.csv.Field.list;
import static rickyard.report.csv.Field.number;
import static rickyard.report.csv.Field.text;

import java.util.List;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.RecallRow;
import rickyard.report.view.VerdictRow;

/** What is said of lots: verdicts, suitability, what is due, who must be told. */
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
    return lots(view.lots());
  }

  static Table lots(List<LotRow> lots) {
    return Table.of(
        "lots.csv",
        "lot,holder,material,cutting,stock_kg,nsc_wsc,nsc_esc,starch,suits,not_for,undecided,"
            + "reason",
        lots,
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
    return Table.of(
        "follow-ups.csv", "due,kind,about,what,why,id", view.followUps(), LotTables::row);
  }

  private static List<Field> row(FollowUpRow row) {
    return List.of(
        text(row.due()),
        text(row.kind()),
        text(row.about()),
        text(row.what()),
        text(row.why()),
        text(row.id()));
  }

  static Table recalls(MorningView view) {
    return Table.of(
        "recalls.csv",
        "lot,client,horse,delivered_on,told_on,what,fell_on",
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
        text(row.what()),
        text(row.fellOn()));
  }
}
