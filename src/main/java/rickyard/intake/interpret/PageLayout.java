package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rickyard.core.forage.Layout;
import rickyard.core.forage.LayoutHeading;
import rickyard.core.forage.LayoutLine;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;

/**
 * Describes a page by the words that its laboratory prints on every report: headings, names of
 * fields, and how each analyte is labelled. Words that the dictionary does not know may be
 * anybody's and are left out, numbers too.
 */
final class PageLayout {
  private static final int LONGEST = 80;

  private final List<Line> lines;
  private final CellTexts texts;
  private final Memo<String> plainWords = new Memo<>(text -> cut(plain(Words.of(text))));

  PageLayout(CellTexts texts, List<Line> lines) {
    this.lines = List.copyOf(lines);
    this.texts = texts;
  }

  private static long place(int page, int row) {
    return ((long) page << Integer.SIZE) + row;
  }

  /**
   * The layout of a page.
   *
   * @param lab the laboratory's name as the page gives it
   * @param heads the heading lines of each table of results, in the order of the page
   * @param drafts the samples with their figures
   */
  Layout of(String lab, List<List<Line>> heads, List<SampleDraft> drafts) {
    List<LayoutHeading> first = headings(heads.isEmpty() ? overFirstItem() : heads.get(0));
    SortedSet<LayoutHeading> more = new TreeSet<>();
    heads.stream().skip(1).forEach(h -> more.addAll(headings(h)));
    first.forEach(more::remove);
    return new Layout(cut(plain(Words.of(lab))), first, more, fields(), analytes(drafts));
  }

  /** A heading that states the basis of all results was read as a statement, not as a heading. */
  private List<Line> overFirstItem() {
    for (int i = 1; i < lines.size(); i++) {
      if (lines.get(i).isItem()) {
        Line above = lines.get(i - 1);
        boolean heading =
            above.pieces().size() >= 2
                && !above.isItem()
                && above.pieces().stream()
                    .anyMatch(p -> p.heading().isWhole() && p.heading().has(Kind.ROLE));
        return heading ? List.of(above) : List.of();
      }
    }
    return List.of();
  }

  private static String plain(List<String> words) {
    return words.stream()
        .filter(w -> w.chars().noneMatch(c -> c >= '0' && c <= '9'))
        .collect(Collectors.joining(" "));
  }

  private static String cut(String text) {
    return text.substring(0, Math.min(LONGEST, text.length()));
  }

  private static List<LayoutHeading> headings(List<Line> lines) {
    Set<LayoutHeading> headings = new LinkedHashSet<>();
    for (Line line : lines) {
      boolean wide = line.pieces().stream().filter(Piece::isLabel).count() > 2;
      line.pieces().stream()
          .filter(p -> !(wide && p.isLabel()))
          .forEach(p -> heading(p).ifPresent(headings::add));
    }
    return List.copyOf(headings);
  }

  private static Optional<LayoutHeading> heading(Piece piece) {
    Meaning meaning = piece.heading();
    List<String> known =
        piece.field().filter(f -> !f.value().isEmpty()).isPresent()
            ? List.of(piece.field().get().field())
            : meaning.phrases().stream().flatMap(p -> p.words().stream()).toList();
    String words = cut(plain(known));
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new LayoutHeading(
                words,
                String.join(" ", meaning.all(Kind.ROLE)),
                meaning.basis().orElse(""),
                meaning.only(Kind.UNIT).orElse("")));
  }

  private SortedSet<String> fields() {
    SortedSet<String> fields = new TreeSet<>();
    for (Line line : lines) {
      if (!line.isItem()) {
        line.pieces().forEach(p -> p.field().ifPresent(f -> fields.add(cut(plain(name(p, f))))));
      }
    }
    fields.remove("");
    return fields;
  }

  private static List<String> name(Piece piece, FieldMark field) {
    String text = piece.text();
    return Words.of(
        text.endsWith(field.value())
            ? text.substring(0, text.length() - field.value().length())
            : text);
  }

  private List<LayoutLine> analytes(List<SampleDraft> drafts) {
    Map<Long, Line> rows = new HashMap<>();
    lines.forEach(l -> rows.putIfAbsent(place(l.page(), l.row()), l));
    Map<String, List<Finding>> byCode = new LinkedHashMap<>();
    for (SampleDraft draft : drafts) {
      for (Finding finding : draft.findings()) {
        byCode.computeIfAbsent(finding.code(), c -> new ArrayList<>()).add(finding);
      }
    }
    List<LayoutLine> found = new ArrayList<>();
    byCode.forEach((code, findings) -> found.add(line(code, findings, rows)));
    return found;
  }

  private LayoutLine line(String code, List<Finding> findings, Map<Long, Line> rows) {
    SortedSet<String> labels = new TreeSet<>();
    SortedSet<String> units = new TreeSet<>();
    SortedSet<String> bases = new TreeSet<>();
    for (Finding finding : findings) {
      label(finding, rows).ifPresent(labels::add);
      var analyte = finding.label().rule().analyte();
      if (analyte.unit() != Unit.ONE) {
        units.add(finding.units().isEmpty() ? "" : finding.units().get(0).what().code());
      }
      if (analyte.basis() == Basis.DRY_MATTER) {
        bases.add(finding.bases().isEmpty() ? "" : finding.bases().get(0).what());
      }
    }
    return new LayoutLine(code, labels, units, bases);
  }

  /** The analyte's name in its row, or over its column. */
  private Optional<String> label(Finding finding, Map<Long, Line> rows) {
    Line row = rows.get(place(finding.place().page(), finding.place().row()));
    for (Piece piece : row == null ? List.<Piece>of() : row.pieces()) {
      if (names(piece.label(), finding)) {
        return Optional.of(plainWords.of(piece.text()));
      }
    }
    return Optional.of(finding.place().column())
        .filter(text -> names(texts.label(text), finding))
        .map(plainWords::of);
  }

  private static boolean names(Optional<Label> label, Finding finding) {
    return label.isPresent() && label.get().code().equals(finding.code());
  }
}
