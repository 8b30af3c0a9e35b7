package rickyard.report.page;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;

/** Places on the page to jump to: numbered, so that no name from outside becomes an id. */
final class Anchors {
  private final Map<String, String> horses = new TreeMap<>();
  private final Map<String, String> lots = new TreeMap<>();
  private int pictures;

  /** Places for all horses and for the lots that are shown, in full or in a line. */
  Anchors(MorningView view, List<LotRow> shown, List<LotRow> rest) {
    view.horses().forEach(h -> horses.putIfAbsent(h.horse(), "horse-" + (horses.size() + 1)));
    shown.forEach(l -> lots.putIfAbsent(l.lot(), "lot-" + (lots.size() + 1)));
    rest.forEach(l -> lots.putIfAbsent(l.lot(), "lot-" + (lots.size() + 1)));
  }

  String horse(String id) {
    return horses.getOrDefault(id, "horses");
  }

  String lot(String id) {
    return lots.getOrDefault(id, "lots");
  }

  /** The place of a lot; empty where it has none, as a feed has none. */
  String findLot(String id) {
    return lots.getOrDefault(id, "");
  }

  /** A new id for a picture. */
  String picture() {
    pictures++;
    return "p" + pictures;
  }
}
