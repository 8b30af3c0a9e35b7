package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What became of the reports of a lot that has none in force. */
final class WhyNone {
  private final Map<String, Set<Held>> concerned = new HashMap<>();

  private WhyNone() {}

  /** Everything that belongs to a lot, or may belong to it by the choices of an open question. */
  static WhyNone of(List<Held> all) {
    WhyNone why = new WhyNone();
    for (Held held : all) {
      if (!held.subject.isEmpty()) {
        why.note(held.subject, held);
      }
      if (held.standing == Standing.QUESTION) {
        held.open.forEach(q -> q.choices().forEach(choice -> why.note(choice, held)));
      }
    }
    return why;
  }

  private void note(String subject, Held held) {
    concerned.computeIfAbsent(subject, s -> new LinkedHashSet<>(1)).add(held);
  }

  /** In plain words. */
  String of(String subject) {
    List<Held> held = new ArrayList<>(concerned.getOrDefault(subject, Set.of()));
    return held.stream()
        .sorted(Comparator.comparing((Held h) -> h.standing).thenComparing(h -> h.key))
        .map(h -> h.reason)
        .filter(r -> !r.isEmpty())
        .reduce((a, b) -> b.contains("withdrew") || a.contains(b) ? a : a + "; " + b)
        .orElse("no report of it was read");
  }
}
