package rickyard.intake.interpret;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rickyard.core.forage.Choices;
import rickyard.core.forage.Doubt;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Unit;

/** The questions that the reader asks, in words. */
final class Doubts {
  private static final String LEAVE_OUT = Choices.LEAVE_OUT;

  private Doubts() {}

  /**
   * The question about figures that share one trouble.
   *
   * @param about their code or codes with commas, or {@code report}
   */
  static Doubt of(String trouble, String about, List<Resolved> touched) {
    Resolved first = touched.get(0);
    String names =
        touched.stream().map(r -> r.code().value()).distinct().collect(Collectors.joining(", "));
    String cells =
        touched.stream()
            .limit(trouble.equals(ScanDoubts.FIGURE) ? touched.size() : 6)
            .map(r -> r.code() + " \"" + r.finding().raw() + "\"")
            .collect(Collectors.joining(", "));
    return new Doubt(
        trouble,
        about,
        Optional.of(first.finding().place()),
        question(trouble, names) + " (" + cells + ")",
        choices(trouble, touched),
        touched.size() == 1 ? proposed(first) : "",
        why(trouble));
  }

  private static String question(String trouble, String names) {
    return switch (trouble) {
      case "basis-not-stated" -> "Are these figures as fed or on dry matter: " + names + "?";
      case "basis-contradiction" -> "The page gives two bases for " + names + ": which one holds?";
      case "unit-not-stated" -> "In which unit is " + names + "?";
      case "unit-contradiction" -> "The page gives two units for " + names + ": which one holds?";
      case "unit-not-possible" ->
          "The unit printed for " + names + " does not fit it: which is right?";
      case "column-not-known" ->
          "No heading says which column holds the results for "
              + names
              + ": as fed, dry matter, or neither?";
      case "column-not-understood" ->
          "The heading over the figures for "
              + names
              + " is not understood: are they as fed, on dry matter, or no results?";
      case "number-ambiguous", "decimal-mark-mixed" ->
          "Is the mark in the number of " + names + " a decimal mark?";
      case "letters-in-number" ->
          "A letter stands among the digits of " + names + ": which number is it?";
      case "negative-number" ->
          "The number printed for " + names + " is negative: what should it be?";
      case "approximate-number" ->
          "The number for " + names + " is marked as approximate: take it?";
      case ScanDoubts.FIGURE -> "Read from a picture, compare with it: is each figure right?";
      case "formula-in-result" ->
          "A formula stands in the cell of "
              + names
              + ", its stored result may be old: is it right?";
      case "error-in-cell" ->
          "The workbook shows an error where " + names + " should stand: which number is it?";
      case "shown-otherwise" ->
          "The workbook shows another number for " + names + " than it holds: which one counts?";
      case "date-in-result" -> "A day stands in the cell of " + names + ": which number was meant?";
      case "range-printed" -> "Two numbers stand in the cell of " + names + ": which one counts?";
      case "detection-limit-not-stated", "trace-without-limit" ->
          "What is the detection limit for " + names + "?";
      case "nsc-definition-unknown" -> "Is the printed NSC WSC + starch or ESC + starch?";
      case "sugar-not-defined" -> "Is the printed sugar WSC or ESC?";
      case "nitrate-form-unknown" -> "Is the printed nitrate NO3 or NO3-N?";
      case "printed-twice" -> "Several figures are printed for " + names + ": which one counts?";
      case "identity-broken" ->
          "The figures of the report contradict each other: is " + names + " copied right?";
      case "order-broken" -> "A part is larger than its whole: is " + names + " copied right?";
      case "columns-swapped" ->
          "As fed is larger than dry matter: are the two columns swapped (" + names + ")?";
      case "columns-same-basis" ->
          "Both columns hold the same figures: on which basis are " + names + "?";
      case "outside-usual-range" -> "The figure for " + names + " is far from usual: is it right?";
      case "unit-unlike-others" ->
          "Protein and fibre are printed in another unit than " + names + ": is its unit right?";
      case "digits-unlike-others" ->
          "The other lines are printed with fewer decimals than "
              + names
              + ": does the decimal mark stand where it should?";
      case "basis-unlike-figures" ->
          "The figures add up on the other basis than the page says: as fed or dry matter ("
              + names
              + ")?";
      case "unlike-material" ->
          "The figures do not look like the material that the report names: is it the right"
              + " sample, and is "
              + names
              + " copied right?";
      case "page-in-doubt" ->
          "Other figures of the page contradict each other or are far from usual: is "
              + names
              + " copied right?";
      case "implausible-figure" ->
          "The figure for " + names + " cannot be right: what should it be?";
      case "hint-contradicted" ->
          "A hint for this layout says otherwise than the page about "
              + names
              + ": does the page hold?";
      default -> "Please check " + names + ".";
    };
  }

  private static List<String> choices(String trouble, List<Resolved> touched) {
    if (trouble.equals(ScanDoubts.FIGURE)) {
      return List.of("as read", LEAVE_OUT);
    }
    Resolved first = touched.get(0);
    AnalyteRule rule = first.finding().label().rule();
    return switch (trouble) {
      case "basis-not-stated",
          "basis-contradiction",
          "column-not-known",
          "column-not-understood",
          "columns-same-basis",
          "basis-unlike-figures" ->
          List.of("as fed", "dry matter", LEAVE_OUT);
      case "unit-not-stated", "unit-contradiction", "unit-not-possible", "unit-unlike-others" ->
          with(
              rule.units().stream()
                  .filter(u -> touched.stream().allMatch(r -> isPossible(r, u)))
                  .map(Unit::code)
                  .toList());
      case "nsc-definition-unknown", "sugar-not-defined", "nitrate-form-unknown" ->
          with(rule.openFor());
      case "printed-twice" -> with(first.others());
      case "identity-broken",
          "order-broken",
          "outside-usual-range",
          "formula-in-result",
          "hint-contradicted",
          "digits-unlike-others",
          "unlike-material",
          "page-in-doubt" ->
          asPrinted(touched);
      case "columns-swapped" -> List.of("swapped", LEAVE_OUT);
      case "number-ambiguous", "decimal-mark-mixed" ->
          touched.size() == 1
              ? number(first)
              : List.of("decimal mark", "thousands mark", LEAVE_OUT);
      default -> number(first);
    };
  }

  private static boolean isPossible(Resolved resolved, Unit unit) {
    Finding finding = resolved.finding();
    return !finding.figure().hasNumber()
        || Resolver.isPossible(finding, finding.label().rule(), unit);
  }

  /** All figures as printed, or one of them left out, or all; a single one may be put right. */
  private static List<String> asPrinted(List<Resolved> touched) {
    List<String> choices = new ArrayList<>();
    if (touched.stream().allMatch(r -> r.value().isPresent())) {
      choices.add(Choices.AS_PRINTED);
    }
    choices.addAll(leaveOutOne(touched));
    return with(choices);
  }

  private static List<String> leaveOutOne(List<Resolved> touched) {
    return touched.size() == 1
        ? List.of(Choices.NUMBER)
        : touched.stream().map(r -> LEAVE_OUT + " " + r.code()).distinct().toList();
  }

  private static List<String> number(Resolved first) {
    List<String> choices = new ArrayList<>();
    if (!proposed(first).isEmpty()) {
      choices.add(proposed(first));
    }
    choices.add(Choices.NUMBER);
    return with(choices);
  }

  private static List<String> with(List<String> choices) {
    List<String> all = new ArrayList<>(choices);
    all.add(LEAVE_OUT);
    return all;
  }

  private static String proposed(Resolved first) {
    return first.finding().figure().proposal();
  }

  private static String why(String trouble) {
    return switch (trouble) {
      case "basis-not-stated" -> "Neither column, line nor page states a basis.";
      case "unit-not-stated" -> "Neither cell, column, line nor page states a unit.";
      case "nsc-definition-unknown" ->
          "The report does not say, and its own figures do not settle it.";
      case "formula-in-result" -> "Confirm it, or ask the laboratory for values.";
      case "date-in-result" -> "Spreadsheets turn figures such as 7.4 into days.";
      case "sugar-not-defined", "nitrate-form-unknown" -> "The report does not say.";
      case "detection-limit-not-stated", "trace-without-limit" ->
          "Without the limit the figure has no upper end.";
      default -> "";
    };
  }

  /** A caution of the grid about the document as a whole. */
  static Doubt ofCaution(String caution) {
    String question =
        switch (caution) {
          case "hidden-text" ->
              "The document holds text that cannot be seen on the page; it was left out. Is the page right as printed?";
          case "readings-differ" ->
              "Two ways of reading the page disagree. Are the figures right as read?";
          default ->
              "The document was read with a caution ("
                  + caution
                  + "). Are the figures right as read?";
        };
    return new Doubt(
        caution,
        "report",
        Optional.empty(),
        question,
        List.of("yes", "no"),
        "",
        "Found while opening the document.");
  }

  /** Where one of several samples does not look like its material, the samples may be exchanged. */
  static Optional<Doubt> ofSamples(List<Sample> samples) {
    Optional<Sample> unlike =
        samples.stream()
            .filter(s -> s.doubts().stream().anyMatch(d -> d.code().equals("unlike-material")))
            .findFirst();
    return samples.size() < 2
        ? Optional.empty()
        : unlike.map(
            s ->
                new Doubt(
                    "samples-exchanged",
                    "report",
                    Optional.empty(),
                    "The figures of sample \""
                        + s.label()
                        + "\" do not look like "
                        + s.material()
                        + ": do all figures of the report stand under the right samples?",
                    List.of("yes", "no"),
                    "",
                    "Figures of two samples may have changed places."));
  }

  /** The day that a text means; a question if it may mean two, or none. */
  static Optional<LocalDate> date(String text, Dates.Order order, String name, List<Doubt> into) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    List<LocalDate> days = Dates.read(text, order);
    if (days.size() == 1) {
      return Optional.of(days.get(0));
    }
    boolean two = days.size() == 2;
    into.add(
        new Doubt(
            two ? "date-ambiguous" : "date-not-understood",
            "date",
            Optional.empty(),
            "Which day is the " + name + " \"" + text + "\"?",
            dateChoices(days),
            "",
            two
                ? "No date of the report tells whether day or month comes first."
                : "It is not a possible date."));
    return Optional.empty();
  }

  private static List<String> dateChoices(List<LocalDate> days) {
    List<String> choices = new ArrayList<>(days.stream().map(LocalDate::toString).toList());
    if (days.isEmpty()) {
      choices.add(Choices.DAY);
    }
    choices.add("ignore the date");
    return with(choices);
  }
}
