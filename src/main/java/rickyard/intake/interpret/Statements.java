package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import rickyard.core.quantity.Unit;

/** What the page says in sentences: the basis of the results, the meaning of an open name. */
final class Statements {
  /**
   * A basis said for what follows, or for the whole report.
   *
   * @param at number of the line in the document from 0
   * @param basis af or dm
   * @param wide whether it is said of all results, not of a section
   * @param unit the unit said with it; empty if none
   * @param only the analytes that it is said of; empty for all
   * @param except the analytes that it is not said of
   */
  record OfBasis(
      int at,
      String basis,
      Optional<Unit> unit,
      boolean wide,
      Set<String> only,
      Set<String> except) {

    /** The same, but not of analytes of which something else is said. */
    OfBasis without(Set<String> others) {
      Set<String> all = new TreeSet<>(except);
      all.addAll(others);
      all.removeAll(only);
      return new OfBasis(at, basis, unit, wide, only, all);
    }
  }

  private final List<OfBasis> bases;
  private final Map<String, OfCode> byCode = new HashMap<>();
  private final UnitNote units;
  private final Set<String> definitions;
  private final int lastItem;

  private Statements(List<OfBasis> bases, UnitNote units, Set<String> definitions, int lastItem) {
    this.bases = bases;
    this.units = units;
    this.definitions = definitions;
    this.lastItem = lastItem;
  }

  static Statements in(Dictionary dictionary, List<Line> lines, IntPredicate isColumnMark) {
    List<OfBasis> bases = new ArrayList<>();
    Set<String> definitions = new TreeSet<>();
    Set<String> spoken = new TreeSet<>();
    List<UnitNote> units = new ArrayList<>();
    int lastItem = -1;
    for (int at = 0; at < lines.size(); at++) {
      Line line = lines.get(at);
      if (!isColumnMark.test(at)) {
        basis(dictionary, line, at).ifPresent(bases::add);
      }
      boolean item = line.isItem();
      if (line.mayDefine()) {
        definitions.addAll(
            dictionary.read(line.text(), EnumSet.of(Kind.DEFINITION)).all(Kind.DEFINITION));
        UnitNote.read(dictionary, line.text()).ifPresent(units::add);
      }
      if (!item && !line.isSilent()) {
        definitions.addAll(Definitions.in(dictionary, line.text()));
      }
      if (!item && !line.isSilent()) {
        spoken.addAll(Sentences.namedWithBasis(dictionary, line.text()));
      }
      lastItem = item ? at : lastItem;
    }
    bases.replaceAll(
        b -> Sentences.speaksOfTheRest(lines.get(b.at()).text()) ? b.without(spoken) : b);
    UnitNote note = units.stream().distinct().count() == 1 ? units.get(0) : UnitNote.none();
    return new Statements(bases, note, definitions, lastItem);
  }

  /** The basis that a line states, if it states one. */
  static Optional<OfBasis> basis(Dictionary dictionary, Line line, int at) {
    Optional<OfBasis> field = ofField(dictionary, line, at);
    if (field.isPresent() || line.isSilent() || line.isItem()) {
      return field;
    }
    Sentences sentences = new Sentences(dictionary);
    Optional<OfBasis> whole = sentences.basis(line.text(), at, line.pieces().size() == 1);
    if (whole.isPresent() || line.pieces().size() == 1) {
      return whole;
    }
    List<OfBasis> said =
        line.pieces().stream()
            .map(p -> sentences.basis(p.text(), at, false))
            .flatMap(Optional::stream)
            .filter(OfBasis::wide)
            .distinct()
            .toList();
    return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
  }

  private static Optional<OfBasis> ofField(Dictionary dictionary, Line line, int at) {
    List<Piece> pieces = line.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      Optional<FieldMark> field = pieces.get(i).field().filter(f -> f.field().equals("basis"));
      if (field.isPresent() && (field.get().marked() || (pieces.size() == 2 && i == 0))) {
        String value =
            field.get().value().isEmpty() && i + 1 < pieces.size()
                ? pieces.get(i + 1).text()
                : field.get().value();
        Optional<OfBasis> said = new Sentences(dictionary).ofMark(value, at);
        if (said.isPresent()) {
          return said;
        }
      }
    }
    return Optional.empty();
  }

  /**
   * What an open name stands for, by the report's own words; empty if it does not say, or says two
   * things.
   */
  Optional<String> definition(String open) {
    List<String> said =
        definitions.stream()
            .filter(d -> d.startsWith(open + "="))
            .map(d -> d.substring(open.length() + 1))
            .toList();
    return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
  }

  /**
   * What is said of one analyte, found once: a long table asks for it in each row.
   *
   * @param alone the basis said of it alone; empty if none or several
   * @param wide what is said of all results and does not except it, from top to bottom
   * @param distinct the bases of these
   * @param unit the unit that the page gives for it, or for all
   */
  private record OfCode(
      Optional<String> alone, List<OfBasis> wide, List<String> distinct, Optional<Unit> unit) {}

  private OfCode of(String code) {
    return byCode.computeIfAbsent(code, this::said);
  }

  private OfCode said(String code) {
    List<String> alone =
        bases.stream().filter(b -> b.only().contains(code)).map(OfBasis::basis).distinct().toList();
    List<OfBasis> wide =
        bases.stream()
            .filter(b -> b.wide() && b.only().isEmpty() && !b.except().contains(code))
            .toList();
    return new OfCode(
        alone.size() == 1 ? Optional.of(alone.get(0)) : Optional.empty(),
        wide,
        wide.stream().map(OfBasis::basis).distinct().toList(),
        units.unitOf(code).or(this::unitOfAll));
  }

  /** The basis said of this analyte alone. */
  Optional<String> ofAnalyte(String code) {
    return of(code).alone();
  }

  /**
   * The basis said of all results, for a figure in line {@code at}: the nearest statement above;
   * one below the last figure speaks for all. Empty where they contradict each other.
   */
  Optional<String> ofAll(String code, int at) {
    OfCode said = of(code);
    if (said.distinct().size() == 1) {
      return Optional.of(said.distinct().get(0));
    }
    List<OfBasis> wide = said.wide();
    if (wide.isEmpty() || wide.get(wide.size() - 1).at() > lastItem) {
      return Optional.empty();
    }
    int above = above(wide, at);
    return above == 0 ? Optional.empty() : Optional.of(wide.get(above - 1).basis());
  }

  /** How many of these stand above a line. */
  private static int above(List<OfBasis> said, int at) {
    int low = 0;
    int high = said.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (said.get(middle).at() < at) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The unit that the page gives for an analyte, or for all; empty if it gives none or several. */
  Optional<Unit> unitOf(String code) {
    return of(code).unit();
  }

  /** The basis that the page's note of units gives for an analyte. */
  Optional<String> basisInUnits(String code) {
    return units.basisOf(code);
  }

  private Optional<Unit> unitOfAll() {
    List<Unit> said =
        bases.stream()
            .filter(b -> b.wide() && b.only().isEmpty())
            .flatMap(b -> b.unit().stream())
            .distinct()
            .toList();
    return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
  }
}
