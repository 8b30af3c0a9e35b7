package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The samples of a report as they appear: a field that names another sample than the current one
 * begins a new sample; the same name again (a continued page) does not.
 *
 * <p>A season's export holds some hundred thousand samples, so they are found by their names.
 */
final class Samples {
  private static final Set<String> IDENTIFYING = Set.of("lot", "sample", "lab_no");
  private final List<SampleDraft> drafts = new ArrayList<>();
  private final Map<Map.Entry<String, String>, List<SampleDraft>> byName = new HashMap<>();
  private final Described described = new Described();
  private final SortedMap<String, String> common = new TreeMap<>();
  private SampleDraft current = new SampleDraft();

  SampleDraft current() {
    return listed(current);
  }

  private SampleDraft listed(SampleDraft draft) {
    if (draft.place() < 0) {
      draft.listAt(drafts.size());
      drafts.add(draft);
    }
    return draft;
  }

  private void note(SampleDraft draft, String field, String value) {
    if (draft.note(field, value) && (IDENTIFYING.contains(field) || field.equals("description"))) {
      byName.computeIfAbsent(Map.entry(field, value), k -> new ArrayList<>(1)).add(draft);
    }
  }

  /** Takes a field of the head that belongs to a sample. */
  void note(String field, String value) {
    String known = current.field(field);
    boolean named = IDENTIFYING.stream().anyMatch(f -> !current.field(f).isEmpty());
    boolean names = IDENTIFYING.contains(field) || (field.equals("description") && !named);
    if (names && !known.equals(value)) {
      if (!known.isEmpty() || !current.isEmpty()) {
        current = begin(field, value);
        return;
      }
    }
    if (drafts.isEmpty() && !IDENTIFYING.contains(field) && !field.equals("description")) {
      common.put(field, value);
    }
    note(current, field, value);
  }

  private SampleDraft begin(String field, String value) {
    Optional<SampleDraft> known = find(Map.of(field, value));
    if (known.isPresent()) {
      return known.get();
    }
    SampleDraft next = new SampleDraft();
    note(next, field, value);
    return next;
  }

  /** The first sample with all these names. */
  private Optional<SampleDraft> find(Map<String, String> names) {
    return names.entrySet().stream()
        .map(name -> byName.getOrDefault(Map.entry(name.getKey(), name.getValue()), List.of()))
        .min(Comparator.comparingInt(List::size))
        .flatMap(
            few ->
                few.stream()
                    .filter(d -> d.place() >= 0)
                    .filter(d -> d.fields().entrySet().containsAll(names.entrySet()))
                    .min(Comparator.comparingInt(SampleDraft::place)));
  }

  /**
   * The sample with these fields, from the columns of a table; the current one if none names it.
   */
  SampleDraft withFields(Map<String, String> fields) {
    SortedMap<String, String> names = new TreeMap<>(fields);
    names.keySet().retainAll(IDENTIFYING);
    if (names.isEmpty()) {
      fields.forEach((field, value) -> note(current(), field, value));
      return current();
    }
    SampleDraft draft = find(names).orElseGet(() -> added(names));
    fields.forEach((field, value) -> note(draft, field, value));
    return draft;
  }

  private SampleDraft added(Map<String, String> names) {
    return listed(current.isEmpty() && agrees(current, names) ? current : new SampleDraft());
  }

  private static boolean agrees(SampleDraft draft, Map<String, String> names) {
    return names.entrySet().stream()
        .allMatch(
            e -> draft.field(e.getKey()).isEmpty() || draft.field(e.getKey()).equals(e.getValue()));
  }

  /** Keeps a row of a list of samples, for the sample of the same name or number. */
  void describe(Map<String, String> fields) {
    described.add(fields);
  }

  /** The sample that the head of a report without figures names. */
  SampleDraft named() {
    common.forEach(current::note);
    return current;
  }

  /** The samples that hold at least one figure; fields of the head go to those that lack them. */
  List<SampleDraft> withFigures() {
    List<SampleDraft> full = drafts.stream().filter(d -> !d.isEmpty()).toList();
    full.forEach(described::complete);
    full.forEach(d -> common.forEach(d::note));
    return full;
  }
}
