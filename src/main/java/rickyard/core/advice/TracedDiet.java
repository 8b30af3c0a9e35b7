package rickyard.core.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.DietItem;
import rickyard.core.nutrition.Horse;
import rickyard.core.quantity.Measured;

/**
 * A diet with all that stands behind it, for a person who asks how a number came about.
 *
 * @param horse whose
 * @param diet as it will be fed
 * @param verdicts against the limits of its groups
 */
public record TracedDiet(Horse horse, Diet diet, List<Verdict> verdicts) {
  public TracedDiet {
    verdicts = List.copyOf(verdicts);
  }

  /** The sum over the items and the limits that ask for this content, as lines. */
  public List<String> lines(AnalyteCode code) {
    List<String> lines = new ArrayList<>();
    Optional<Measured> whole = diet.content(code);
    lines.add(
        horse.id()
            + ": "
            + code
            + " of the whole diet "
            + whole.map(TracedDiet::number).orElse("is not known"));
    for (DietItem item : diet.items()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "  %s: %.3f kg as fed, %.3f kg dry matter, share %.4f, content %s",
              item.portion().food().key(),
              item.portion().kgAsFed(),
              item.kgDm(),
              item.share(),
              item.portion().food().find(code).map(TracedDiet::number).orElse("unknown")));
    }
    for (Verdict verdict : verdicts) {
      if (verdict.limit().analyte().equals(code)) {
        lines.add(
            "limit "
                + verdict.limit().id()
                + ": "
                + verdict.word().code()
                + ", "
                + verdict.reason()
                + " (table row: limits.csv "
                + verdict.limit().id()
                + ", "
                + verdict.limit().source()
                + ", "
                + verdict.limit().status()
                + ")");
      }
    }
    return lines;
  }

  /** The content of each item, by item. */
  public SortedMap<String, Measured> contents(AnalyteCode code) {
    Map<String, Measured> found = new TreeMap<>();
    for (DietItem item : diet.items()) {
      item.portion()
          .food()
          .find(code)
          .ifPresent(value -> found.put(item.portion().food().key(), value));
    }
    return Collections.unmodifiableSortedMap(new TreeMap<>(found));
  }

  private static String number(Measured value) {
    return String.format(
        Locale.ROOT,
        "%s%.4f ± %.4f %s",
        value.isBoundedAbove() ? "" : "at least ",
        value.best(),
        value.u(),
        value.unit().code());
  }
}
