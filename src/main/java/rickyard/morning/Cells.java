package rickyard.morning;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;

/** Which cells a derived figure comes from, in one line; the trace says more of each. */
final class Cells {
  private Cells() {}

  /** Formula and cells, each cell once; empty for a figure that is not derived. */
  static String of(Measured value, Places places) {
    if (!(value.evidence() instanceof Evidence.Derived derived)) {
      return "";
    }
    Set<String> cells = new LinkedHashSet<>();
    for (Evidence.Term term : derived.inputs()) {
      add(term.value(), cells, places);
    }
    String from = cells.stream().collect(Collectors.joining("; "));
    return from.isEmpty() ? derived.formula() : derived.formula() + ", from " + from;
  }

  private static void add(Measured value, Set<String> cells, Places places) {
    Evidence evidence = value.evidence();
    if (evidence instanceof Evidence.Derived derived) {
      derived.inputs().forEach(term -> add(term.value(), cells, places));
    } else if (evidence instanceof Evidence.Reported reported) {
      cells.add(cell(reported.place(), reported.raw(), places));
    } else if (evidence instanceof Evidence.Hinted hinted) {
      cells.add(cell(hinted.place(), hinted.raw(), places));
    } else if (evidence instanceof Evidence.Assumed assumed) {
      cells.add("table " + assumed.table() + ", row " + assumed.row());
    } else if (evidence instanceof Evidence.Answered answered) {
      cells.add("the answer of " + answered.by() + " to " + answered.questionId());
    } else if (evidence instanceof Evidence.Registered registered) {
      cells.add(registered.register() + ", row " + registered.row());
    }
  }

  private static String cell(Place place, String raw, Places places) {
    return "\"" + raw + "\" in " + places.words(place) + ", " + place.words();
  }
}
