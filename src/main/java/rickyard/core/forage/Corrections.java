package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * Corrections in decisions.csv: {@code about} is {@code LOT ANALYTE} (or with a colon), {@code
 * value} a number in the figure's own unit and basis, or {@code leave out}. The latest counts.
 */
final class Corrections {
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");
  private static final Pattern ABOUT =
      Pattern.compile("(?<lot>.+)[ :](?<code>[A-Za-z][A-Za-z0-9_]*)");

  private final List<Decision> corrections;

  Corrections(List<Decision> decisions) {
    corrections =
        decisions.stream()
            .filter(d -> d.kind().equals("correction"))
            .sorted(Comparator.comparing(Decision::date).thenComparing(Decision::row))
            .toList();
  }

  /** Of several figures of one analyte the dry-matter one is corrected, the others are left out. */
  Sample apply(String subject, Sample sample) {
    Set<AnalyteCode> done = new TreeSet<>();
    List<Reading> dryFirst =
        sample.readings().stream()
            .sorted(Comparator.comparing(r -> !r.rawBasis().equals(Basis.DRY_MATTER.code())))
            .toList();
    List<Reading> readings = new ArrayList<>(sample.readings());
    for (Reading reading : dryFirst) {
      Optional<Decision> decision = find(subject, reading.analyte());
      if (decision.isPresent()) {
        Reading now =
            done.add(reading.analyte())
                ? corrected(reading, decision.get())
                : with(reading, Optional.empty(), "left-out");
        readings.set(readings.indexOf(reading), now);
      }
    }
    return DoubtDesk.with(sample, sample.sampledOn(), readings, sample.doubts());
  }

  /** The latest correction of one figure of a lot. */
  Optional<Decision> find(String subject, AnalyteCode code) {
    Decision found = null;
    for (Decision decision : corrections) {
      Matcher about = ABOUT.matcher(decision.about().strip());
      if (about.matches()
          && about.group("lot").strip().equals(subject)
          && about.group("code").toUpperCase(Locale.ROOT).equals(code.value())) {
        found = decision;
      }
    }
    return Optional.ofNullable(found);
  }

  private static Reading corrected(Reading reading, Decision decision) {
    String value = decision.value().strip();
    Optional<Unit> unit = reading.value().map(Measured::unit);
    Optional<Basis> basis = reading.value().map(Measured::basis);
    if (!NUMBER.matcher(value).matches() || unit.isEmpty() || basis.isEmpty()) {
      return with(reading, Optional.empty(), "left-out");
    }
    Evidence evidence =
        new Evidence.Answered(
            "decisions.csv row " + decision.row(), decision.by(), decision.date().toString());
    return with(reading, RawFigure.read(value, unit.get(), basis.get(), evidence), "");
  }

  private static Reading with(Reading r, Optional<Measured> value, String doubt) {
    return new Reading(
        r.analyte(), r.raw(), r.rawUnit(), r.rawBasis(), r.method(), r.place(), value, doubt);
  }
}
