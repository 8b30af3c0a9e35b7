package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rickyard.core.forage.Doubt;
import rickyard.core.forage.Method;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;

/**
 * Turns a draft into a sample: one figure for each analyte, open names settled, relations tried.
 */
final class SampleWriter {
  private final Walk walk;
  private final Dates.Order order;
  private final List<Untaken> untaken = new ArrayList<>();

  SampleWriter(Walk walk, Dates.Order order) {
    this.walk = walk;
    this.order = order;
  }

  List<Untaken> untaken() {
    return List.copyOf(untaken);
  }

  Sample write(SampleDraft draft) {
    List<Finding> taken = draft.findings().stream().filter(this::isTaken).toList();
    Settled settled = Settled.of(taken);
    List<Doubt> doubts = new ArrayList<>();
    List<Reading> readings = new ArrayList<>();
    Map<String, List<Resolved>> troubles = new LinkedHashMap<>();
    Method fallback = method();
    for (Resolved resolved : settled.chosen()) {
      readings.add(resolved.toReading(resolved.code(), fallback));
      if (!resolved.trouble().isEmpty()) {
        troubles.computeIfAbsent(resolved.trouble(), t -> new ArrayList<>()).add(resolved);
      }
    }
    troubles.forEach((trouble, touched) -> doubts.add(Doubts.of(trouble, touched)));
    var sampledOn = Doubts.date(draft.field("sampled"), order, "day of sampling", doubts);
    String label = draft.field("lot").isEmpty() ? draft.field("sample") : draft.field("lot");
    return new Sample(
        label,
        draft.field("batch"),
        draft.field("lab_no"),
        draft.field("material"),
        sampledOn,
        cores(draft.field("cores")),
        readings,
        doubts,
        List.of());
  }

  private boolean isTaken(Finding finding) {
    String why = "";
    if (finding.label().ratio()) {
      why = "share";
    } else if (finding.label().rule().use() == AnalyteRule.Use.LEAVE) {
      why = "not-used";
    }
    if (!why.isEmpty()) {
      untaken.add(new Untaken(finding.place(), finding.code() + " " + finding.raw(), why));
    }
    return why.isEmpty();
  }

  private Method method() {
    Meaning meaning = walk.readMarks(walk.front().field("method"));
    Optional<String> word = meaning.only(Kind.METHOD);
    return word.map(Resolved::method).orElse(Method.UNKNOWN);
  }

  private static OptionalInt cores(String text) {
    String digits = text.replaceAll("^[^0-9]*([0-9]{1,3})(?![0-9]).*$", "$1");
    return digits.matches("[0-9]{1,3}")
        ? OptionalInt.of(Integer.parseInt(digits))
        : OptionalInt.empty();
  }
}
