package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import rickyard.core.quantity.Unit;

/**
 * What the last section heading says of the rows below it.
 *
 * @param basis af or dm; empty if it says neither
 * @param unit the unit of its figures; empty if it says none
 * @param foreign whether the rows are not results of the sample: typical values, requirements
 */
record Section(Optional<String> basis, Optional<Unit> unit, boolean foreign) {
  private static final int LONGEST = 7;
  private static final Set<Kind> KINDS =
      EnumSet.of(
          Kind.ROLE, Kind.BASIS, Kind.STATEMENT, Kind.SUBJECT, Kind.UNIT, Kind.METHOD, Kind.FILLER);

  Section {
    requireNonNull(basis, "basis");
    requireNonNull(unit, "unit");
  }

  static Section none() {
    return new Section(Optional.empty(), Optional.empty(), false);
  }

  /** Rows that are no results of their own: the same sample once more, for comparison. */
  static Section aside() {
    return new Section(Optional.empty(), Optional.empty(), true);
  }

  /** The section under a line that states a basis, perhaps with a unit. */
  static Section stating(String basis, Meaning meaning) {
    return new Section(Optional.of(basis), unit(meaning), false);
  }

  static Optional<Unit> unit(Meaning meaning) {
    return meaning.only(Kind.UNIT).flatMap(Unit::findByCode);
  }

  /** Words too common to open a section of ranges or requirements by themselves. */
  private static final Set<String> WEAK =
      Set.of("to", "from", "n", "u", "low", "high", "error", "change", "note", "notes", "flag");

  private static boolean isForeign(Meaning meaning, String text) {
    boolean field = text.matches("(?s)[^:]+:\\s*\\S.*");
    return !field
        && meaning.phrases().stream()
            .filter(p -> p.kind() == Kind.ROLE && p.meaning().equals("foreign"))
            .anyMatch(p -> !WEAK.contains(String.join(" ", p.words())));
  }

  /** 'On dry matter: feed value': what stands before the colon is the basis of the section. */
  private static Optional<String> headed(Dictionary dictionary, String text) {
    int colon = text.indexOf(':');
    if (colon <= 0) {
      return Optional.empty();
    }
    Meaning head = dictionary.read(text.substring(0, colon), Dictionary.IN_MARK);
    Meaning rest = dictionary.read(text.substring(colon + 1), EnumSet.of(Kind.HEDGE, Kind.NOT));
    return head.isWhole() && rest.phrases().isEmpty() ? head.basis() : Optional.empty();
  }

  /** The section after a line that is no row, no heading of columns and no field. */
  Section after(Dictionary dictionary, Line line) {
    if (line.pieces().size() != 1) {
      return this;
    }
    Meaning meaning = dictionary.read(line.text(), KINDS);
    if (meaning.words().size() > LONGEST) {
      return this;
    }
    if (isForeign(meaning, line.text())) {
      return new Section(Optional.empty(), Optional.empty(), true);
    }
    Optional<String> headed = headed(dictionary, line.text());
    if (headed.isPresent()) {
      return new Section(headed, Optional.empty(), false);
    }
    boolean known = meaning.isWhole();
    if (foreign && !known) {
      return this;
    }
    boolean blankRow = line.pieces().get(0).isLabel() && basis.isEmpty();
    return known && !blankRow ? new Section(meaning.basis(), unit(meaning), false) : none();
  }
}
