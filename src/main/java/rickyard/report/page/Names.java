package rickyard.report.page;

import rickyard.report.text.Harmless;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.MorningView;

/** Horses and clients as people call them, with the register's key where the name is another. */
final class Names {
  private Names() {}

  static String horse(MorningView view, String id) {
    HorseFacts facts = view.horseFacts().get(id);
    return named(facts == null ? "" : facts.name(), id);
  }

  static String client(MorningView view, String id) {
    ClientFacts facts = view.clientFacts().get(id);
    return named(facts == null ? "" : facts.name(), id);
  }

  private static String named(String name, String id) {
    String shown = Harmless.line(name);
    String key = Harmless.line(id);
    if (shown.isEmpty()) {
      return key;
    }
    return shown.equalsIgnoreCase(key) ? shown : shown + " (" + key + ")";
  }
}
