package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Layouts of which a figure was corrected: what was misread once may be misread again, so the next
 * report of the layout is asked about.
 */
final class LayoutReviews {

  /** A correction with the figure it corrected. */
  private record Misread(Decision decision, String words) {}

  private final SortedMap<String, List<Misread>> byLayout = new TreeMap<>();
  private final SortedSet<String> corrected = new TreeSet<>();

  LayoutReviews(List<Received> all, List<Decision> decisions, Belonging belonging) {
    Corrections corrections = new Corrections(decisions);
    if (decisions.stream().anyMatch(d -> d.kind().equals("correction"))) {
      all.forEach(received -> look(received, corrections, belonging));
    }
  }

  private void look(Received received, Corrections corrections, Belonging belonging) {
    Report report = received.report();
    for (int i = 0; i < report.samples().size(); i++) {
      Held held = new Held(received, report, i, report.samples().get(i));
      belonging.find(held);
      for (Reading reading : held.sample.readings()) {
        corrections
            .find(held.subject, reading.analyte())
            .filter(d -> !d.date().isBefore(received.readOn()))
            .ifPresent(d -> note(report, held.subject + " " + reading.analyte(), d));
      }
    }
  }

  private void note(Report report, String words, Decision decision) {
    corrected.add(report.document());
    List<Misread> known = byLayout.computeIfAbsent(report.layout().id(), id -> new ArrayList<>());
    Misread misread = new Misread(decision, words);
    if (!known.contains(misread)) {
      known.add(misread);
    }
  }

  /** What was misread of this report's layout before it came: figures with their rows. */
  List<String> before(Received received) {
    Report report = received.report();
    if (report.layout().isNone() || corrected.contains(report.document())) {
      return List.of();
    }
    return byLayout.getOrDefault(report.layout().id(), List.of()).stream()
        .filter(m -> !received.readOn().isBefore(m.decision().date()))
        .map(m -> m.words() + ", corrected on " + m.decision().date())
        .distinct()
        .sorted()
        .toList();
  }
}
