package rickyard.intake.grid.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.ReadingProgress;
import rickyard.intake.grid.Row;
import rickyard.intake.grid.UnreadableException;

/** Reads the visible text of a PDF as cells with places. */
public final class PdfPages {
  private static final int TAIL = 4096;
  private static final int MOST_ON_A_PAGE = 100_000;
  private static final int MOST_ON_A_LINE = 20_000;

  private final ReadLimits limits;
  private final ReadingProgress progress;
  private final Set<String> cautions = new TreeSet<>();
  private int cells;
  private boolean anyPicture;
  private boolean anyUnknown;
  private boolean anyKnown;

  private PdfPages(ReadLimits limits, ReadingProgress progress) {
    this.limits = limits;
    this.progress = progress;
  }

  /** {@link #read(byte[], ReadLimits, ReadingProgress)} that tells nobody how far it is. */
  public static Opened read(byte[] bytes, ReadLimits limits) {
    return read(bytes, limits, ReadingProgress.none());
  }

  /**
   * Reads a PDF.
   *
   * @return cells, with cautions where they apply: {@code hidden-text} (left out), {@code
   *     overdrawn-text}, {@code struck-text}, {@code readings-differ} and {@code unmapped-text}
   *     (the characters concerned are {@link CellText#UNKNOWN} or stand apart, so that no figure
   *     can be read), {@code turned-text} (rows in another direction come last), {@code
   *     page-without-text} and {@code damaged-parts}
   * @throws UnreadableException codes {@code encrypted}, {@code damaged}, {@code no-text}, {@code
   *     unmapped-text} and those of the limits
   */
  public static Opened read(byte[] bytes, ReadLimits limits, ReadingProgress progress) {
    int from = Math.max(0, bytes.length - TAIL);
    String tail = new String(bytes, from, bytes.length - from, StandardCharsets.ISO_8859_1);
    if (!tail.contains("%%EOF")) {
      throw new UnreadableException(
          "damaged", "The PDF breaks off before its end; ask for it again.");
    }
    try (PDDocument document =
        Loader.loadPDF(bytes, "", null, null, IOUtils.createMemoryOnlyStreamCache())) {
      return new PdfPages(limits, progress).read(document);
    } catch (InvalidPasswordException locked) {
      throw encrypted();
    } catch (NoClassDefFoundError noCertificates) {
      // Locked with a certificate: the library for those is not shipped.
      throw encrypted();
    } catch (IOException broken) {
      throw new UnreadableException(
          "damaged", "The PDF is damaged and cannot be read; ask for it again.");
    }
  }

  private static UnreadableException encrypted() {
    return new UnreadableException(
        "encrypted", "The PDF asks for a password; save it without one or ask for another file.");
  }

  private Opened read(PDDocument document) throws IOException {
    Streams.check(document.getDocument(), limits);
    if (document.getNumberOfPages() > limits.pages()) {
      throw new UnreadableException(
          "too-many-pages", "The PDF has more than " + limits.pages() + " pages.");
    }
    PageMarks marks = new PageMarks(limits);
    List<Page> pages = new ArrayList<>();
    marks.draw(
        document,
        (number, drawn) -> {
          List<Row> rows = rows(drawn);
          progress.reached("pages", number, document.getNumberOfPages());
          if (!rows.isEmpty()) {
            pages.add(new Page(number, "", rows));
          }
        });
    cautions.addAll(marks.cautions());
    refuseUnread(pages);
    if (anyPicture) {
      cautions.add("page-without-text");
    }
    return new Opened.Cells("pdf", new Grid(Grid.Kind.PLACED, pages, List.copyOf(cautions)));
  }

  private void refuseUnread(List<Page> pages) {
    if (pages.isEmpty()) {
      throw new UnreadableException(
          "no-text",
          "The PDF holds only a picture; type the figures in or ask the laboratory for its file.");
    }
    if (anyUnknown && !anyKnown) {
      throw new UnreadableException(
          "unmapped-text",
          "The characters of the PDF carry no meaning; ask the laboratory for another file.");
    }
    if (anyUnknown) {
      cautions.add("unmapped-text");
    }
  }

  private List<Row> rows(PageMarks.Drawn drawn) {
    Map<Integer, List<Glyph>> byAngle = visible(drawn);
    List<Row> rows = new ArrayList<>();
    double below = 0;
    for (int angle : mostTextFirst(byAngle)) {
      if (!rows.isEmpty()) {
        cautions.add("turned-text");
      }
      Turned turned = new Turned(angle, drawn.canvas().sheet());
      LineCells divider = new LineCells(turned.lines(drawn.canvas().lines()), cautions);
      List<TextLine> lines = TextLine.of(byAngle.getOrDefault(angle, List.of()));
      if (lines.stream().anyMatch(line -> line.length() > MOST_ON_A_LINE)) {
        throw tooLong();
      }
      List<List<Cell>> cellsOfLines = divider.of(lines);
      for (int at = 0; at < lines.size(); at++) {
        List<Cell> row = cellsOfLines.get(at);
        count(row.size());
        if (!row.isEmpty()) {
          rows.add(new Row(rows.size() + 1, below + lines.get(at).base(), row));
        }
      }
      // Text of another direction stands below everything, apart from the table.
      below += drawn.canvas().sheet().getWidth() + drawn.canvas().sheet().getHeight();
    }
    anyPicture |= rows.isEmpty() && drawn.canvas().paints() > 0;
    return rows;
  }

  private static UnreadableException tooLong() {
    return new UnreadableException(
        "too-long", "A page of the PDF has more characters than are read; ask for another file.");
  }

  private Map<Integer, List<Glyph>> visible(PageMarks.Drawn drawn) {
    if (drawn.marks().size() > MOST_ON_A_PAGE) {
      throw tooLong();
    }
    Map<Integer, List<Glyph>> byAngle = new TreeMap<>();
    Map<Integer, Turned> frames = new TreeMap<>();
    int order = 0;
    for (Mark mark : drawn.marks()) {
      order++;
      boolean blank = mark.text().isBlank();
      if (!drawn.canvas().shows(mark)) {
        if (!blank) {
          cautions.add("hidden-text");
        }
        continue;
      }
      boolean unknown = mark.text().indexOf(CellText.UNKNOWN) >= 0;
      anyUnknown |= unknown;
      anyKnown |= !unknown && !blank;
      Turned frame =
          frames.computeIfAbsent(mark.angle(), a -> new Turned(a, drawn.canvas().sheet()));
      byAngle.computeIfAbsent(mark.angle(), a -> new ArrayList<>()).add(frame.glyph(mark, order));
    }
    return byAngle;
  }

  private static List<Integer> mostTextFirst(Map<Integer, List<Glyph>> byAngle) {
    return byAngle.keySet().stream()
        .filter(angle -> inked(byAngle, angle) > 0)
        .sorted(
            java.util.Comparator.comparingLong((Integer angle) -> -inked(byAngle, angle))
                .thenComparing(java.util.Comparator.naturalOrder()))
        .toList();
  }

  private static long inked(Map<Integer, List<Glyph>> byAngle, int angle) {
    return byAngle.getOrDefault(angle, List.of()).stream().filter(g -> !g.text().isBlank()).count();
  }

  private void count(int more) {
    cells += more;
    if (cells > limits.cells()) {
      throw new UnreadableException(
          "too-many-cells", "The PDF has more than " + limits.cells() + " cells.");
    }
  }
}
