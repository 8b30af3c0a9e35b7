package rickyard.report.csv;

import java.util.ArrayList;
import java.util.List;
import rickyard.report.view.CoOpView;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;

/** All tables of a morning; a table without rows still has its header. */
public final class MorningTables {
  private MorningTables() {}

  /** The tables in the order in which a person would open them. */
  public static List<Table> of(MorningView view, CoOpView coOp) {
    List<Table> tables = new ArrayList<>(ofToday(view, coOp));
    tables.addAll(SeasonTables.of(view));
    return List.copyOf(tables);
  }

  /** lots.csv of these lots. */
  public static Table lots(List<LotRow> lots) {
    return LotTables.lots(lots);
  }

  /** What people open in a spreadsheet. */
  public static List<Table> ofBook(MorningView view) {
    return List.of(
        LotTables.lots(view),
        HorseTables.horses(view),
        HorseTables.diets(view),
        ArrivalTables.questions(view),
        LotTables.followUps(view));
  }

  private static List<Table> ofToday(MorningView view, CoOpView coOp) {
    return List.of(
        ArrivalTables.outcomes(view),
        ArrivalTables.analyses(view),
        LotTables.verdicts(view),
        LotTables.lots(view),
        HorseTables.horses(view),
        HorseTables.diets(view),
        HorseTables.remedies(view),
        HorseTables.changeover(view),
        HorseTables.trips(view),
        ArrivalTables.questions(view),
        LotTables.followUps(view),
        ShareTables.share(coOp),
        ShareTables.shortage(coOp),
        ShareTables.retests(view, coOp),
        LotTables.recalls(view));
  }
}
