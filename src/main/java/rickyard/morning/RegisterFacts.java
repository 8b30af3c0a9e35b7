package rickyard.morning;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.nutrition.Horse;
import rickyard.registers.Adviser;
import rickyard.registers.Client;
import rickyard.registers.Office;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.HorseFacts;

/** Horses and clients as pages show them, from the registers. */
final class RegisterFacts {
  private final Inputs inputs;
  private final Office office;

  RegisterFacts(Inputs inputs) {
    this.inputs = inputs;
    this.office = inputs.registers().office();
  }

  SortedMap<String, HorseFacts> horses() {
    SortedMap<String, HorseFacts> facts = new TreeMap<>();
    office
        .horses()
        .forEach(
            (id, h) ->
                facts.put(
                    id,
                    new HorseFacts(
                        id,
                        h.name(),
                        h.type().code(),
                        h.status().code(),
                        h.bodyWeightKg(),
                        h.weightBy().code(),
                        h.bodyCondition().isPresent()
                            ? Double.valueOf(h.bodyCondition().getAsDouble())
                            : null,
                        conditions(h))));
    return facts;
  }

  /** The conditions with what the table of conditions says of them. */
  private String conditions(Horse horse) {
    List<String> notes = inputs.tables().judgement().conditions().of(horse.conditions()).notes();
    String named = String.join(", ", horse.conditions());
    return notes.isEmpty() ? named : named + " (" + String.join("; ", notes) + ")";
  }

  SortedMap<String, ClientFacts> clients() {
    SortedMap<String, ClientFacts> facts = new TreeMap<>();
    for (Map.Entry<String, Client> entry : office.clients().entrySet()) {
      Client c = entry.getValue();
      facts.put(
          entry.getKey(),
          new ClientFacts(
              c.id(),
              c.name(),
              c.phone(),
              c.email(),
              c.adviser(),
              c.units(),
              office.findAdviser(c.adviser()).map(Adviser::name).orElse(c.adviser()),
              office.findAdviser(c.adviser()).map(Adviser::phone).orElse("")));
    }
    return facts;
  }
}
