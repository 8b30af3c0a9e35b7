package rickyard.intake.grid.ocr;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.UnreadableException;
import rickyard.intake.grid.pdf.PdfPictures;
import rickyard.intake.grid.pdf.PlacedWord;

/** Scans and photographs as cells; whoever uses them must have a person confirm each figure. */
public final class ScannedPages {
  /** The caution that makes every figure a question. */
  public static final String CAUTION = "read-by-ocr";

  private static final int MOST_PAGES = 12;
  private static final int USUAL_DPI = 300;

  /** Dots of a picture before it is made smaller: no camera of an office has more. */
  private static final long LARGEST = 120_000_000;

  private final Recogniser recogniser;
  private final ReadLimits limits;
  private final List<Page> pages = new ArrayList<>();
  private int number;
  private int cells;

  private ScannedPages(Recogniser recogniser, ReadLimits limits) {
    this.recogniser = recogniser;
    this.limits = limits;
  }

  /** Reads a PDF that holds pictures instead of text. */
  public static Opened pdf(byte[] bytes, Recogniser recogniser, ReadLimits limits) {
    ScannedPages scanned = new ScannedPages(recogniser, limits);
    PdfPictures.each(bytes, MOST_PAGES, scanned::take);
    return scanned.opened("pdf");
  }

  /** Reads a picture; of one with several pages all. */
  public static Opened image(byte[] bytes, Recogniser recogniser, ReadLimits limits) {
    ScannedPages scanned = new ScannedPages(recogniser, limits);
    try (MemoryCacheImageInputStream in =
        new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new UnreadableException(
            "unsupported-kind",
            "Pictures of this kind are not read; save it as PNG, JPEG or TIFF.");
      }
      ImageReader reader = readers.next();
      reader.setInput(in);
      scanned.all(reader);
      reader.dispose();
    } catch (IOException broken) {
      throw new UnreadableException(
          "damaged", "The picture is damaged and cannot be read; ask for it again.");
    }
    return scanned.opened("image");
  }

  private void all(ImageReader reader) throws IOException {
    int count = reader.getNumImages(true);
    if (count > MOST_PAGES) {
      throw tooManyPages();
    }
    for (int at = 0; at < count; at++) {
      long dots = (long) reader.getWidth(at) * reader.getHeight(at);
      if (dots > LARGEST) {
        throw tooLarge();
      }
      ImageReadParam smaller = reader.getDefaultReadParam();
      int step = (int) Math.ceil(Math.sqrt((double) dots / Picture.MOST_DOTS));
      smaller.setSourceSubsampling(Math.max(1, step), Math.max(1, step), 0, 0);
      take(reader.read(at, smaller), USUAL_DPI);
    }
  }

  /** What a picture of too many pages or dots is refused with. */
  private static UnreadableException tooManyPages() {
    return new UnreadableException(
        "too-many-pages", "The scan has more than " + MOST_PAGES + " pages; send fewer at a time.");
  }

  private static UnreadableException tooLarge() {
    return new UnreadableException(
        "too-large", "The picture has more dots than are read; scan it at 300 dots an inch.");
  }

  private void take(BufferedImage image, int dpi) {
    number++;
    String table = recogniser.read(Picture.of(image, dpi));
    List<PlacedWord> words = Words.of(table, dpi);
    cells += words.size();
    if (cells > limits.cells()) {
      throw new UnreadableException(
          "too-many-cells", "The scan has more than " + limits.cells() + " words.");
    }
    PlacedWord.page(number, words).ifPresent(pages::add);
  }

  private Opened opened(String kind) {
    if (pages.isEmpty()) {
      throw new UnreadableException(
          "no-text", "The text recogniser found no text; type the figures in or ask for a file.");
    }
    return new Opened.Cells(kind, new Grid(Grid.Kind.PLACED, pages, List.of(CAUTION)));
  }
}
