package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A sample while it is being read: its fields as printed and its figures in the order of the page.
 */
final class SampleDraft {
  private static final int UNLISTED = -1;
  private final SortedMap<String, String> fields = new TreeMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private int place = UNLISTED;

  /** Its place in the list of samples from 0; below 0 while it is in none. */
  int place() {
    return place;
  }

  void listAt(int newPlace) {
    place = newPlace;
  }

  SortedMap<String, String> fields() {
    return Collections.unmodifiableSortedMap(fields);
  }

  String field(String name) {
    return fields.getOrDefault(name, "");
  }

  /** Keeps the first value given for a field; whether this one was the first. */
  boolean note(String field, String value) {
    if (field.equals(SampleWriter.STANDING)) {
      // Rows of one sample may differ: the gravest counts, so all are kept.
      fields.merge(field, value, (all, one) -> all.contains(one) ? all : all + "; " + one);
      return false;
    }
    return fields.putIfAbsent(field, value) == null;
  }

  boolean isNameless() {
    return field("lot").isEmpty() && field("sample").isEmpty();
  }

  void add(Finding finding) {
    findings.add(finding);
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  boolean isEmpty() {
    return findings.isEmpty();
  }
}
