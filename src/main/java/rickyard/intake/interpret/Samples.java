package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The samples of a report as they appear: a field that names another sample than the current one
 * begins a new sample; the same name again (a continued page) does not.
 */
final class Samples {
  private static final Set<String> IDENTIFYING = Set.of("lot", "sample", "lab_no");
  private final List<SampleDraft> drafts = new ArrayList<>();
  private final List<SortedMap<String, String>> described = new ArrayList<>();
  private final SortedMap<String, String> common = new TreeMap<>();
  private SampleDraft current = new SampleDraft();

  SampleDraft current() {
    if (!drafts.contains(current)) {
      drafts.add(current);
    }
    return current;
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
    current.note(field, value);
  }

  private SampleDraft begin(String field, String value) {
    for (SampleDraft draft : drafts) {
      if (draft.field(field).equals(value)) {
        return draft;
      }
    }
    SampleDraft next = new SampleDraft();
    next.note(field, value);
    return next;
  }

  /**
   * The sample with these fields, from the columns of a table; the current one if none names it.
   */
  SampleDraft withFields(Map<String, String> fields) {
    SortedMap<String, String> names = new TreeMap<>(fields);
    names.keySet().retainAll(IDENTIFYING);
    if (names.isEmpty()) {
      fields.forEach(current()::note);
      return current();
    }
    SampleDraft draft =
        drafts.stream()
            .filter(d -> d.fields().entrySet().containsAll(names.entrySet()))
            .findFirst()
            .orElseGet(
                () -> {
                  SampleDraft made =
                      current.isEmpty() && agrees(current, names) ? current : new SampleDraft();
                  if (!drafts.contains(made)) {
                    drafts.add(made);
                  }
                  return made;
                });
    fields.forEach(draft::note);
    return draft;
  }

  private static boolean agrees(SampleDraft draft, Map<String, String> names) {
    return names.entrySet().stream()
        .allMatch(
            e -> draft.field(e.getKey()).isEmpty() || draft.field(e.getKey()).equals(e.getValue()));
  }

  /** Keeps a row of a list of samples, for the sample of the same name or number. */
  void describe(Map<String, String> fields) {
    described.add(new TreeMap<>(fields));
  }

  private void complete(SampleDraft draft) {
    List<SortedMap<String, String>> same =
        described.stream()
            .filter(row -> IDENTIFYING.stream().anyMatch(f -> isSame(row, draft, f)))
            .toList();
    if (same.size() == 1) {
      same.get(0).forEach(draft::note);
    }
  }

  private static boolean isSame(Map<String, String> row, SampleDraft draft, String field) {
    String value = draft.field(field);
    boolean same = field.equals("lot") ? value.equals(row.get("lot")) : false;
    return !value.isEmpty()
        && (same || value.equals(row.get("sample")) || value.equals(row.get("lab_no")));
  }

  /** The sample that the head of a report without figures names. */
  SampleDraft named() {
    common.forEach(current::note);
    return current;
  }

  /** The samples that hold at least one figure; fields of the head go to those that lack them. */
  List<SampleDraft> withFigures() {
    List<SampleDraft> full = drafts.stream().filter(d -> !d.isEmpty()).toList();
    full.forEach(this::complete);
    full.forEach(d -> common.forEach(d::note));
    return full;
  }
}
