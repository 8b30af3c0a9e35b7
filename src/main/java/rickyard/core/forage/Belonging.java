package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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
  private final List<BagBatch> batches;
  private final AnswerBook answers;

  Belonging(List<Lot> lots, List<BagBatch> batches, AnswerBook answers) {
    lots.forEach(l -> this.lots.put(l.id(), l));
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
    Question question = question(held, label);
    Optional<Taken> taken = answers.take(question);
    if (taken.filter(t -> isSettled(held, t, label)).isPresent()) {
      return;
    }
    if (isExact(held, label)) {
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
    Optional<Taken> said = answers.take(question(held, label));
    if (said.filter(t -> lots.containsKey(t.said())).isPresent()) {
      held.subject = said.get().said();
    } else {
      isExact(held, label);
    }
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
        QuestionId.of("belongs", held.key.document(), held.key.index() + ""),
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
    int first = near(label, near.get(0)).orElse(Integer.MAX_VALUE);
    int second = near(label, near.get(1)).orElse(Integer.MAX_VALUE);
    return first < second ? near.get(0) : "";
  }

  private List<String> proposals(String label, String number) {
    if (label.isEmpty()) {
      return List.of();
    }
    Map<String, Integer> distances = new TreeMap<>();
    lots.keySet().forEach(l -> near(label, l).ifPresent(d -> distances.put(l, d)));
    for (BagBatch batch : batches) {
      Optional<Integer> feed = nearOrSame(label, batch.feed());
      Optional<Integer> name = nearOrSame(label, batch.name());
      Optional<Integer> best = feed.isPresent() ? feed : name;
      boolean sameBatch = nearOrSame(number, batch.batch()).isPresent();
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

  private static Optional<Integer> nearOrSame(String a, String b) {
    return a.equals(b) ? Optional.of(0) : near(a, b);
  }

  /** How near two labels are: 1 the same but for spelling, 2 one holds the other, 3 one slip. */
  static Optional<Integer> near(String label, String id) {
    String a = plain(label);
    String b = plain(id);
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    if (a.equals(b)) {
      return Optional.of(1);
    }
    if (sortedParts(label).equals(sortedParts(id))
        || holds(label, id)
        || a.startsWith(b)
        || b.startsWith(a)) {
      return Optional.of(2);
    }
    boolean longEnough = Math.min(a.length(), b.length()) >= 3;
    return longEnough && isOneSlip(a, b) ? Optional.of(3) : Optional.empty();
  }

  private static String plain(String text) {
    return text.toUpperCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]", "")
        .replace('O', '0')
        .replace('I', '1')
        .replace('L', '1')
        .replace('S', '5')
        .replace('B', '8')
        .replace('Z', '2');
  }

  /** Letters and digits in any order: 2N and N2 are near. */
  private static List<String> sortedParts(String text) {
    String spaced =
        text.toUpperCase(Locale.ROOT)
            .replaceAll("(?<=[0-9])(?=[A-Z])|(?<=[A-Z])(?=[0-9])", " ")
            .replaceAll("[^\\p{L}\\p{N}]+", " ")
            .strip();
    return java.util.Arrays.stream(spaced.split(" ", -1)).sorted().toList();
  }

  /** Whether the words of one stand among the words of the other. */
  private static boolean holds(String label, String id) {
    List<String> words = List.of(label.toUpperCase(Locale.ROOT).strip().split("[\\s,;:()]+", -1));
    return words.contains(id.toUpperCase(Locale.ROOT).strip());
  }

  /** One character more, less or other, or two neighbours exchanged. */
  private static boolean isOneSlip(String a, String b) {
    int i = 0;
    while (i < Math.min(a.length(), b.length()) && a.charAt(i) == b.charAt(i)) {
      i++;
    }
    String restA = a.substring(i);
    String restB = b.substring(i);
    if (restA.isEmpty() || restB.isEmpty()) {
      return restA.length() + restB.length() <= 1;
    }
    boolean exchanged =
        restA.length() > 1
            && restB.length() > 1
            && restA.charAt(0) == restB.charAt(1)
            && restA.charAt(1) == restB.charAt(0)
            && restA.substring(2).equals(restB.substring(2));
    return exchanged
        || restA.substring(1).equals(restB.substring(1))
        || restA.substring(1).equals(restB)
        || restB.substring(1).equals(restA);
  }
}
