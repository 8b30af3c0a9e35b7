package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Finds which lot or batch a sample belongs to: an exact match, an answer, or a question.
 *
 * <p>Case, spaces, O for 0, I for 1, an added word or one wrong character make a near miss, which
 * is never taken by itself.
 */
final class Belonging {
  static final String NEW_LOT = "new lot";
  private static final int MOST_PROPOSALS = 5;

  private final Map<String, Lot> lots = new TreeMap<>();
  private final NearLabels near;
  private final List<BagBatch> batches;
  private final AnswerBook answers;

  Belonging(List<Lot> lots, List<BagBatch> batches, AnswerBook answers) {
    lots.forEach(l -> this.lots.put(l.id(), l));
    this.near = new NearLabels(this.lots.keySet());
    this.batches = batches;
    this.answers = answers;
  }

  Optional<Lot> findLot(String id) {
    return Optional.ofNullable(lots.get(id));
  }

  /** Whether the label alone names a lot or a batch that a register knows. */
  boolean isCertain(Held held) {
    String label = held.sample.label().strip();
    boolean found = isExact(held, label);
    held.subject = "";
    held.batch = "";
    return found;
  }

  /** Sets subject and batch of a sample that stands, or lets it wait with a question. */
  void settle(Held held) {
    String label = held.sample.label().strip();
    if (!isAnswered(held) && isExact(held, label)) {
      return;
    }
    Question question = question(held, label);
    Optional<Taken> taken = answers.take(question);
    if (taken.filter(t -> isSettled(held, t, label)).isPresent() || isExact(held, label)) {
      return;
    }
    held.open.add(answers.open(question));
    if (question.kind().equals("lot-unknown")) {
      held.subject = label;
      held.provisional = true;
    } else {
      held.stand(Standing.QUESTION, question.kind(), reason(question.kind()));
    }
  }

  /** Sets subject and batch where they are certain, and asks nothing. */
  void find(Held held) {
    String label = held.sample.label().strip();
    Optional<Taken> said =
        isAnswered(held) ? answers.take(question(held, label)) : Optional.empty();
    if (said.filter(t -> lots.containsKey(t.said())).isPresent()) {
      held.subject = said.get().said();
    } else {
      isExact(held, label);
    }
  }

  /** Whether somebody answered the question; what it would ask is only then worth working out. */
  private boolean isAnswered(Held held) {
    return answers.find(id(held)).isPresent();
  }

  private static String id(Held held) {
    return QuestionId.of("belongs", held.key.document(), Integer.toString(held.key.index()));
  }

  private boolean isExact(Held held, String label) {
    if (!held.sample.batch().isBlank()) {
      return batch(held, label, held.sample.batch().strip());
    }
    if (lots.containsKey(label)) {
      held.subject = label;
      return true;
    }
    return batch(held, label, "");
  }

  private boolean isSettled(Held held, Taken taken, String label) {
    String said = taken.said();
    if (taken.is(Choices.LEAVE_OUT)) {
      held.leaveOut(taken);
      return true;
    }
    boolean own = said.equals(NEW_LOT) && !label.isEmpty();
    if (own || lots.containsKey(said)) {
      held.subject = own ? label : said;
      held.batch = "";
      held.provisional = !lots.containsKey(held.subject);
      held.note = "belongs to it by answer " + taken.words();
      return true;
    }
    for (BagBatch batch : batches) {
      if (said.equals(name(batch))) {
        held.subject = batch.feed();
        held.batch = batch.batch();
        held.note = "belongs to it by answer " + taken.words();
        return true;
      }
    }
    return false;
  }

  private static String name(BagBatch batch) {
    return batch.batch().isEmpty() ? batch.feed() : batch.feed() + " / " + batch.batch();
  }

  private boolean batch(Held held, String label, String number) {
    for (BagBatch batch : batches) {
      boolean feed = batch.feed().equals(label) || batch.name().equals(label);
      boolean product = label.isEmpty() && !number.isEmpty() && isProduct(held, batch);
      boolean apart = ((feed && !label.isEmpty()) || product) && batch.batch().equals(number);
      boolean together = number.isEmpty() ? isBoth(label, batch) : isBoth(number, batch);
      if (apart || together) {
        held.subject = batch.feed();
        held.batch = batch.batch();
        return true;
      }
    }
    return false;
  }

  /** 'Product: NAME, 20 kg bag': the certificate names the feed as its product. */
  private static boolean isProduct(Held held, BagBatch batch) {
    String product = held.sample.material().strip();
    return !batch.name().isEmpty()
        && (product.equals(batch.name())
            || product.startsWith(batch.name() + ",")
            || product.startsWith(batch.name() + " ("));
  }

  /** 'FEED BATCH' in one field, with a space, a slash or a comma between. */
  private static boolean isBoth(String text, BagBatch batch) {
    if (batch.batch().isEmpty() || !text.endsWith(batch.batch())) {
      return false;
    }
    String head = text.substring(0, text.length() - batch.batch().length());
    String feed = head.replaceFirst("[\\s,/:-]+(?i:batch)?[\\s,/:.-]*$", "");
    return feed.length() < head.length()
        && (feed.equals(batch.feed()) || feed.equals(batch.name()));
  }

  private Question question(Held held, String label) {
    List<String> near = proposals(label, held.sample.batch().strip());
    boolean bag = !held.sample.batch().isBlank();
    String kind =
        label.isEmpty()
            ? "lot-missing"
            : !near.isEmpty() ? "lot-near" : bag ? "batch-unknown" : "lot-unknown";
    List<String> choices = new ArrayList<>(near);
    if (!label.isEmpty() && !bag) {
      choices.add(NEW_LOT);
    }
    choices.add(Choices.LOT);
    choices.add(Choices.LEAVE_OUT);
    return new Question(
        id(held),
        kind,
        held.key.document(),
        Optional.empty(),
        label.isEmpty() ? "lot" : label,
        "To which "
            + (bag ? "feed and batch" : "lot")
            + " does "
            + named(held, label, bag)
            + " belong?",
        choices,
        nearest(label, near),
        reason(kind));
  }

  private static String reason(String kind) {
    return switch (kind) {
      case "lot-missing" -> "The report names no lot.";
      case "lot-near" -> "The label is close to a known one, but not the same.";
      case "batch-unknown" -> "No feed of the register has this batch.";
      default -> "No register knows it; it is kept as a lot of its own until then.";
    };
  }

  /** The sample in words a person finds on the page: its label, its number, or its report. */
  private static String named(Held held, String label, boolean bag) {
    String labNo = held.sample.labNo().strip();
    String report = held.report.reportNo().strip();
    String lab = held.report.lab().strip();
    if (!label.isEmpty()) {
      return "sample \"" + label + (bag ? " / " + held.sample.batch() : "") + "\"";
    }
    if (!labNo.isEmpty()) {
      return "the laboratory's sample \"" + labNo + "\"";
    }
    String which =
        held.report.samples().size() > 1 ? "sample " + (held.key.index() + 1) + " of " : "";
    String of = lab.isEmpty() ? "" : " of " + lab;
    return which + (report.isEmpty() ? "the report" : "report \"" + report + "\"") + of;
  }

  /** The one label that is nearer than all others; empty if there is none. */
  private static String nearest(String label, List<String> near) {
    if (near.size() < 2) {
      return near.isEmpty() ? "" : near.get(0);
    }
    int first = NearLabels.near(label, near.get(0)).orElse(Integer.MAX_VALUE);
    int second = NearLabels.near(label, near.get(1)).orElse(Integer.MAX_VALUE);
    return first < second ? near.get(0) : "";
  }

  private List<String> proposals(String label, String number) {
    if (label.isEmpty()) {
      return List.of();
    }
    Map<String, Integer> distances = new TreeMap<>();
    near.among(label).forEach(l -> NearLabels.near(label, l).ifPresent(d -> distances.put(l, d)));
    for (BagBatch batch : batches) {
      Optional<Integer> feed = NearLabels.nearOrSame(label, batch.feed());
      Optional<Integer> name = NearLabels.nearOrSame(label, batch.name());
      Optional<Integer> best = feed.isPresent() ? feed : name;
      boolean sameBatch = NearLabels.nearOrSame(number, batch.batch()).isPresent();
      if (best.isPresent() && (sameBatch || number.isEmpty())) {
        distances.put(name(batch), best.get());
      }
    }
    return distances.entrySet().stream()
        .sorted(
            Comparator.<Map.Entry<String, Integer>>comparingInt(Map.Entry::getValue)
                .thenComparing(Map.Entry::getKey))
        .limit(MOST_PROPOSALS)
        .map(Map.Entry::getKey)
        .toList();
  }
}
