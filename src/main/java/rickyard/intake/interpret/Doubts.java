package rickyard.intake.interpret;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rickyard.core.forage.Doubt;

/** The questions that the reader asks, in words. */
final class Doubts {
  private static final String LEAVE_OUT = "leave out";

  private Doubts() {}

  /** The question about figures that share one trouble. */
  static Doubt of(String trouble, List<Resolved> touched) {
    Resolved first = touched.get(0);
    String names =
        touched.stream().map(r -> r.code().value()).distinct().collect(Collectors.joining(", "));
    String cells =
        touched.stream()
            .limit(6)
            .map(r -> r.code() + " \"" + r.finding().raw() + "\"")
            .collect(Collectors.joining(", "));
    String about = touched.size() == 1 ? first.code().value() : "report";
    return new Doubt(
        trouble,
        about,
        Optional.of(first.finding().place()),
        question(trouble, names) + " (" + cells + ")",
        touched.size() == 1 || !isOfNumbers(trouble) ? choices(trouble, first) : List.of(LEAVE_OUT),
        touched.size() == 1 ? proposed(first) : "",
        why(trouble));
  }

  /** A question whose answer is a number of its own for each figure. */
  private static boolean isOfNumbers(String trouble) {
    return trouble.contains("number") || trouble.contains("letters");
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
      case "implausible-figure" ->
          "The figure for " + names + " cannot be right: what should it be?";
      case "hint-contradicted" ->
          "A hint for this layout says otherwise than the page about "
              + names
              + ": does the page hold?";
      default -> "Please check " + names + ".";
    };
  }

  private static List<String> choices(String trouble, Resolved first) {
    List<String> proposal = proposed(first).isEmpty() ? List.of() : List.of(proposed(first));
    return switch (trouble) {
      case "basis-not-stated",
          "basis-contradiction",
          "column-not-known",
          "column-not-understood",
          "columns-same-basis" ->
          List.of("as fed", "dry matter", LEAVE_OUT);
      case "unit-not-stated", "unit-contradiction", "unit-not-possible" ->
          with(first.finding().label().rule().units().stream().map(u -> u.code()).toList());
      case "nsc-definition-unknown", "sugar-not-defined", "nitrate-form-unknown" ->
          with(first.finding().label().rule().openFor());
      case "identity-broken",
          "order-broken",
          "outside-usual-range",
          "implausible-figure",
          "hint-contradicted",
          "printed-twice" ->
          first.value().isPresent() ? List.of("as printed", LEAVE_OUT) : List.of(LEAVE_OUT);
      case "columns-swapped" -> List.of(LEAVE_OUT);
      default -> with(proposal);
    };
  }

  private static List<String> with(List<String> choices) {
    List<String> all = new java.util.ArrayList<>(choices);
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
            days.stream().map(LocalDate::toString).toList(),
            "",
            two
                ? "No date of the report tells whether day or month comes first."
                : "It is not a possible date."));
    return Optional.empty();
  }
}
