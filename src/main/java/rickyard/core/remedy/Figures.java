package rickyard.core.remedy;

import java.util.Locale;
import rickyard.core.quantity.Chance;

/** Numbers and verdicts as the proposals' sentences say them. */
final class Figures {
  private Figures() {}

  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  /** Why a checked ration is enough or is not, without the full stop. */
  static String verdict(CheckedDiet diet) {
    if (!diet.obstacles().isEmpty() && diet.uncleared().isEmpty()) {
      return "not enough: " + String.join("; ", diet.obstacles());
    }
    String figure = diet.leading().map(Figures::figure).orElse("no limit applies");
    String open = diet.obstacles().isEmpty() ? "" : "; " + String.join("; ", diet.obstacles());
    return (diet.isEnough() ? "clears the chosen limit: " : "not enough: ") + figure + open;
  }

  /** What a limit is held against, for example {@code NSC (WSC + starch) 9.06 % DM against 10}. */
  static String figure(CheckedLimit l) {
    return position(l) + meaning(l.word());
  }

  /** The same without saying what it means. */
  static String position(CheckedLimit l) {
    String value =
        l.value().isPresent()
            ? l.words() + " " + rounded(l.value().getAsDouble()) + " " + l.unit()
            : l.words() + " cannot be told";
    String chance =
        l.pOver().isPresent()
            ? ", chance of being over " + Chance.words(l.pOver().getAsDouble())
            : "";
    return value + " against " + number(l.limit()) + chance;
  }

  /** Why a value that may look low is not enough. */
  private static String meaning(String word) {
    return switch (word) {
      case "borderline-under" -> ", under the limit by less than the guard band";
      case "cannot-judge" -> ", the rest is not known";
      default -> "";
    };
  }

  static String rounded(double value) {
    return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.1f", value);
  }
}
