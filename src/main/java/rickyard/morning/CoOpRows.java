package rickyard.morning;

import java.time.LocalDate;
import java.util.List;
import rickyard.core.advice.coop.CoOpAdvice;
import rickyard.core.advice.coop.RecallLine;
import rickyard.core.advice.coop.RetestLine;
import rickyard.core.advice.coop.ShareLine;
import rickyard.core.advice.coop.ShortageLine;
import rickyard.report.view.CoOpView;
import rickyard.report.view.RecallRow;
import rickyard.report.view.RetestRow;
import rickyard.report.view.ShareRow;
import rickyard.report.view.ShortageRow;

/** The co-op's view as rows. */
final class CoOpRows {
  private CoOpRows() {}

  static CoOpView of(CoOpAdvice advice) {
    return new CoOpView(
        advice.shares().stream().map(CoOpRows::row).toList(),
        advice.shortages().stream().map(line -> row(line, advice.days())).toList(),
        advice.retests().stream().map(CoOpRows::row).toList(),
        advice.notes());
  }

  private static ShareRow row(ShareLine line) {
    return new ShareRow(
        line.horse(),
        line.lot(),
        line.kgPerDay(),
        line.days(),
        line.kg(),
        line.verdict(),
        line.why(),
        line.client(),
        line.group(),
        line.from(),
        line.now(),
        line.lotVerdict());
  }

  private static ShortageRow row(ShortageLine line, double days) {
    return new ShortageRow(
        line.group(),
        line.horses(),
        line.neededKg(),
        line.foundKg(),
        line.why(),
        line.runsOutOn().toString(),
        days);
  }

  private static RetestRow row(RetestLine line) {
    return new RetestRow(
        line.rank(),
        line.lot(),
        line.groups(),
        line.chance(),
        line.freesKg(),
        line.expectedKg(),
        line.why());
  }

  static List<RecallRow> recalls(List<RecallLine> lines) {
    return lines.stream()
        .map(
            line ->
                new RecallRow(
                    line.lot(),
                    line.client(),
                    line.horse(),
                    line.deliveredOn().map(LocalDate::toString).orElse(""),
                    line.toldOn().map(LocalDate::toString).orElse(""),
                    line.what(),
                    line.fellOn().toString()))
        .toList();
  }
}
