package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rickyard.intake.grid.Cell;

/** Joins headings and labels that run over two lines: 'Crude' over 'protein'. */
final class Wraps {
  private final Piece.Reading reading;
  private final Dictionary dictionary;
  private final boolean certain;

  private static final int FEWEST_WORDS = 4;
  private static final Pattern ENDED = Pattern.compile("[.:;!?]\\s*$");
  private static final Set<Kind> OF_SENTENCE =
      EnumSet.of(Kind.SUBJECT, Kind.STATEMENT, Kind.HEDGE, Kind.NOT, Kind.EXCEPT);

  Wraps(Piece.Reading reading) {
    this.reading = reading;
    this.dictionary = reading.dictionary();
    this.certain = reading.certain();
  }

  List<Line> joined(List<Line> lines) {
    List<Line> out = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      Line line = lines.get(at);
      Optional<Line> around =
          at + 2 < lines.size() ? around(lines.subList(at, at + 3)) : Optional.empty();
      if (around.isPresent()) {
        out.add(around.get());
        at += 2;
        continue;
      }
      Optional<Line> below =
          at + 1 < lines.size() ? below(line, lines.get(at + 1)) : Optional.empty();
      if (below.isPresent()) {
        out.add(below.get());
        at++;
        continue;
      }
      Optional<Line> last =
          out.isEmpty() || out.get(out.size() - 1).page() != line.page()
              ? Optional.empty()
              : Optional.of(out.get(out.size() - 1));
      Optional<Line> both =
          last.flatMap(
              upper ->
                  label(upper, line)
                      .or(() -> bracket(upper, line))
                      .or(() -> heading(upper, line))
                      .or(() -> sentence(upper, line)));
      if (both.isPresent()) {
        out.set(out.size() - 1, both.get());
      } else {
        out.add(line);
      }
    }
    return out;
  }

  /** 'Soluble' above 'protein 35': one label, and not that of the lower line. */
  private Optional<Line> label(Line upper, Line lower) {
    Piece first = lower.pieces().get(0);
    Piece above = upper.pieces().get(0);
    boolean open =
        upper.pieces().size() == 1
            && !above.isLabel()
            && !above.isFigure()
            && above.field().filter(FieldMark::marked).isEmpty()
            && lower.row() - upper.row() == 1
            && lower.hasFigure()
            && above.cell().overlap(first.cell()) > 0;
    if (!open) {
      return Optional.empty();
    }
    Optional<Label> whole = Label.read(dictionary, above.text() + " " + first.text());
    boolean other =
        whole
            .filter(w -> first.label().filter(f -> f.code().equals(w.code())).isEmpty())
            .isPresent();
    if (!other) {
      return Optional.empty();
    }
    List<Piece> pieces = new ArrayList<>(lower.pieces());
    pieces.set(0, join(above, first));
    return Optional.of(new Line(lower.page(), lower.row(), pieces));
  }

  /** A label over two lines with its figures half-way between them. */
  private Optional<Line> around(List<Line> three) {
    Line upper = three.get(0);
    Line middle = three.get(1);
    Line lower = three.get(2);
    Piece above = upper.pieces().get(0);
    Piece beneath = lower.pieces().get(0);
    boolean around =
        !certain
            && upper.pieces().size() == 1
            && lower.pieces().size() == 1
            && follow(upper, middle)
            && follow(middle, lower)
            && isWords(above)
            && isWords(beneath)
            && middle.hasFigure()
            && !middle.isItem()
            && middle.pieces().get(0).cell().left() >= above.cell().right() - 1
            && above.cell().overlap(beneath.cell()) > 0;
    if (!around || Label.read(dictionary, above.text() + " " + beneath.text()).isEmpty()) {
      return Optional.empty();
    }
    List<Piece> pieces = new ArrayList<>();
    pieces.add(join(above, beneath));
    pieces.addAll(middle.pieces());
    return Optional.of(new Line(middle.page(), middle.row(), pieces));
  }

  /** 'Water soluble | 9.4' above 'carbohydrate': the rest of the label stands below its figures. */
  private Optional<Line> below(Line upper, Line lower) {
    Piece first = upper.pieces().get(0);
    Piece rest = lower.pieces().get(0);
    boolean open =
        upper.pieces().size() >= 2
            && lower.pieces().size() == 1
            && follow(upper, lower)
            && isWords(first)
            && !first.isLabel()
            && isWords(rest)
            && upper.hasFigure()
            && !upper.isItem()
            && first.cell().overlap(rest.cell()) > 0;
    if (!open || Label.read(dictionary, first.text() + " " + rest.text()).isEmpty()) {
      return Optional.empty();
    }
    List<Piece> pieces = new ArrayList<>(upper.pieces());
    pieces.set(0, join(first, rest));
    return Optional.of(new Line(upper.page(), upper.row(), pieces));
  }

  private static boolean follow(Line upper, Line lower) {
    return upper.page() == lower.page() && lower.row() - upper.row() == 1;
  }

  private static boolean isWords(Piece piece) {
    return !piece.isFigure() && piece.field().filter(FieldMark::marked).isEmpty();
  }

  /** Headings over two lines, where the lower words mean nothing by themselves. */
  private Optional<Line> heading(Line upper, Line lower) {
    boolean words =
        lower.row() - upper.row() == 1
            && upper.pieces().size() >= 2
            && lower.pieces().size() >= 2
            && none(upper)
            && none(lower)
            && lower.pieces().stream()
                .anyMatch(p -> !p.isLabel() && !p.isMark() && !p.isHeadingWord());
    if (!words) {
      return Optional.empty();
    }
    List<Piece> pieces = new ArrayList<>();
    Set<Piece> used = new LinkedHashSet<>();
    for (Piece piece : lower.pieces()) {
      Optional<Piece> over = Columns.over(upper.pieces(), piece.cell(), certain);
      over.ifPresent(used::add);
      Piece whole = over.map(o -> join(o, piece)).orElse(piece);
      if (!isUnderstood(whole)) {
        return Optional.empty();
      }
      pieces.add(whole);
    }
    return used.size() == upper.pieces().size()
        ? Optional.of(new Line(lower.page(), lower.row(), pieces))
        : Optional.empty();
  }

  /**
   * 'Usual values' alone over '(in DM)', the last heading of the line below: what stands in
   * brackets has its name above. Read by itself it would be a column of results.
   */
  private Optional<Line> bracket(Line upper, Line lower) {
    if (upper.pieces().size() != 1 || lower.pieces().size() < 2) {
      return Optional.empty();
    }
    Piece above = upper.pieces().get(0);
    List<Piece> under =
        lower.pieces().stream().filter(p -> p.cell().overlap(above.cell()) > 0).toList();
    boolean open =
        follow(upper, lower)
            && isWords(above)
            && none(lower)
            && under.size() == 1
            && under.get(0).text().startsWith("(");
    if (!open) {
      return Optional.empty();
    }
    Piece whole = join(above, under.get(0));
    List<Piece> pieces = new ArrayList<>(lower.pieces());
    pieces.set(pieces.indexOf(under.get(0)), whole);
    return Optional.of(new Line(lower.page(), lower.row(), pieces));
  }

  /**
   * A sentence about the results that runs on: 'All results are expressed on a' above 'dry matter
   * basis'. Half of it may say the opposite of the whole.
   */
  private Optional<Line> sentence(Line upper, Line lower) {
    if (upper.pieces().size() != 1 || lower.pieces().size() != 1) {
      return Optional.empty();
    }
    Piece above = upper.pieces().get(0);
    Piece below = lower.pieces().get(0);
    boolean runsOn =
        lower.row() - upper.row() == 1
            && isProse(above)
            && !ENDED.matcher(above.text()).find()
            && (!below.isLabel() || leadsOn(above))
            && !below.isFigure()
            && below.field().isEmpty();
    boolean about = dictionary.read(above.text(), OF_SENTENCE).phrases().size() > 0;
    return runsOn && about
        ? Optional.of(new Line(lower.page(), lower.row(), List.of(join(above, below))))
        : Optional.empty();
  }

  /** 'expressed as a percentage of': no line ends there. */
  private boolean leadsOn(Piece piece) {
    List<String> words = piece.heading().words();
    List<String> last = words.subList(words.size() - 1, words.size());
    return dictionary.read(last, EnumSet.of(Kind.FILLER)).isWhole();
  }

  private boolean isProse(Piece piece) {
    return piece.heading().words().size() >= FEWEST_WORDS
        && !piece.isLabel()
        && piece.field().filter(f -> !f.field().equals("basis")).isEmpty();
  }

  private static boolean none(Line line) {
    return line.pieces().stream()
        .noneMatch(p -> p.isFigure() || p.field().filter(f -> !f.value().isEmpty()).isPresent());
  }

  private static boolean isUnderstood(Piece piece) {
    return piece.isLabel() || piece.isMark() || piece.isHeadingWord();
  }

  private Piece join(Piece upper, Piece lower) {
    Cell a = upper.cell();
    Cell b = lower.cell();
    Cell both =
        new Cell(
            a.text() + " " + b.text(),
            Math.min(a.left(), b.left()),
            Math.max(a.right(), b.right()),
            b.column());
    return Piece.of(reading, both);
  }
}
