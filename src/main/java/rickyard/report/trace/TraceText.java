package rickyard.report.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;

/** Writes a number and everything it rests on, one line each, what it rests on set in below it. */
public final class TraceText {
  private static final String STEP = "  ";
  private final Function<Place, String> files;

  /**
   * Prepares a trace.
   *
   * @param files the file and part in which a place lies, in words
   */
  public TraceText(Function<Place, String> files) {
    this.files = files;
  }

  /**
   * The trace of one number.
   *
   * @param name what it is
   * @return lines; the first is the number itself
   */
  public List<String> of(String name, Measured value) {
    List<String> lines = new ArrayList<>();
    add(name, value, "", lines);
    return lines;
  }

  private void add(String name, Measured value, String indent, List<String> lines) {
    Evidence evidence = value.evidence();
    lines.add(indent + name + " = " + number(value) + ", " + words(evidence));
    if (evidence instanceof Evidence.Derived derived) {
      for (Evidence.Term term : derived.inputs()) {
        add(term.name(), term.value(), indent + STEP, lines);
      }
    }
  }

  private String words(Evidence evidence) {
    if (evidence instanceof Evidence.Reported reported) {
      return "printed \""
          + reported.raw()
          + "\" in "
          + files.apply(reported.place())
          + ", "
          + reported.place().words();
    }
    if (evidence instanceof Evidence.Hinted hinted) {
      return "printed \""
          + hinted.raw()
          + "\" in "
          + files.apply(hinted.place())
          + ", "
          + hinted.place().words()
          + ", with a hint: "
          + hinted.hint();
    }
    if (evidence instanceof Evidence.Derived derived) {
      return "derived: " + derived.formula();
    }
    if (evidence instanceof Evidence.Assumed assumed) {
      return "assumed: table " + assumed.table() + ", row " + assumed.row();
    }
    if (evidence instanceof Evidence.Registered registered) {
      return "register "
          + registered.register()
          + ", row "
          + registered.row()
          + ", column \""
          + registered.column()
          + "\": \""
          + registered.raw()
          + "\"";
    }
    Evidence.Answered answered = (Evidence.Answered) evidence;
    return "answered by "
        + answered.by()
        + " on "
        + answered.on()
        + " (question "
        + answered.questionId()
        + ")";
  }

  private static String number(Measured value) {
    String open = value.isBoundedAbove() ? "" : " at least";
    String error = value.u() > 0 ? String.format(Locale.ROOT, " ± %.2f", value.u()) : "";
    return String.format(
        Locale.ROOT, "%.4g%s%s %s", value.best(), error, open, value.unit().code() + basis(value));
  }

  private static String basis(Measured value) {
    return switch (value.basis()) {
      case AS_FED -> " as fed";
      case DRY_MATTER -> " of dry matter";
      case NONE -> "";
    };
  }
}
