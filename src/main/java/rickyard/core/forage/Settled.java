package rickyard.core.forage;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What a settlement found; every list is sorted, whatever the order of arrival.
 *
 * @param samples every sample of every document, sorted by key
 * @param reports every document once
 * @param questions open questions
 * @param inForce one entry for each lot of the register, each batch that a certificate names, and
 *     each provisional lot
 * @param reopened values that were replaced
 * @param answers what became of each answer of the office, by question
 * @param corrected what was corrected by a person, with what was read
 * @param layouts how the layout of every document stands to what is remembered
 * @param tests every test of a lot that counts or that another test of it disputes, by lot and key
 */
public record Settled(
    List<SettledSample> samples,
    List<SettledReport> reports,
    List<Question> questions,
    List<InForce> inForce,
    List<Reopened> reopened,
    List<AnswerUse> answers,
    List<Corrected> corrected,
    List<LayoutSeen> layouts,
    List<LotTest> tests) {

  public Settled {
    samples = List.copyOf(samples);
    reports = List.copyOf(reports);
    questions = List.copyOf(questions);
    inForce = List.copyOf(inForce);
    reopened = List.copyOf(reopened);
    answers = List.copyOf(answers);
    corrected = List.copyOf(corrected);
    layouts = List.copyOf(layouts);
    tests = List.copyOf(tests);
  }

  /** What counts for a lot (blank batch) or a batch of a feed. */
  public Optional<InForce> find(String subject, String batch) {
    return inForce.stream()
        .filter(i -> i.subject().equals(subject) && i.batch().equals(batch))
        .findFirst();
  }

  /** The samples that an entry rests on, in the order of their keys. */
  public List<SettledSample> samplesOf(InForce entry) {
    return entry.from().stream().sorted().map(this::find).flatMap(Optional::stream).toList();
  }

  private Optional<SettledSample> find(SampleKey key) {
    int low = 0;
    int high = samples.size() - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      int order = samples.get(middle).key().compareTo(key);
      if (order == 0) {
        return Optional.of(samples.get(middle));
      }
      low = order < 0 ? middle + 1 : low;
      high = order < 0 ? high : middle - 1;
    }
    return Optional.empty();
  }

  /** The documents with a figure that a person had to correct: their layout is to be reviewed. */
  public SortedSet<String> correctedDocuments() {
    SortedSet<String> documents = new TreeSet<>();
    corrected.forEach(c -> documents.add(c.key().document()));
    return documents;
  }
}
