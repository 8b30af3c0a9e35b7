package rickyard.report.sheet;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.MorningView;

/** Contents of lots that are in force, in per cent of dry matter: for what no lot limit judges. */
final class Contents {
  private final Map<String, AnalysisRow> rows = new HashMap<>();

  Contents(MorningView view) {
    for (AnalysisRow row : view.analyses()) {
      boolean isPercent = row.unit().equals("%") && !row.basis().equalsIgnoreCase("af");
      if (row.state().equals("in-force") && row.value() != null && isPercent) {
        rows.putIfAbsent(key(row.lot(), row.analyte()), row);
      }
    }
  }

  /** The content of a lot that a limit's quantity names. */
  Optional<AnalysisRow> find(String lot, String quantity) {
    return Optional.ofNullable(rows.get(key(lot, quantity.toUpperCase(Locale.ROOT))));
  }

  private static String key(String lot, String analyte) {
    return analyte + " " + lot;
  }
}
