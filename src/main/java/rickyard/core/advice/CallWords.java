package rickyard.core.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Replacement;

/** The one sentence to say on the telephone; plain words, and the vet first where it must be. */
final class CallWords {
  private CallWords() {}

  /**
   * The sentence.
   *
   * @param coming what deliveries change in the ration
   * @param portions what will be fed
   * @param acute whether acute laminitis is on record
   * @param proposals best first
   */
  static String say(
      Horse horse,
      PriorityRule.Ruling ruling,
      ComingRation coming,
      List<Portion> portions,
      boolean acute,
      List<Proposal> proposals) {
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
        + unopened(coming)
        + finding(ruling, portions)
        + remedy(proposals)
        + " If it is footsore or off its feed, ring the veterinarian first.";
  }

  /** A lot that is not open yet is best left shut. */
  private static String unopened(ComingRation coming) {
    return coming.replacements().stream()
        .map(Replacement::delivery)
        .filter(d -> d.openedOn().isEmpty())
        .findFirst()
        .map(
            d ->
                " Please do not open lot "
                    + d.lotId()
                    + d.opensOn().map(day -> ", planned for " + day + ",").orElse("")
                    + " before we have spoken.")
        .orElse("");
  }

  private static String finding(PriorityRule.Ruling ruling, List<Portion> portions) {
    LimitLine line = ruling.line();
    if (line == null) {
      return " " + ruling.reason() + ".";
    }
    String what = largest(portions).map(p -> " on " + p.food().id()).orElse("");
    boolean shared = line.reason().startsWith("shared bale ");
    if (line.value() == null || line.pOver() == null) {
      return " Its feed" + what + " cannot be judged yet: " + line.reason() + ".";
    }
    return String.format(
        Locale.ROOT,
        " Its %s%s holds %s%.1f %s of %s; the limit is %s. Chance of being over, from this test"
            + " alone: %s.",
        line.subject().equals("bucket-meal") ? "bucket meal" : shared ? "shared bale" : "ration",
        shared ? "" : what,
        line.high() == null ? "at least " : "",
        line.value(),
        line.unit(),
        quantity(line.quantity()),
        plain(line.limit()),
        chance(line.pOver()));
  }

  /** What would put it right, without the figures that stand on the page. */
  private static String remedy(List<Proposal> proposals) {
    return proposals.stream()
        .filter(Proposal::enough)
        .findFirst()
        .map(p -> " What would put it right: " + p.why().split(": ", 2)[0] + ".")
        .orElse("");
  }

  private static String quantity(String quantity) {
    return switch (quantity) {
      case "nsc_wsc" -> "starch and sugar (WSC + starch)";
      case "nsc_esc" -> "starch and sugar (ESC + starch)";
      case "k" -> "potassium";
      case "se" -> "selenium";
      case "no3_n" -> "nitrate nitrogen";
      default -> quantity.replace('_', ' ');
    };
  }

  private static String chance(double chance) {
    return chance > 0.99 ? "more than 99 %" : String.format(Locale.ROOT, "%.0f %%", 100 * chance);
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
