package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.core.quantity.Unit;

/**
 * A line that gives the units once for the page: 'Units: % of dry matter; Fe, Zn mg per kg dry
 * matter'. It counts only where every word of it is understood.
 *
 * @param unit for all analytes that it does not name; empty if it gives none
 * @param basis for all analytes that it does not name; empty if it gives none
 * @param units by analyte
 * @param bases by analyte
 */
record UnitNote(
    Optional<Unit> unit,
    Optional<String> basis,
    SortedMap<String, Unit> units,
    SortedMap<String, String> bases) {
  private static final Pattern LINE =
      Pattern.compile(
          "(?iu)^\\s*(?:units?|einheit(?:en)?|unités?|unidad(?:es)?|eenhe(?:id|den))\\s*[:=]\\s*(?<text>.+)$");
  private static final Set<Kind> GROUPS = EnumSet.of(Kind.GROUP, Kind.UNIT, Kind.FILLER);
  private static final Set<Kind> MARKS =
      EnumSet.of(Kind.UNIT, Kind.BASIS, Kind.STATEMENT, Kind.FILLER);
  private static final Set<Kind> WITH_NAMES =
      EnumSet.of(Kind.ANALYTE, Kind.UNIT, Kind.BASIS, Kind.STATEMENT, Kind.FILLER);

  UnitNote {
    requireNonNull(unit, "unit");
    requireNonNull(basis, "basis");
    units = Collections.unmodifiableSortedMap(new TreeMap<>(units));
    bases = Collections.unmodifiableSortedMap(new TreeMap<>(bases));
  }

  static UnitNote none() {
    return new UnitNote(Optional.empty(), Optional.empty(), new TreeMap<>(), new TreeMap<>());
  }

  /** The note in a line; empty if it is none, or not wholly understood. */
  static Optional<UnitNote> read(Dictionary dictionary, String line) {
    Matcher match = LINE.matcher(line);
    if (!match.matches()) {
      return ofGroups(dictionary, line);
    }
    Map<String, Unit> units = new TreeMap<>();
    Map<String, String> bases = new TreeMap<>();
    Optional<Meaning> all = Optional.empty();
    for (String part : match.group("text").split(";|\\.\\s", -1)) {
      Meaning bare = dictionary.read(part, MARKS);
      if (bare.isWhole() && bare.only(Kind.UNIT).isPresent() && all.isEmpty()) {
        all = Optional.of(bare);
      } else if (!part.isBlank() && !named(dictionary, part, units, bases)) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new UnitNote(
            all.flatMap(Section::unit),
            all.flatMap(Meaning::basis),
            new TreeMap<>(units),
            new TreeMap<>(bases)));
  }

  /** 'Trace elements in mg/kg, the rest in %': nothing else of a sentence matters. */
  private static Optional<UnitNote> ofGroups(Dictionary dictionary, String line) {
    Map<String, Unit> units = new TreeMap<>();
    Optional<Unit> rest = Optional.empty();
    for (String part : line.split("[;,]\\s|\\.\\s", -1)) {
      Meaning meaning = dictionary.read(part, GROUPS);
      Optional<Unit> unit = Section.unit(meaning);
      Optional<String> group = meaning.only(Kind.GROUP);
      if (unit.isPresent() && group.isPresent() && meaning.isWhole()) {
        if (group.get().equals("*")) {
          rest = unit;
        }
        for (String code : group.get().split(" ", -1)) {
          units.put(code, unit.get());
        }
      }
    }
    units.remove("*");
    return units.isEmpty() || rest.isEmpty()
        ? Optional.empty()
        : Optional.of(new UnitNote(rest, Optional.empty(), new TreeMap<>(units), new TreeMap<>()));
  }

  /** Takes 'Fe, Zn, Cu mg per kg dry matter'; whether it was understood. */
  private static boolean named(
      Dictionary dictionary, String part, Map<String, Unit> units, Map<String, String> bases) {
    List<Phrase> phrases = dictionary.read(part, WITH_NAMES).phrases();
    int names = 0;
    int length = 0;
    while (names < phrases.size()
        && (phrases.get(names).kind() == Kind.ANALYTE
            || phrases.get(names).kind() == Kind.FILLER)) {
      length += phrases.get(names).words().size();
      names++;
    }
    List<String> words = Words.of(part);
    Meaning rest =
        dictionary.read(words.subList(Math.min(length, words.size()), words.size()), MARKS);
    List<Phrase> heads = phrases.subList(0, names);
    boolean known =
        dictionary.read(part, WITH_NAMES).unknown().isEmpty()
            && rest.isWhole()
            && rest.only(Kind.UNIT).isPresent()
            && heads.stream().anyMatch(p -> p.kind() == Kind.ANALYTE);
    if (!known) {
      return false;
    }
    for (Phrase head : heads) {
      if (head.kind() == Kind.ANALYTE) {
        Section.unit(rest).ifPresent(u -> units.put(head.meaning(), u));
        rest.basis().ifPresent(b -> bases.put(head.meaning(), b));
      }
    }
    return true;
  }

  Optional<Unit> unitOf(String code) {
    return Optional.ofNullable(units.get(code)).or(() -> unit);
  }

  Optional<String> basisOf(String code) {
    return units.containsKey(code) ? Optional.ofNullable(bases.get(code)) : basis;
  }
}
