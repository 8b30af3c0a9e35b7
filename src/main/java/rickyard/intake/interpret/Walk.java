package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.core.quantity.Place;
import rickyard.intake.grid.ReadingProgress;

/**
 * Goes through the lines of a document once, from top to bottom, and sorts them: heading, row of a
 * long table, row of a wide table, field of the head, section.
 */
final class Walk {
  private static final Set<String> OF_REPORT =
      Set.of(
          "report_no", "revision", "replaces", "reported", "received", "lab", "method", "status");
  private static final Set<Kind> ASIDE = EnumSet.of(Kind.HEDGE, Kind.BASIS, Kind.STATEMENT);

  /** 'MQ 12-1 (hay of the long meadow)': a number and words about it. */
  private static final Pattern NAMED =
      Pattern.compile("(?<name>[^()]*[0-9][^()]*?)\\s*\\((?<words>\\p{L}+\\s[^()0-9]+)\\)");

  private static final int HEADING_LINES = 3;
  private static final int ROWS_BELOW = 12;
  private static final int LONGEST_HEADING = 8;

  private final Dictionary dictionary;
  private final boolean certain;
  private final List<Line> lines;
  private final Statements statements;
  private final Samples samples = new Samples();
  private final Front front;
  private final Methods methods;
  private final RowReader rows;
  private final List<Line> pending = new ArrayList<>();
  private final List<Line> pendingFields = new ArrayList<>();
  private Optional<Line> pendingCaptions = Optional.empty();
  private final List<Untaken> unknown = new ArrayList<>();
  private final List<List<Line>> heads = new ArrayList<>();
  private final Tiles tiles;
  private final String document;
  private Header header;
  private Optional<WideTable> wide = Optional.empty();
  private Section section = Section.none();
  private int foreignSince = -1;

  Walk(Dictionary dictionary, List<Line> lines, boolean certain, String document) {
    this.dictionary = dictionary;
    this.certain = certain;
    this.lines = List.copyOf(lines);
    this.statements = Statements.in(dictionary, lines, this::isColumnMark);
    this.front = new Front(dictionary);
    this.methods = Methods.in(dictionary, lines);
    this.rows = new RowReader(document, statements, methods, samples, front);
    this.document = document;
    this.tiles = new Tiles(certain);
    this.header = Header.none(dictionary, certain);
  }

  Samples samples() {
    return samples;
  }

  Front front() {
    return front;
  }

  /** The heading lines of each table of results. */
  List<List<Line>> heads() {
    return List.copyOf(heads);
  }

  /** Rows of tables whose label the dictionary does not know. */
  List<Untaken> unknown() {
    return List.copyOf(unknown);
  }

  /** What the document says beside its figures. */
  SampleWriter.Said said() {
    return new SampleWriter.Said(dictionary, front, statements, methods);
  }

  private Meaning readMarks(String text) {
    return dictionary.read(text, Dictionary.IN_MARK);
  }

  void run(ReadingProgress progress) {
    for (int at = 0; at < lines.size(); at++) {
      progress.reached("rows", at + 1, lines.size());
      Line line = lines.get(at);
      if (wide.filter(w -> w.hasStandings() && w.takes(line)).isEmpty()) {
        front.see(line);
      }
      if (isTile(at)) {
        wide = Optional.empty();
        pending.clear();
        WideTable.under(dictionary, List.of(), lines.get(at + 1), certain)
            .read(line, at, section, rows);
        at++;
        continue;
      }
      Optional<FieldBlock> block = FieldBlock.at(lines, at, certain);
      if (block.isPresent()) {
        block.get().values().forEach(front::see);
        take(block.get());
        at += block.get().values().size();
      } else {
        step(line, at);
      }
    }
  }

  private boolean isTile(int at) {
    boolean taken = wide.filter(w -> w.takes(lines.get(at))).isPresent();
    return !taken && at + 1 < lines.size() && tiles.arePair(lines.get(at), lines.get(at + 1));
  }

  private void take(FieldBlock block) {
    if (block.values().size() == 1) {
      block.fields(block.values().get(0)).forEach(this::note);
    } else {
      block.values().forEach(row -> samples.describe(block.fields(row)));
    }
  }

  private void step(Line line, int at) {
    if (WideTable.isHead(line, lines.subList(at + 1, lines.size()), certain)) {
      wide = Optional.of(WideTable.under(dictionary, pending, line, certain));
      heads.add(List.of(line));
      pending.clear();
    } else if (wide.isPresent() && wide.get().takes(line)) {
      Optional<Line> next =
          at + 1 < lines.size() ? Optional.of(lines.get(at + 1)) : Optional.empty();
      wide.get().read(line, at, section, rows, next);
    } else if (line.isItem()) {
      wide = Optional.empty();
      settleHeader();
      rows.read(line, at, header, section);
    } else {
      other(line, at);
    }
  }

  private void settleHeader() {
    if (!pending.isEmpty() || !pendingFields.isEmpty()) {
      List<Line> heads =
          pending.subList(Math.max(0, pending.size() - HEADING_LINES), pending.size());
      header = new Header(dictionary, heads, pendingFields, pendingCaptions, certain);
      pendingCaptions = Optional.empty();
      this.heads.add(List.copyOf(heads));
      pending.clear();
      pendingFields.clear();
    }
  }

  private void other(Line line, int at) {
    Optional<Line> next = at + 1 < lines.size() ? Optional.of(lines.get(at + 1)) : Optional.empty();
    if (isColumnMark(at)) {
      pending.add(line);
      return;
    }
    Optional<Statements.OfBasis> stated = Statements.basis(dictionary, line, at);
    if (stated.isPresent()) {
      if (stated.get().only().isEmpty()) {
        section =
            stated.get().wide() && !stated.get().except().isEmpty()
                ? Section.none()
                : Section.stating(stated.get().basis(), readMarks(line.text()));
      }
      if (line.pieces().size() > 1) {
        fields(line);
      }
      return;
    }
    if (isCaptions(line)) {
      pendingCaptions = Optional.of(line);
    } else if (isOverWideHead(line, at)) {
      pending.add(line);
    } else if (isFieldHeads(line) && next.filter(n -> !n.isItem()).isPresent()) {
      fieldsBelow(line, next.get());
    } else if (next.filter(Line::isItem).isPresent()
        && (isStrangeHeading(line) || BareNames.areOver(line, next.get(), certain))) {
      pending.add(line);
    } else if (isFieldLine(line)) {
      pendingFields.add(line);
    } else if (isHeading(line) || isSampleHeading(line) || isLabelHeading(line)) {
      if (section.foreign() && foreignSince < at - 1 && !pending.contains(lines.get(at - 1))) {
        section = Section.none();
      }
      pending.add(line);
    } else if (isUnknownRow(line)) {
      Piece first = line.pieces().get(0);
      unknown.add(
          new Untaken(
              new Place(document, line.page(), line.row(), "1"), first.text(), "unknown-label"));
    } else if (fields(line)) {
      pending.clear();
    } else {
      boolean before = section.foreign();
      boolean aside = next.filter(Line::isItem).isPresent() && isAside(line);
      section = aside ? Section.aside() : section.after(dictionary, line);
      foreignSince = section.foreign() && !before ? at : foreignSince;
    }
  }

  /** 'Lab no Sample Date sampled', with the values in the line below. */
  private static boolean isFieldHeads(Line line) {
    return line.pieces().size() >= 2
        && line.pieces().stream()
            .allMatch(p -> p.field().filter(f -> f.value().isEmpty()).isPresent())
        && line.pieces().stream().noneMatch(p -> p.heading().has(Kind.ROLE, "result"));
  }

  private void fieldsBelow(Line heads, Line values) {
    for (Piece value : values.pieces()) {
      Columns.over(heads.pieces(), value.cell(), certain)
          .flatMap(Piece::field)
          .ifPresent(field -> note(field.field(), value.text()));
    }
  }

  private boolean isCaptions(Line line) {
    return !pending.isEmpty()
        && BareNames.areCaptions(line, pending.get(pending.size() - 1), certain);
  }

  /** 'Lot | Received | Minerals' over the names of the analytes: fields whose cells span both. */
  private boolean isOverWideHead(Line line, int at) {
    return certain
        && at + 2 < lines.size()
        && WideTable.isHead(lines.get(at + 1), lines.subList(at + 2, lines.size()), true)
        && WideTable.fieldsBeside(line, lines.get(at + 1));
  }

  private boolean isUnknownRow(Line line) {
    boolean table = !header.isNone() || !pending.isEmpty();
    Piece first = line.pieces().get(0);
    return table
        && line.pieces().size() >= 2
        && !first.isFigure()
        && first.field().isEmpty()
        && line.pieces().stream().skip(1).anyMatch(Piece::isFigure);
  }

  /** '% DM' alone, over the figures of the row below and not over its label. */
  private boolean isColumnMark(int at) {
    Line line = lines.get(at);
    Piece mark = line.pieces().get(0);
    if (line.pieces().size() != 1 || !mark.isMark()) {
      return false;
    }
    List<Line> below = lines.subList(at + 1, Math.min(lines.size(), at + 1 + ROWS_BELOW));
    if (below.stream().limit(2).noneMatch(Line::isItem)) {
      return false;
    }
    // The first rows, those of the water, often have no figure in the column of the dry matter.
    return below.stream()
        .filter(row -> row.page() == line.page() && row.isItem())
        .map(row -> Columns.over(row.pieces(), mark.cell(), certain))
        .anyMatch(over -> over.filter(p -> p.isFigure() && !p.isLabel()).isPresent());
  }

  /**
   * Words that nobody knows stand over the columns of the last table: its headings no longer hold.
   */
  private boolean isStrangeHeading(Line line) {
    return !header.isNone()
        && line.pieces().size() >= 2
        && line.pieces().stream()
            .noneMatch(p -> p.isFigure() || p.isLabel() || p.field().isPresent())
        && line.pieces().stream().skip(1).anyMatch(p -> header.over(p.cell()).isResult());
  }

  /** 'Lot | A | B | C': one field, a value for each column. */
  private static boolean isFieldLine(Line line) {
    List<Piece> pieces = line.pieces();
    return pieces.size() >= 3
        && pieces.get(0).field().filter(f -> f.value().isEmpty()).isPresent()
        && Header.OF_SAMPLE.contains(pieces.get(0).field().get().field())
        && pieces.stream()
            .skip(1)
            .noneMatch(p -> p.field().isPresent() || p.isHeadingWord() || p.isLabel());
  }

  /** 'Sample A Sample B': the same field side by side, each with its value. */
  private static boolean isSampleHeading(Line line) {
    if (Header.isPairs(line)) {
      return true;
    }
    List<FieldMark> fields =
        line.pieces().stream().map(Piece::field).flatMap(Optional::stream).toList();
    return fields.size() >= 2
        && fields.size() == line.pieces().size()
        && fields.stream().map(FieldMark::field).distinct().count() == 1
        && Header.OF_SAMPLE.contains(fields.get(0).field())
        && fields.stream().noneMatch(f -> f.value().isEmpty())
        // 'Sample VB-7 | Mark: upper barn' is one sample with a number and a name.
        && fields.stream().map(f -> hasDigit(f.value())).distinct().count() == 1;
  }

  /** 'Analyte (% DM)' alone over its column, the columns beside it being named above. */
  private static boolean isLabelHeading(Line line) {
    Piece first = line.pieces().get(0);
    return line.pieces().size() == 1
        && first.heading().isWhole()
        && first.heading().has(Kind.ROLE, "analyte")
        && (first.heading().has(Kind.UNIT) || first.heading().basis().isPresent());
  }

  private static boolean isHeading(Line line) {
    boolean inlineField =
        line.pieces().stream().anyMatch(p -> p.field().filter(FieldMark::marked).isPresent());
    long words = line.pieces().stream().filter(Piece::isHeadingWord).count();
    boolean roles =
        line.pieces().stream()
            .anyMatch(p -> (p.heading().isWhole() && p.heading().has(Kind.ROLE)) || p.isMark());
    boolean table =
        line.pieces().stream()
            .anyMatch(p -> p.heading().isWhole() && p.heading().has(Kind.ROLE, "analyte"));
    boolean figures =
        line.pieces().stream()
            .anyMatch(p -> p.figure().filter(f -> f.hasNumber() || f.isTroubled()).isPresent());
    boolean sentence =
        line.pieces().stream().anyMatch(p -> p.heading().words().size() > LONGEST_HEADING);
    return !inlineField
        && !isFieldPair(line)
        && !isBlankRow(line)
        && !sentence
        && (table || !figures)
        && line.pieces().size() >= 2
        && words >= 1
        && roles
        && (line.pieces().size() <= 2 * words + 2 || !BareNames.in(line).isEmpty());
  }

  /** 'Your sample | A-1': a field of the head, though the words might stand over a column. */
  private static boolean isFieldPair(Line line) {
    if (line.pieces().size() != 2) {
      return false;
    }
    Piece value = line.pieces().get(1);
    return line.pieces()
            .get(0)
            .field()
            .filter(f -> f.value().isEmpty() && Header.OF_SAMPLE.contains(f.field()))
            .isPresent()
        && value.field().isEmpty()
        && !value.isMark()
        && !value.isHeadingWord()
        && !value.isLabel();
  }

  /** 'Chloride | %' and no figure: the row of an analyte that was not asked for. */
  private static boolean isBlankRow(Line line) {
    Optional<String> code = line.pieces().get(0).label().map(Label::code);
    boolean bases =
        line.pieces().stream().skip(1).anyMatch(p -> p.isMark() && p.mark().basis().isPresent());
    boolean roles =
        line.pieces().stream().anyMatch(p -> p.heading().isWhole() && p.heading().has(Kind.ROLE));
    return code.isPresent() && !roles && !(code.get().equals("DM") && bases);
  }

  /** Takes the fields of a line of the head; whether there were any. */
  private boolean fields(Line line) {
    boolean any = false;
    // 'Sample VB-7, mark: upper barn': words beside a number describe the sample.
    boolean named = false;
    List<Piece> pieces = line.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      Optional<FieldMark> field = pieces.get(i).field();
      if (field.isEmpty()) {
        continue;
      }
      String value = field.get().value();
      boolean bare = value.isEmpty();
      if (bare
          && i + 1 < pieces.size()
          && pieces.get(i + 1).field().filter(f -> f.marked() || f.value().isEmpty()).isEmpty()) {
        value = pieces.get(++i).text();
      }
      if (!value.isEmpty() && (bare || field.get().marked() || looksLikeAName(value))) {
        boolean again = field.get().field().equals("sample") && named && !hasDigit(value);
        note(again ? "description" : field.get().field(), value);
        named |= field.get().field().equals("sample") && hasDigit(value);
        any = true;
      }
    }
    return any;
  }

  /** 'For comparison: composition as fed': it names a basis, but does not state one. */
  private boolean isAside(Line line) {
    Meaning meaning = dictionary.read(line.text(), ASIDE);
    return line.pieces().size() == 1
        && meaning.has(Kind.HEDGE)
        && (meaning.has(Kind.BASIS) || meaning.has(Kind.STATEMENT));
  }

  private static boolean looksLikeAName(String value) {
    boolean code = value.matches("\\p{Lu}[\\p{L}0-9]{0,5}[-/.]\\S+(?:\\s\\S+)?");
    return code || (hasDigit(value) && value.split("\\s+", -1).length <= 4);
  }

  private static boolean hasDigit(String value) {
    return value.chars().anyMatch(c -> c >= '0' && c <= '9');
  }

  private void note(String field, String value) {
    Matcher named = NAMED.matcher(value);
    if (Set.of("lot", "sample").contains(field) && named.matches()) {
      noteOne(field, named.group("name"));
      noteOne("description", named.group("words"));
    } else {
      noteOne(field, value);
    }
  }

  private void noteOne(String field, String value) {
    if (OF_REPORT.contains(field)) {
      front.note(field, value);
    } else if (Header.OF_SAMPLE.contains(field)) {
      samples.note(field, value);
    }
  }
}
