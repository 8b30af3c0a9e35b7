package rickyard.report.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.HorseAdvice;
import rickyard.report.text.Cut;
import rickyard.report.text.Mass;
import rickyard.report.text.Phrases;
import rickyard.report.text.Shown;
import rickyard.report.text.Weighed;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.MorningView;

/** How one horse's client is spoken to: language, units, names. */
record Voice(
    Phrases texts, Mass first, String horse, String client, String adviser, String adviserPhone) {
  private static final int LONGEST_NAME = 60;
  private static final double SMALLEST = 0.001;

  static Voice of(HorseAdvice horse, MorningView view, Phrases texts) {
    HorseFacts facts = view.horseFacts().get(horse.horse());
    ClientFacts client = view.clientFacts().get(horse.client());
    String units = client == null || client.units().isEmpty() ? view.units() : client.units();
    return new Voice(
        texts,
        Mass.named(units),
        Cut.name(facts == null ? "" : facts.name(), horse.horse(), LONGEST_NAME),
        Cut.name(client == null ? "" : client.name(), horse.client(), LONGEST_NAME),
        client == null ? "" : Cut.line(client.adviserName(), LONGEST_NAME),
        client == null ? "" : Cut.line(client.adviserPhone(), LONGEST_NAME));
  }

  /** A text with the horse, the client and the adviser filled in where it names them. */
  String say(String key) {
    return texts.say(key, "horse", horse, "client", client, "adviser", adviserOrOffice());
  }

  /** The same with one more word. */
  String say(String key, String name, String value) {
    return texts.say(
        key, "horse", horse, "client", client, "adviser", adviserOrOffice(), name, value);
  }

  String adviserOrOffice() {
    return adviser.isEmpty() ? texts.say("office.name") : adviser;
  }

  String ring() {
    String contact =
        adviser.isEmpty() || adviserPhone.isEmpty() ? texts.say("office.contact") : adviserPhone;
    String named = contact.isEmpty() ? "" : ", " + contact;
    return adviser.isEmpty()
        ? texts.say("ring.nobody", "office", texts.say("office.name"), "contact", named)
        : texts.say("ring.adviser", "adviser", adviser, "contact", named);
  }

  String amount(double kg) {
    return texts.numbers(Weighed.words(first, kg));
  }

  String other(double kg) {
    return texts.numbers(Weighed.words(first == Mass.KG ? Mass.LB : Mass.KG, kg));
  }

  /** An item as people call it: hay by its kind and lot, a feed by its name. */
  String item(String id, String batch, String name, String role) {
    String key = Cut.line(id, LONGEST_NAME);
    String shown = Cut.name(name, id, LONGEST_NAME);
    Optional<String> kind = texts.find("role." + role);
    String item =
        shown.equals(key) && kind.isPresent()
            ? texts.say("item.lot", "kind", kind.get(), "lot", key)
            : shown;
    return batch.isBlank()
        ? item
        : texts.say("item.batch", "item", item, "batch", Cut.line(batch, LONGEST_NAME));
  }

  String item(Given given) {
    return item(given.item(), given.batch(), given.name(), given.role());
  }

  String value(@Nullable Double value, @Nullable Double u, String unit) {
    String words = texts.word("unit", unit);
    String number = texts.numbers(Shown.withUncertainty(value, u));
    return words.isEmpty() ? number : number + " " + words;
  }

  String chance(@Nullable Double chance) {
    if (chance == null || !Double.isFinite(chance)) {
      return "?";
    }
    if (chance < SMALLEST) {
      return texts.say("chance.low");
    }
    return chance > 1 - SMALLEST ? texts.say("chance.high") : texts.numbers(Shown.chance(chance));
  }

  /** A day of a register in words; as it is where it is no day. */
  String day(String iso) {
    try {
      return texts.day(LocalDate.parse(iso));
    } catch (DateTimeException e) {
      return Cut.line(iso, LONGEST_NAME);
    }
  }
}
