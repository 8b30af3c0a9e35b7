package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rickyard.core.forage.Doubt;

/**
 * The questions about one sample's figures: one question for all figures that one answer settles,
 * one for each figure that needs a number of its own. A figure that lacks two things is asked about
 * both at once: its basis first, then its number or unit, its name last.
 */
final class Groups {
  private static final Set<String> EACH_ITS_OWN =
      Set.of(
          "letters-in-number",
          "negative-number",
          "approximate-number",
          "range-printed",
          "detection-limit-not-stated",
          "trace-without-limit",
          "implausible-figure",
          "shown-otherwise",
          "error-in-cell",
          "date-in-result",
          "printed-twice",
          "nsc-definition-unknown",
          "sugar-not-defined",
          "nitrate-form-unknown");
  private static final String BASIS = "basis-not-stated";

  private Groups() {}

  static List<Doubt> of(List<Resolved> readings) {
    Map<String, List<Resolved>> groups = new LinkedHashMap<>();
    readings.stream()
        .filter(r -> r.trouble().startsWith("basis-"))
        .forEach(r -> add(groups, r.trouble(), r));
    for (Resolved resolved : readings) {
      boolean lacksBasis = resolved.value().isEmpty() && resolved.basis().isEmpty();
      if (lacksBasis && !isOfBasis(resolved.trouble())) {
        add(groups, BASIS, resolved);
      }
    }
    readings.stream()
        .filter(r -> !r.trouble().isEmpty() && !r.trouble().startsWith("basis-"))
        .forEach(r -> add(groups, r.trouble(), r));
    List<Doubt> doubts = new ArrayList<>();
    groups.forEach((key, touched) -> doubts.add(doubt(trouble(key), touched)));
    readings.stream().filter(Groups::isUnnamed).map(Groups::name).forEach(doubts::add);
    return doubts;
  }

  /** Troubles whose own answer is a basis. */
  private static boolean isOfBasis(String trouble) {
    return trouble.startsWith("basis-") || trouble.startsWith("column");
  }

  private static void add(Map<String, List<Resolved>> groups, String trouble, Resolved resolved) {
    String key =
        EACH_ITS_OWN.contains(trouble)
            ? trouble + " " + resolved.code()
            : trouble.startsWith("unit-")
                ? trouble + " " + resolved.finding().label().rule().units()
                : trouble;
    groups.computeIfAbsent(key, k -> new ArrayList<>()).add(resolved);
  }

  private static String trouble(String key) {
    int space = key.indexOf(' ');
    return space < 0 ? key : key.substring(0, space);
  }

  private static Doubt doubt(String trouble, List<Resolved> touched) {
    boolean codes = touched.size() == 1 || trouble.startsWith("unit-");
    String about =
        codes
            ? touched.stream()
                .map(r -> r.code().value())
                .distinct()
                .collect(Collectors.joining(","))
            : "report";
    return Doubts.of(trouble, about, touched);
  }

  /** Waits for something else first, and its name is open besides. */
  private static boolean isUnnamed(Resolved resolved) {
    return resolved.finding().label().rule().use() == AnalyteRule.Use.OPEN
        && !resolved.trouble().isEmpty()
        && !resolved.trouble().equals(OpenNames.doubt(resolved.code().value()));
  }

  private static Doubt name(Resolved resolved) {
    String code = resolved.code().value();
    return Doubts.of(OpenNames.doubt(code), code, List.of(resolved));
  }
}
