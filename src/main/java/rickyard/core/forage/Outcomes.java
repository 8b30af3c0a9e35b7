package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The outcome of each document, and the values that were replaced. */
final class Outcomes {
  private Outcomes() {}

  static List<SettledReport> of(List<Held> all) {
    SortedMap<String, List<Held>> byDocument = new TreeMap<>();
    all.forEach(h -> byDocument.computeIfAbsent(h.key.document(), d -> new ArrayList<>()).add(h));
    List<SettledReport> reports = new ArrayList<>();
    for (Map.Entry<String, List<Held>> entry : byDocument.entrySet()) {
      reports.add(outcome(entry.getKey(), entry.getValue()));
    }
    return reports;
  }

  private static SettledReport outcome(String document, List<Held> samples) {
    Held first = samples.stream().min(Comparator.comparingInt(Outcomes::rank)).orElseThrow();
    String outcome =
        switch (rank(first)) {
          case 0 -> "question";
          case 1 -> "accepted";
          case 2 -> "superseded";
          default -> "duplicate";
        };
    boolean openOnly = outcome.equals("question") && first.reasonCode.equals("in-force");
    return new SettledReport(
        document,
        outcome,
        openOnly ? "open-doubt" : first.reasonCode,
        openOnly ? "some figures wait for an answer" : first.reason);
  }

  /** A question of any sample decides, then a sample that counts, then a replaced one. */
  private static int rank(Held held) {
    boolean counts =
        held.standing == Standing.IN_FORCE
            || held.reasonCode.equals("combined")
            || held.reasonCode.equals("left-out")
            || held.reasonCode.equals(Doubtful.SET_APART)
            || held.reasonCode.equals("withdrawal");
    if (held.standing == Standing.QUESTION
        || held.reasonCode.equals(LotTwice.KIND)
        || held.reasonCode.equals("tests-disagree")
        || (counts && !held.open.isEmpty() && !held.reasonCode.equals("left-out"))) {
      return 0;
    }
    return counts ? 1 : held.standing == Standing.SUPERSEDED ? 2 : 3;
  }

  /** The lots whose value was replaced, withdrawn or put in dispute. */
  static List<Reopened> reopened(List<Held> all, List<Decision> decisions) {
    Map<String, Held> byDocument = new TreeMap<>();
    all.forEach(h -> byDocument.putIfAbsent(h.key.document(), h));
    List<Reopened> reopened = new ArrayList<>();
    for (Held held : all) {
      boolean replaced =
          held.reasonCode.equals("newer-revision") || held.reasonCode.equals("withdrawn");
      Held by = byDocument.get(held.replacedBy);
      if (replaced && by != null) {
        String subject = held.subject.isEmpty() ? held.sample.label().strip() : held.subject;
        reopened.add(
            new Reopened(
                subject,
                held.batch,
                held.key,
                by.key.document(),
                held.reasonCode,
                rows(subject, by, decisions)));
      }
    }
    reopened.sort(Comparator.comparing(Reopened::subject).thenComparing(Reopened::replaced));
    return reopened;
  }

  private static List<Integer> rows(String subject, Held by, List<Decision> decisions) {
    return decisions.stream()
        .filter(d -> d.about().strip().equals(subject))
        .filter(d -> d.date().isBefore(by.received.readOn()))
        .map(Decision::row)
        .sorted()
        .toList();
  }
}
