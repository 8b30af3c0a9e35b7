package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.Remembered;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;
import rickyard.intake.interpret.Figure.Form;
import rickyard.intake.interpret.Finding.Said;

/** Reads one row of a table in which each row (or each part of a row) is one analyte. */
final class RowReader {
  /** Columns that repeat a field of the whole report. */
  private static final Set<String> OF_REPORT =
      Set.of("report_no", "revision", "replaces", "reported", "received", "lab", "status");

  private final String document;
  private final Statements statements;
  private final Methods methods;
  private final Samples samples;
  private final Front front;
  private final Remembered<List<Said<Unit>>, List<Said<Unit>>> sameUnits = Remembered.same();
  private final Remembered<List<Said<String>>, List<Said<String>>> sameBases = Remembered.same();

  RowReader(String document, Statements statements, Methods methods, Samples samples, Front front) {
    this.front = front;
    this.document = document;
    this.statements = statements;
    this.methods = methods;
    this.samples = samples;
  }

  /** An analyte of the row with the pieces that belong to it, and the heading over each. */
  private record Item(
      Line line, Label label, Heading over, List<Piece> pieces, List<Heading> headings) {}

  /** Takes the figures of a row. */
  void read(Line line, int at, Header header, Section section) {
    if (section.foreign()) {
      return;
    }
    SortedMap<String, String> fields = new TreeMap<>();
    for (Item item : items(line, header, fields)) {
      take(item, at, header, section, fields);
    }
  }

  private List<Item> items(Line line, Header header, Map<String, String> fields) {
    List<Item> items = new ArrayList<>();
    Optional<Item> open = Optional.empty();
    List<Piece> before = new ArrayList<>();
    List<Piece> pieces = line.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      Heading heading = over(header, pieces, i);
      Optional<Piece> next =
          i + 1 < pieces.size() ? Optional.of(pieces.get(i + 1)) : Optional.empty();
      if (startsItem(piece, next, heading, open)) {
        open =
            Optional.of(
                new Item(line, piece.label().get(), heading, new ArrayList<>(), new ArrayList<>()));
        items.add(open.get());
        before.forEach(items.get(0).pieces()::add);
        before.forEach(b -> items.get(0).headings().add(header.over(b.cell())));
        before.clear();
      } else if (open.isPresent() && !sampleField(heading, piece, fields)) {
        open.get().pieces().add(piece);
        open.get().headings().add(heading);
      } else if (open.isEmpty() && !sampleField(heading, piece, fields) && isUnit(piece)) {
        before.add(piece);
      }
    }
    return items;
  }

  /**
   * The heading of a cell. '87.5 %' may reach from under 'Result' to under 'Unit': it is the
   * result, where nothing else stands under that.
   */
  private static Heading over(Header header, List<Piece> pieces, int i) {
    Piece piece = pieces.get(i);
    Heading heading =
        header.isByColumn()
            ? header.over(piece.cell())
            : header.over(piece.resultCell(), others(pieces, i));
    boolean unitUnderUnit = piece.tail().has(Kind.UNIT) && heading.meaning().has(Kind.ROLE, "unit");
    return unitUnderUnit && piece.isFigure()
        ? header.freeResultBeside(piece.cell(), others(pieces, i)).orElse(heading)
        : heading;
  }

  private static List<Piece> others(List<Piece> pieces, int i) {
    List<Piece> others = new ArrayList<>(pieces);
    others.remove(i);
    return others;
  }

  /** 'g/kg | Crude protein | 94': the unit may stand before the name. */
  private static boolean isUnit(Piece piece) {
    return piece.isMark() && piece.mark().has(Kind.UNIT) && !piece.isFigure();
  }

  /** A column such as 'Lot' in a table with a row for each sample and analyte. */
  private boolean sampleField(Heading heading, Piece piece, Map<String, String> fields) {
    Optional<String> field = heading.meaning().only(Kind.FIELD);
    boolean names =
        field.isPresent()
            && Header.OF_SAMPLE.contains(field.get())
            && heading.meaning().unknown().isEmpty()
            && !heading.meaning().has(Kind.ROLE, "result")
            && !heading.meaning().has(Kind.ROLE, "analyte")
            && heading.basis().isEmpty();
    boolean ofReport = field.isPresent() && OF_REPORT.contains(field.get());
    if (names) {
      fields.put(field.get(), piece.text());
    } else if (field.filter("status"::equals).isPresent() && heading.meaning().isWhole()) {
      fields.put(SampleWriter.STANDING, piece.text());
      return true;
    } else if (ofReport && heading.meaning().isWhole() && heading.basis().isEmpty()) {
      front.column(field.get(), piece.text());
      return true;
    }
    return names;
  }

  private static boolean startsItem(
      Piece piece, Optional<Piece> next, Heading heading, Optional<Item> open) {
    if (!piece.isLabel() || isWordColumn(heading) || heading.isForeign()) {
      return false;
    }
    if (open.isEmpty()) {
      return true;
    }
    boolean hasFigure = open.get().pieces().stream().anyMatch(Piece::isFigure);
    boolean sameAnalyte = open.get().label().code().equals(piece.label().get().code());
    boolean figureNext = next.filter(Piece::isFigure).isPresent();
    if (piece.isFigure() || piece.isMark()) {
      // 'g/kg DM' is a unit, 'DE, horse, Mcal/lb' a name with one.
      boolean dryMatter = piece.label().get().code().equals("DM");
      boolean unit = piece.mark().has(Kind.UNIT) && (piece.isFigure() || dryMatter);
      return hasFigure && figureNext && !unit;
    }
    return hasFigure || !sameAnalyte;
  }

  private static boolean isWordColumn(Heading heading) {
    return heading.meaning().has(Kind.ROLE, "unit")
        || heading.meaning().has(Kind.ROLE, "basis")
        || heading.meaning().has(Kind.ROLE, "method")
        || heading.isLimitOfDetection();
  }

  private void take(Item item, int at, Header header, Section section, Map<String, String> fields) {
    List<Integer> results = new ArrayList<>();
    List<Integer> unclear = new ArrayList<>();
    Optional<Figure> limit = Optional.empty();
    for (int i = 0; i < item.pieces().size(); i++) {
      Piece piece = item.pieces().get(i);
      Heading heading = item.headings().get(i);
      boolean taken = heading.isResult() ? piece.result().isPresent() : piece.isFigure();
      if (!taken || heading.isForeign()) {
        continue;
      }
      if (heading.isLimitOfDetection()) {
        limit = piece.figure();
      } else if (heading.isResult()) {
        results.add(i);
      } else if (!heading.isOfWords()) {
        unclear.add(i);
      }
    }
    String trouble = trouble(item, header, results, unclear);
    for (int i : results.isEmpty() ? unclear : results) {
      emit(item, i, at, section, fields, limit, trouble);
    }
  }

  /** What is wrong with the columns of the figures that no heading vouches for. */
  private static String trouble(
      Item item, Header header, List<Integer> results, List<Integer> unclear) {
    if (!results.isEmpty() || unclear.isEmpty()) {
      return "";
    }
    boolean blank = unclear.stream().allMatch(i -> item.headings().get(i).isBlank());
    boolean water = Settled.isWater(item.label().rule().analyte().code());
    boolean stated = speaksOfRows(item.over()) && item.over().basis().isPresent();
    if (blank && unclear.size() == 1 && (water || stated || !header.hasResults())) {
      return "";
    }
    return blank ? "column-not-known" : "column-not-understood";
  }

  private void emit(
      Item item,
      int i,
      int at,
      Section section,
      Map<String, String> rowFields,
      Optional<Figure> limit,
      String trouble) {
    Piece piece = item.pieces().get(i);
    Heading heading = item.headings().get(i);
    Figure figure = piece.result().orElseThrow();
    if (figure.form() == Form.ABSENT) {
      return;
    }
    SortedMap<String, String> fields = new TreeMap<>(rowFields);
    fields.putAll(heading.fields());
    List<Said<Unit>> units = new ArrayList<>();
    List<Said<String>> bases = new ArrayList<>();
    say(units, piece.tail().only(Kind.UNIT).flatMap(Unit::findByCode), 0);
    say(bases, piece.tail().basis(), 0);
    say(units, heading.unit(), 1);
    say(bases, heading.basis(), 1);
    sayRow(item, units, bases);
    say(units, section.unit(), 3);
    say(bases, section.basis(), 3);
    sayPage(item.label().code(), at, units, bases);
    boolean ratio =
        item.label().ratio()
            || piece.tail().has(Kind.RATIO)
            || heading.meaning().has(Kind.RATIO)
            || item.pieces().stream().anyMatch(p -> p.isMark() && p.mark().has(Kind.RATIO));
    String column =
        heading.text().isEmpty() ? String.valueOf(piece.cell().column()) : heading.text();
    samples
        .withFields(fields)
        .add(
            new Finding(
                item.label().with(ratio),
                figure,
                piece.text(),
                new Place(document, item.line().page(), item.line().row(), column),
                sameUnits(units),
                sameBases(bases),
                rawUnit(item, piece, heading),
                method(item, piece, heading),
                limit,
                trouble(piece, heading, trouble)));
  }

  private static String trouble(Piece piece, Heading heading, String ofColumn) {
    if (!piece.trouble().isEmpty()) {
      return piece.trouble();
    }
    return heading.isTornBetweenBases() ? "column-not-known" : ofColumn;
  }

  private static void sayRow(Item item, List<Said<Unit>> units, List<Said<String>> bases) {
    say(units, item.label().unit(), 2);
    say(bases, item.label().basis(), 2);
    if (speaksOfRows(item.over())) {
      say(units, item.over().unit(), 3);
      say(bases, item.over().basis(), 3);
    }
    for (int i = 0; i < item.pieces().size(); i++) {
      Piece piece = item.pieces().get(i);
      if (piece.isMark() && !piece.isFigure() && !item.headings().get(i).isForeign()) {
        say(units, piece.unitOfMark(), 2);
        say(bases, piece.mark().basis(), 2);
      }
    }
  }

  /** 'Minerals, dry matter basis' or '% unless noted' over the names of the analytes. */
  private static boolean speaksOfRows(Heading over) {
    boolean marks = over.unit().isPresent() || over.basis().isPresent();
    return over.meaning().has(Kind.ROLE, "analyte")
        || (marks && over.meaning().unknown().isEmpty() && !over.isForeign());
  }

  void sayPage(String code, int at, List<Said<Unit>> units, List<Said<String>> bases) {
    say(units, statements.unitOf(code), 4);
    say(bases, statements.ofAnalyte(code), 2);
    say(bases, statements.ofAll(code, at), 4);
    say(bases, statements.basisInUnits(code), 4);
  }

  /** One list for all figures of which the same units are said. */
  List<Said<Unit>> sameUnits(List<Said<Unit>> said) {
    return sameUnits.of(List.copyOf(said));
  }

  /** One list for all figures of which the same bases are said. */
  List<Said<String>> sameBases(List<Said<String>> said) {
    return sameBases.of(List.copyOf(said));
  }

  static <T> void say(List<Said<T>> all, Optional<T> what, int from) {
    if (what.isPresent()) {
      all.add(new Said<>(what.get(), from));
    }
  }

  private static String rawUnit(Item item, Piece piece, Heading heading) {
    if (piece.tail().has(Kind.UNIT)) {
      return piece.figure().orElseThrow().rest();
    }
    Optional<String> own =
        item.pieces().stream()
            .filter(p -> p.isMark() && p.mark().has(Kind.UNIT) && !p.isFigure())
            .map(Piece::text)
            .findFirst();
    if (own.isPresent()) {
      return own.get();
    }
    Optional<Unit> unit = heading.unit().isPresent() ? heading.unit() : item.label().unit();
    return unit.map(Unit::code).orElse("");
  }

  private Optional<String> method(Item item, Piece piece, Heading heading) {
    Optional<String> own = item.label().method().or(() -> piece.tail().only(Kind.METHOD));
    return own.or(
            () ->
                item.pieces().stream()
                    .filter(p -> p.isMark() && !p.isFigure())
                    .map(p -> p.mark().only(Kind.METHOD))
                    .flatMap(Optional::stream)
                    .findFirst())
        .or(
            () ->
                item.pieces().stream()
                    .filter(p -> !p.isFigure() || p.figure().get().form() == Form.ABSENT)
                    .map(p -> methods.ofSign(p.text()))
                    .flatMap(Optional::stream)
                    .findFirst())
        .or(() -> heading.meaning().only(Kind.METHOD));
  }

  Samples samples() {
    return samples;
  }

  String document() {
    return document;
  }
}
