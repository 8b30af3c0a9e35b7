package rickyard.core.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;

/** The one sentence to say on the telephone; plain words, and the vet first where it must be. */
final class CallWords {
  private CallWords() {}

  static String say(
      Horse horse, PriorityRule.Ruling ruling, List<Portion> portions, boolean acute) {
    if (ruling.priority() != Priority.CALL_NOW && ruling.priority() != Priority.CALL_TODAY) {
      return "";
    }
    if (acute) {
      return horse.name()
          + " is on record with acute laminitis: the veterinarian decides what it is fed."
          + finding(ruling, portions);
    }
    return "About "
        + horse.name()
        + "."
        + finding(ruling, portions)
        + " If it is footsore or off its feed, ring the veterinarian first.";
  }

  private static String finding(PriorityRule.Ruling ruling, List<Portion> portions) {
    LimitLine line = ruling.line();
    if (line == null) {
      return " " + ruling.reason() + ".";
    }
    String what = largest(portions).map(p -> " on " + p.food().id()).orElse("");
    if (line.value() == null || line.pOver() == null) {
      return " Its feed" + what + " cannot be judged yet: " + line.reason() + ".";
    }
    return String.format(
        Locale.ROOT,
        " Its %s%s holds %.1f %s against a limit of %s: chance of being over %.0f %%, from this test"
            + " alone.",
        line.subject().equals("bucket-meal") ? "bucket meal" : "ration",
        what,
        line.value(),
        line.unit(),
        plain(line.limit()),
        100 * line.pOver());
  }

  private static String plain(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%s", value);
  }

  private static Optional<Portion> largest(List<Portion> portions) {
    return portions.stream()
        .filter(p -> p.food().isForage())
        .max(
            Comparator.comparingDouble(Portion::kgDm)
                .thenComparing(p -> p.food().key(), Comparator.reverseOrder()));
  }
}
