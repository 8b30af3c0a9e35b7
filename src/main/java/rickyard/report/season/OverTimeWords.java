package rickyard.report.season;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Method;
import rickyard.core.quantity.Unit;
import rickyard.core.season.Course;
import rickyard.core.season.DayValue;
import rickyard.core.season.FieldCourse;
import rickyard.core.season.Laboratory;
import rickyard.core.season.LaboratoryPair;
import rickyard.core.season.LotCourse;
import rickyard.core.season.OverTimeRules;
import rickyard.core.season.PairedDifference;
import rickyard.core.season.Trend;
import rickyard.core.season.YearValue;
import rickyard.report.text.Harmless;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;

/** What tests over time come to, in sentences that claim no more than they show. */
public final class OverTimeWords {
  /** A trend of a lot is said for as many days. */
  public static final int TREND_DAYS = 30;

  /** From this many days between the samples on, the hay itself may have changed. */
  private static final int DAYS_THAT_MATTER = 14;

  private static final int LONGEST_NAME = 60;

  private OverTimeWords() {}

  /** A laboratory's name on one line, cut where it is longer than any name. */
  public static String name(Laboratory laboratory) {
    return name(laboratory.name());
  }

  /** A name from outside on one line, cut where it is longer than any name. */
  public static String name(String printed) {
    String line = Harmless.line(printed);
    int[] points = line.codePoints().limit(LONGEST_NAME + 1L).toArray();
    return points.length <= LONGEST_NAME ? line : new String(points, 0, LONGEST_NAME) + "…";
  }

  public static String quantity(AnalyteCode code) {
    return Words.of("quantity", code.value().toLowerCase(java.util.Locale.ROOT));
  }

  /** What a lot's tests on several days come to. */
  public static String of(LotCourse course) {
    DayValue first = course.days().get(0);
    DayValue last = course.days().get(course.days().size() - 1);
    String span =
        value(first.value(), first.u())
            + " on "
            + first.day()
            + ", "
            + value(last.value(), last.u())
            + " on "
            + last.day();
    String finding =
        switch (course.course()) {
          case STEADY -> "no difference that the errors of the tests would not explain";
          case CHANGED -> "they differ by more than the errors of the two tests explain";
          case SCATTERED ->
              "some tests differ by more than their errors explain, without a direction";
          case RISING, FALLING -> trend(course);
        };
    return span + ": " + finding + whose(course) + ".";
  }

  private static String trend(LotCourse course) {
    Trend trend = course.trend().orElseThrow();
    return (course.course() == Course.RISING ? "rising by " : "falling by ")
        + value(Math.abs(trend.slope()) * TREND_DAYS, trend.u() * TREND_DAYS)
        + " "
        + points(course.unit())
        + " in "
        + TREND_DAYS
        + " days";
  }

  private static String whose(LotCourse course) {
    boolean said = course.course() != Course.STEADY;
    return said && course.laboratories().size() > 1
        ? "; by different laboratories (" + names(course.laboratories()) + "), so it may be theirs"
        : "";
  }

  private static String names(Collection<Laboratory> laboratories) {
    return laboratories.stream()
        .map(l -> l.isNamed() ? name(l) : "one without a name")
        .collect(Collectors.joining(", "));
  }

  /** What the years of a field and cutting come to. */
  public static String of(FieldCourse course, OverTimeRules rules) {
    String years =
        course.years().stream()
            .map(y -> y.year() + ": " + value(y.value(), y.u()) + lots(y))
            .collect(Collectors.joining(", "));
    String finding =
        switch (course.course()) {
          case STEADY -> "no difference that the errors of the tests would not explain";
          case CHANGED -> "the two years differ by more than the errors of the tests";
          case SCATTERED ->
              "the years differ by more than the errors of the tests, without a trend";
          case RISING, FALLING -> "";
        };
    String trend = course.trend().map(t -> trend(course, t)).orElse(toCome(rules));
    return years + ": " + sentence(finding.isEmpty() ? trend : finding + "; " + trend);
  }

  private static String toCome(OverTimeRules rules) {
    return "a trend is shown from " + rules.leastYears() + " years on";
  }

  private static String lots(YearValue year) {
    return year.lots() == 1 ? "" : " (" + year.lots() + " lots)";
  }

  private static String trend(FieldCourse course, Trend trend) {
    String words =
        value(trend.slope(), trend.u())
            + " "
            + points(course.unit())
            + " a year, such a trend or a steeper one by chance alone: "
            + Shown.chance(Double.valueOf(trend.chanceFromScatter()));
    return switch (course.course()) {
      case RISING -> "rising by " + words;
      case FALLING -> "falling: " + words;
      default -> "a line through them has " + words;
    };
  }

  /** What lots that two laboratories have tested come to, or one laboratory twice. */
  public static String of(LaboratoryPair pair, OverTimeRules rules) {
    if (pair.difference().isEmpty()) {
      return tooFew(pair, rules);
    }
    PairedDifference difference = pair.difference().get();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        difference(pair, difference)
            + (pair.isRare(rules)
                ? "; chance alone would rarely do that"
                : "; chance alone may well do that")
            + " (a difference as large or larger: "
            + Shown.chance(Double.valueOf(difference.chance()))
            + " of such sets of lots).");
    if (!pair.isAgain() && !pair.firstMethods().equals(pair.secondMethods())) {
      sentences.add(
          sentence(
              name(pair.first())
                  + " by "
                  + methods(pair.firstMethods())
                  + ", "
                  + name(pair.second())
                  + " by "
                  + methods(pair.secondMethods())
                  + ": it may be the methods'"));
    }
    pair.daysLater().stream()
        .filter(d -> !pair.isAgain() && Math.abs(d) >= DAYS_THAT_MATTER)
        .forEach(d -> sentences.add(later(pair, d)));
    return String.join(" ", sentences);
  }

  private static String difference(LaboratoryPair pair, PairedDifference difference) {
    boolean more = difference.mean() >= 0;
    String amount =
        Shown.number(Double.valueOf(Math.abs(difference.mean())))
            + " ± "
            + Shown.number(Double.valueOf(difference.u()))
            + " "
            + points(pair.unit())
            + (more ? " more " : " less ")
            + quantity(pair.quantity());
    int alike = more ? difference.above() : difference.below();
    String counted = (more ? "more on " : "less on ") + alike + " of them";
    String days =
        pair.daysLater().isPresent()
            ? Math.round(pair.daysLater().getAsDouble()) + " days later on average"
            : "later";
    return pair.isAgain()
        ? name(pair.first())
            + " printed "
            + amount
            + " when it tested a lot again, "
            + days
            + ", on "
            + pair.lots()
            + " lots ("
            + counted
            + ")"
        : name(pair.first())
            + " printed "
            + amount
            + " than "
            + name(pair.second())
            + " on "
            + pair.lots()
            + " lots tested by both ("
            + counted
            + ")";
  }

  private static String later(LaboratoryPair pair, double days) {
    Laboratory late = days > 0 ? pair.first() : pair.second();
    return sentence(
        "Samples of "
            + name(late)
            + " were "
            + Math.round(Math.abs(days))
            + " days the later on average: it may be the hay's");
  }

  private static String tooFew(LaboratoryPair pair, OverTimeRules rules) {
    String lots = Shown.count(pair.lots(), "lot", "lots");
    return pair.isAgain()
        ? name(pair.first())
            + ": "
            + lots
            + " tested again so far; a difference is shown from "
            + rules.leastPairs()
            + " on."
        : name(pair.first())
            + " and "
            + name(pair.second())
            + ": "
            + lots
            + " tested by both so far; a difference is shown from "
            + rules.leastPairs()
            + " on.";
  }

  private static String methods(Collection<Method> methods) {
    return methods.stream()
        .map(m -> Words.of("method", m.code()))
        .collect(Collectors.joining(" and "));
  }

  /** The unit of a difference of contents on dry matter. */
  public static String points(Unit unit) {
    return unit == Unit.PERCENT
        ? "percentage points of dry matter"
        : Words.of("unit", unit.code() + " DM");
  }

  private static String value(double value, double u) {
    return Shown.withUncertainty(Double.valueOf(value), Double.valueOf(u));
  }

  private static String sentence(String words) {
    return Harmless.sentence(words);
  }
}
