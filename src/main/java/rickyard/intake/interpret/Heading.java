package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.quantity.Unit;

/**
 * What stands over a column.
 *
 * @param text the heading's cells from top to bottom
 * @param meaning what the dictionary makes of them
 * @param fields fields of the sample that the column belongs to, if the heading names them
 */
record Heading(String text, Meaning meaning, SortedMap<String, String> fields) {

  Heading {
    requireNonNull(text, "text");
    requireNonNull(meaning, "meaning");
    fields = Collections.unmodifiableSortedMap(new TreeMap<>(fields));
  }

  boolean isBlank() {
    return text.isEmpty();
  }

  /** A column that holds no result: ranges, ratings, means, limits of detection, dates, names. */
  boolean isForeign() {
    return meaning.has(Kind.ROLE, "foreign");
  }

  boolean isLimitOfDetection() {
    return meaning.has(Kind.ROLE, "lod");
  }

  /** A column of words: analyte, unit, basis, method, or a field of the head. */
  boolean isOfWords() {
    return meaning.has(Kind.ROLE, "analyte")
        || meaning.has(Kind.ROLE, "unit")
        || meaning.has(Kind.ROLE, "basis")
        || meaning.has(Kind.ROLE, "method")
        || meaning.has(Kind.ROLE, "date")
        || (meaning.has(Kind.FIELD) && fields.isEmpty() && !meaning.has(Kind.ROLE, "result"));
  }

  /** Whether the heading says that results stand below it. */
  boolean isResult() {
    boolean says =
        meaning.has(Kind.ROLE, "result")
            || basis().isPresent()
            || meaning.has(Kind.UNIT)
            || meaning.has(Kind.RATIO)
            || !fields.isEmpty();
    return says && meaning.unknown().isEmpty() && !isForeign() && !isLimitOfDetection();
  }

  Optional<String> basis() {
    return meaning.basis();
  }

  /** Whether both bases are named, so that it is no help. */
  boolean isTornBetweenBases() {
    return basis().isEmpty() && (meaning.has(Kind.BASIS) || meaning.has(Kind.STATEMENT));
  }

  Optional<Unit> unit() {
    return meaning.only(Kind.UNIT).flatMap(Unit::findByCode);
  }
}
