package rickyard.report.about;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.forage.Decision;
import rickyard.report.about.AboutCard.Line;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.HorseFacts;

/** What the cards have in common. */
final class AboutWords {
  private static final int MOST_DUE = 3;

  private final AboutFacts facts;

  AboutWords(AboutFacts facts) {
    this.facts = facts;
  }

  static void add(List<Line> lines, String label, String words) {
    String line = Plain.line(words);
    if (!line.isEmpty()) {
      lines.add(new Line(label, line));
    }
  }

  static boolean isFed(@Nullable DietSummary diet, String lot) {
    return diet != null && diet.portions().stream().anyMatch(p -> p.item().equals(lot));
  }

  static String figure(
      String quantity, String value, double limit, String unit, @Nullable Double pOver) {
    return ": "
        + Words.of("quantity", quantity)
        + " "
        + value
        + ", limit "
        + Shown.number(Double.valueOf(limit))
        + " "
        + Words.of("unit", unit)
        + (pOver == null ? "" : "; chance of being over " + Shown.chance(pOver));
  }

  Optional<Decision> told(String about) {
    return facts.decisions().stream()
        .filter(d -> d.kind().equals("told") && d.about().equals(about))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row));
  }

  static String words(Decision told) {
    String value = Words.of("verdict", told.value().strip());
    return told.date()
        + (value.isEmpty() ? "" : ": " + value)
        + (told.by().isBlank() ? "" : ", by " + told.by())
        + (told.why().isBlank() ? "" : " (" + told.why() + ")");
  }

  static String words(String first, String second) {
    return first.isBlank() || second.isBlank() ? first + second : first + ", " + second;
  }

  static @Nullable Double days(List<Hay> hay) {
    return hay.isEmpty()
        ? null
        : Double.valueOf((double) hay.stream().mapToLong(Hay::days).min().orElse(0));
  }

  void due(List<Line> lines, String about) {
    facts.followUps().stream()
        .filter(f -> f.about().equals(about) && !f.kind().equals("question"))
        .limit(MOST_DUE)
        .forEach(f -> add(lines, "due", due(f)));
  }

  static String due(FollowUpRow row) {
    return row.due() + " " + Words.of("followup", row.kind()) + ": " + row.why();
  }

  String name(String horse) {
    @Nullable HorseFacts known = facts.horses().get(horse);
    return known == null || known.name().isBlank() ? horse : known.name();
  }

  String client(String id) {
    @Nullable ClientFacts known = facts.clients().get(id);
    return known == null || known.name().isBlank() ? id : known.name();
  }

  String phone(String client) {
    @Nullable ClientFacts known = facts.clients().get(client);
    return known == null ? "" : known.phone();
  }
}
