package rickyard.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.ChangeoverLine;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Proposal;

/** What is weighed a day, and the days of a change. */
final class FeedRows {
  private FeedRows() {}

  static List<HorsePaper.Weigh> weigh(List<Given> given, boolean isStepwise, Voice voice) {
    return given.stream().map(g -> weigh(g, isStepwise, voice)).toList();
  }

  private static HorsePaper.Weigh weigh(Given given, boolean isStepwise, Voice voice) {
    String prepared = voice.texts().find("prepared." + given.serving().prepared()).orElse("");
    if (given.isStopped()) {
      String none = voice.say(isStepwise ? "sheet.stop-after" : "sheet.stop");
      return new HorsePaper.Weigh(voice.item(given), none, none, "", "", true);
    }
    if (given.serving().isOpen()) {
      String free = voice.say("amount.open");
      return new HorsePaper.Weigh(
          voice.item(given), free, "", voice.say("sheet.meal-open"), prepared, false);
    }
    return new HorsePaper.Weigh(
        voice.item(given),
        voice.amount(given.kg()),
        voice.other(given.kg()),
        meals(given, voice),
        prepared,
        false);
  }

  private static String meals(Given given, Voice voice) {
    Integer meals = given.serving().meals();
    if (meals == null || meals < 1) {
      return voice.say("sheet.meal-unknown");
    }
    if (meals == 1) {
      return voice.say("sheet.meal-one");
    }
    double each = given.kg() / meals;
    return voice
        .texts()
        .say(
            "sheet.meal-of",
            "meals",
            meals.toString(),
            "amount",
            voice.amount(each),
            "other",
            voice.other(each));
  }

  /** Items whose amount moves during the change, in the order of the ration. */
  static List<Given> moving(HorseAdvice horse, List<Given> given) {
    List<ChangeoverLine> lines = lines(horse);
    Set<String> moving = new LinkedHashSet<>();
    for (Given item : given) {
      boolean isMoving =
          item.isChanged()
              || lines.stream().anyMatch(l -> l.item().equals(item.item()) && l.kg() != item.kg());
      if (isMoving) {
        moving.add(item.item());
      }
    }
    return given.stream().filter(g -> moving.contains(g.item())).toList();
  }

  private static List<ChangeoverLine> lines(HorseAdvice horse) {
    int rank = Course.chosen(horse).map(Proposal::rank).orElse(-1);
    return horse.changeovers().stream().filter(l -> l.rank() == rank).toList();
  }

  /** Last day of the change; 0 where it has no days. */
  static int days(HorseAdvice horse) {
    return lines(horse).stream().mapToInt(ChangeoverLine::day).max().orElse(0);
  }

  /** The days of a change that takes more than one, equal neighbours together. */
  static List<HorsePaper.Step> steps(HorseAdvice horse, List<Given> moving, Voice voice) {
    SortedMap<Integer, List<Double>> byDay = new TreeMap<>();
    for (ChangeoverLine line : lines(horse)) {
      byDay.computeIfAbsent(line.day(), day -> amounts(horse, day, moving));
    }
    if (byDay.size() < 2 || moving.isEmpty()) {
      return List.of();
    }
    List<HorsePaper.Step> steps = new ArrayList<>();
    int from = byDay.firstKey();
    int last = from;
    for (Map.Entry<Integer, List<Double>> day : byDay.entrySet()) {
      if (!day.getValue().equals(byDay.get(from))) {
        steps.add(step(from, last, byDay, voice));
        from = day.getKey();
      }
      last = day.getKey();
    }
    steps.add(step(from, last, byDay, voice));
    return steps;
  }

  private static List<Double> amounts(HorseAdvice horse, int day, List<Given> moving) {
    return moving.stream()
        .map(
            g ->
                lines(horse).stream()
                    .filter(l -> l.day() == day && l.item().equals(g.item()))
                    .mapToDouble(ChangeoverLine::kg)
                    .sum())
        .toList();
  }

  private static HorsePaper.Step step(
      int from, int to, SortedMap<Integer, List<Double>> byDay, Voice voice) {
    String days =
        from == to
            ? voice.say("sheet.day", "day", String.valueOf(from))
            : voice
                .texts()
                .say("sheet.day-range", "from", String.valueOf(from), "to", String.valueOf(to));
    return new HorsePaper.Step(
        days, byDay.getOrDefault(from, List.of()).stream().map(kg -> amount(kg, voice)).toList());
  }

  static HorsePaper.StepAmount amount(double kg, Voice voice) {
    return kg <= 0
        ? new HorsePaper.StepAmount(voice.say("amount.none"), "")
        : new HorsePaper.StepAmount(voice.amount(kg), voice.other(kg));
  }
}
