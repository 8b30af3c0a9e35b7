package rickyard.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.report.text.Harmless;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.MorningView;

/** Whom to call: one call a client, the most urgent first. */
public final class Callers {
  private static final int FEWEST_DIGITS = 5;

  /** A horse in a call. */
  public record Item(
      String anchor,
      String horse,
      String when,
      String say,
      String why,
      String figure,
      String register,
      Told told) {}

  /** What a row of decisions.csv holds once the client is told; a person adds name and words. */
  public record Told(String date, String about, String verdict) {}

  /** A call to one client. */
  public record Call(
      String client, String phone, String dial, String adviser, List<Item> items, String find) {}

  private Callers() {}

  /** The calls that begin with a horse of this priority. */
  static List<Call> of(MorningView view, Anchors anchors, Priority priority) {
    Map<String, List<HorseAdvice>> byClient = new TreeMap<>();
    List<HorseAdvice> urgentFirst =
        view.horses().stream().sorted(Comparator.comparing(HorseAdvice::priority)).toList();
    for (HorseAdvice horse : urgentFirst) {
      if (horse.priority() == Priority.CALL_NOW || horse.priority() == Priority.CALL_TODAY) {
        byClient.computeIfAbsent(horse.client(), c -> new ArrayList<>()).add(horse);
      }
    }
    return urgentFirst.stream()
        .map(HorseAdvice::client)
        .distinct()
        .filter(
            client ->
                byClient.getOrDefault(client, List.of()).stream()
                    .findFirst()
                    .filter(horse -> horse.priority() == priority)
                    .isPresent())
        .map(client -> call(view, anchors, client, byClient.getOrDefault(client, List.of())))
        .toList();
  }

  private static Call call(
      MorningView view, Anchors anchors, String client, List<HorseAdvice> horses) {
    ClientFacts facts = view.clientFacts().get(client);
    List<Item> items = horses.stream().map(horse -> item(view, anchors, horse)).toList();
    String find = FindWords.of(horses.stream());
    if (facts == null) {
      return new Call(Harmless.line(client), "no number in the register", "", "", items, find);
    }
    String phone = Harmless.line(facts.phone());
    return new Call(
        Names.client(view, client),
        phone.isEmpty() ? "no number in the register" : phone,
        dial(phone),
        Harmless.line(facts.adviserName()),
        items,
        find);
  }

  private static Item item(MorningView view, Anchors anchors, HorseAdvice horse) {
    return new Item(
        anchors.horse(horse.horse()),
        Names.horse(view, horse.horse()),
        horse.priority() == Priority.CALL_NOW ? "now" : "today",
        Plain.sentence(horse.say()),
        Plain.sentence(Changes.reason(view, horse)),
        figure(horse),
        register(view, horse),
        told(view, horse));
  }

  /** The row that says to the next morning what this client was told. */
  private static String register(MorningView view, HorseAdvice horse) {
    Told told = told(view, horse);
    return told.date() + "," + told.about() + ",told," + told.verdict() + ",,YOUR NAME,";
  }

  private static Told told(MorningView view, HorseAdvice horse) {
    var diet = horse.after();
    return new Told(
        view.asOf().toString(), Harmless.line(horse.horse()), diet == null ? "" : diet.verdict());
  }

  /** The figure behind the call; empty where no limit gives one. */
  private static String figure(HorseAdvice horse) {
    var diet = horse.after();
    var worst = diet == null ? null : diet.worst();
    if (worst == null || worst.pOver() == null) {
      return "";
    }
    return (worst.subject().equals("bucket-meal") ? "A bucket meal: " : "The whole diet: ")
        + Words.of("quantity", worst.quantity())
        + " "
        + Shown.figure(worst.verdict(), worst.value(), worst.low(), worst.high(), worst.u())
        + ", limit "
        + Shown.number(Double.valueOf(worst.limit()))
        + " "
        + Words.of("unit", worst.unit())
        + "; chance of being over, from this test alone: "
        + Shown.chance(worst.pOver())
        + ".";
  }

  /** Digits to dial; empty where the text holds too few or anything but a number's signs. */
  private static String dial(String phone) {
    if (!phone.matches("\\+?[0-9 ()./-]+")) {
      return "";
    }
    String digits = phone.replaceAll("[^0-9+]", "");
    return digits.length() < FEWEST_DIGITS ? "" : "tel:" + digits;
  }
}
