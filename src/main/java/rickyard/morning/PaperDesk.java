package rickyard.morning;

import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationItem;
import rickyard.registers.Office;
import rickyard.report.view.PaperFacts;
import rickyard.report.view.Serving;

/** Gathers what sheets and letters need from the registers besides the morning's view. */
final class PaperDesk {
  private PaperDesk() {}

  static PaperFacts facts(Inputs inputs, Options options) {
    Office office = inputs.registers().office();
    return new PaperFacts(
        languages(office),
        servings(office, inputs),
        unopened(office),
        inputs.templates().files(),
        options.paper(),
        advisers(office));
  }

  private static SortedMap<String, String> advisers(Office office) {
    SortedMap<String, String> addresses = new TreeMap<>();
    office.advisers().forEach((id, adviser) -> addresses.put(id, adviser.email()));
    addresses.values().removeIf(String::isBlank);
    return addresses;
  }

  private static SortedMap<String, String> languages(Office office) {
    SortedMap<String, String> languages = new TreeMap<>();
    office
        .clients()
        .forEach(
            (id, client) -> {
              if (!client.language().isEmpty()) {
                languages.put(id, client.language());
              }
            });
    return languages;
  }

  private static SortedMap<String, SortedMap<String, Serving>> servings(
      Office office, Inputs inputs) {
    SortedMap<String, SortedMap<String, Serving>> servings = new TreeMap<>();
    for (String horse : office.horses().keySet()) {
      office.findRation(horse, inputs.asOf()).ifPresent(r -> servings.put(horse, servings(r)));
    }
    return servings;
  }

  /** Rows of one item that differ say nothing of how it is given. */
  private static SortedMap<String, Serving> servings(Ration ration) {
    SortedMap<String, Serving> servings = new TreeMap<>();
    for (RationItem item : ration.items()) {
      @Nullable Integer meals =
          item.meals().isPresent() ? Integer.valueOf(item.meals().getAsInt()) : null;
      Serving serving =
          new Serving(meals, item.prepared(), item.asForage(), item.unit().equals("ad-lib"));
      servings.merge(
          item.item(),
          serving,
          (a, b) ->
              a.equals(b)
                  ? a
                  : new Serving(null, "", a.asForage() || b.asForage(), a.isOpen() || b.isOpen()));
    }
    return servings;
  }

  private static SortedMap<String, SortedMap<String, String>> unopened(Office office) {
    SortedMap<String, SortedMap<String, String>> unopened = new TreeMap<>();
    for (Delivery delivery : office.deliveries()) {
      if (delivery.openedOn().isEmpty() && delivery.finishedOn().isEmpty()) {
        unopened
            .computeIfAbsent(delivery.clientId(), c -> new TreeMap<>())
            .put(delivery.lotId(), delivery.opensOn().map(Object::toString).orElse(""));
      }
    }
    return unopened;
  }
}
