package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;

/**
 * Corrections in decisions.csv: {@code about} is {@code LOT ANALYTE} (or with a colon), or a
 * reading's place, {@code FILE page 1 row 4 column WSC}, or the id of a question about one figure;
 * {@code value} is a number in the figure's own unit and basis, or {@code leave out}. The latest
 * counts; a place is nearer than a lot.
 */
final class Corrections {
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");
  private static final Pattern ABOUT =
      Pattern.compile("(?<lot>.+)[ :](?<code>[A-Za-z][A-Za-z0-9_]*)");
  private static final Pattern AT =
      Pattern.compile(
          "(?i)(?<file>.+?),? page (?<page>[0-9]+),? row (?<row>[0-9]+),? column (?<column>.+)");

  private static final Comparator<Decision> LATEST =
      Comparator.comparing(Decision::date).thenComparing(Decision::row);

  /** A correction of one place, as the decision names it. */
  private record Placed(Decision decision, String file, String page, String row, String column) {}

  private final Map<String, Decision> byQuestion = new TreeMap<>();
  private final Map<String, Decision> byLot = new TreeMap<>();
  private final Map<String, List<Placed>> byRow = new TreeMap<>();
  private final List<Corrected> made = new ArrayList<>();

  Corrections(List<Decision> decisions) {
    decisions.stream()
        .filter(d -> d.kind().equals("correction"))
        .sorted(LATEST)
        .forEach(this::take);
  }

  private void take(Decision decision) {
    String words = decision.about().strip();
    byQuestion.put(words, decision);
    Matcher lot = ABOUT.matcher(words);
    if (lot.matches()) {
      String code = lot.group("code").toUpperCase(Locale.ROOT);
      byLot.put(lot.group("lot").strip() + "\u001f" + code, decision);
    }
    Matcher at = AT.matcher(words);
    if (at.matches()) {
      Placed placed =
          new Placed(
              decision,
              at.group("file").strip(),
              at.group("page"),
              at.group("row"),
              unquoted(at.group("column")));
      byRow.computeIfAbsent(placed.page() + " " + placed.row(), r -> new ArrayList<>()).add(placed);
    }
  }

  /** Of several figures of one analyte the dry-matter one is corrected, the others are left out. */
  Sample apply(Held held, String subject) {
    Sample sample = held.sample;
    if (byQuestion.isEmpty()) {
      return sample;
    }
    Map<String, Place> asked = asked(held);
    Set<AnalyteCode> done = new TreeSet<>();
    List<Reading> dryFirst =
        sample.readings().stream()
            .sorted(Comparator.comparing(r -> !r.rawBasis().equals(Basis.DRY_MATTER.code())))
            .toList();
    List<Reading> readings = new ArrayList<>(sample.readings());
    for (Reading reading : dryFirst) {
      Optional<Decision> at = findAt(held, reading.place(), asked);
      Optional<Decision> decision = at.or(() -> find(subject, reading.analyte()));
      if (decision.isPresent()) {
        boolean first = at.isPresent() || done.add(reading.analyte());
        Reading now =
            first
                ? corrected(reading, decision.get())
                : reading.with(reading.analyte(), reading.rawBasis(), Optional.empty(), "left-out");
        readings.set(readings.indexOf(reading), now);
        made.add(new Corrected(held.key, subject, reading, decision.get()));
      }
    }
    return DoubtDesk.with(sample, sample.sampledOn(), readings, sample.doubts());
  }

  /** Everything that was corrected, sorted by sample. */
  List<Corrected> made() {
    return made.stream()
        .sorted(
            Comparator.comparing(Corrected::key)
                .thenComparing(c -> c.read().analyte())
                .thenComparing(c -> c.decision().row()))
        .toList();
  }

  /** The latest correction of one figure of a lot. */
  Optional<Decision> find(String subject, AnalyteCode code) {
    return Optional.ofNullable(byLot.get(subject + "\u001f" + code.value()));
  }

  /**
   * The file by its path or last name, or the start of its hash; the place as analyses.csv has it.
   */
  private Optional<Decision> findAt(Held held, Place place, Map<String, Place> asked) {
    List<Decision> found = new ArrayList<>();
    asked.forEach(
        (question, where) -> {
          if (where.equals(place) && byQuestion.containsKey(question)) {
            found.add(byQuestion.get(question));
          }
        });
    for (Placed placed : byRow.getOrDefault(place.page() + " " + place.row(), List.of())) {
      if (isFile(held, placed.file()) && placed.column().equals(place.column().strip())) {
        found.add(placed.decision());
      }
    }
    return found.stream().max(LATEST);
  }

  /** The figure that each question about a single figure of the sample stands at, by its id. */
  private static Map<String, Place> asked(Held held) {
    Map<String, Place> asked = new TreeMap<>();
    List<Doubt> doubts = held.report.samples().get(held.key.index()).doubts();
    for (int i = 0; i < doubts.size(); i++) {
      Optional<Place> place = doubts.get(i).place();
      if (doubts.get(i).analytes().size() == 1 && place.isPresent()) {
        asked.put(DoubtDesk.id(held.report, held.key.index(), doubts, i), place.get());
      }
    }
    return asked;
  }

  private static boolean isFile(Held held, String named) {
    String path = held.received.path();
    return path.equals(named)
        || path.endsWith("/" + named)
        || path.endsWith("!" + named)
        || (named.length() >= 8 && held.key.document().startsWith(named));
  }

  private static String unquoted(String column) {
    return column.strip().replaceAll("^\"|\"$", "").strip();
  }

  private static Reading corrected(Reading reading, Decision decision) {
    String value = decision.value().strip();
    Optional<Measured> known = reading.value().or(reading::bare);
    Optional<Unit> unit = known.map(Measured::unit).or(reading::unit);
    Optional<Basis> basis =
        reading.value().map(Measured::basis).or(() -> RawFigure.basis(reading.rawBasis()));
    if (!NUMBER.matcher(value).matches() || unit.isEmpty() || basis.isEmpty()) {
      return reading.with(reading.analyte(), reading.rawBasis(), Optional.empty(), "left-out");
    }
    Evidence evidence =
        new Evidence.Answered(
            "decisions.csv row " + decision.row(), decision.by(), decision.date().toString());
    return reading.with(
        reading.analyte(),
        reading.rawBasis(),
        RawFigure.read(value, unit.get(), basis.get(), evidence),
        "");
  }
}
