package rickyard.report.calendar;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rickyard.report.text.Harmless;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.MorningView;

/** Whom to ring about a horse or a lot. */
final class Callers {
  private final MorningView view;
  private final Map<String, String> clients = new HashMap<>();

  Callers(MorningView view) {
    this.view = view;
    view.lots().forEach(lot -> clients.put(lot.lot(), lot.holder()));
    view.horses().forEach(horse -> clients.put(horse.horse(), horse.client()));
  }

  /** A horse with its name, everything else as it is. */
  String name(String about) {
    String id = Harmless.line(about);
    HorseFacts facts = view.horseFacts().get(about);
    String name = facts == null ? "" : Harmless.line(facts.name());
    if (name.isEmpty()) {
      return id;
    }
    return name.equalsIgnoreCase(id) ? name : name + " (" + id + ")";
  }

  /** The client with the number; empty for a lot of nobody's, and for what is neither. */
  Optional<String> find(String about) {
    ClientFacts facts = view.clientFacts().get(clients.getOrDefault(about, ""));
    return Optional.ofNullable(facts)
        .map(
            f ->
                Harmless.line(f.name().isBlank() ? f.client() : f.name())
                    + (f.phone().isBlank() ? "" : ", " + Harmless.line(f.phone())));
  }
}
