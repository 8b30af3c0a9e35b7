package rickyard.intake.grid.pdf;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import rickyard.intake.grid.UnreadableException;

/** The pages of a PDF as pictures, for those that hold nothing else. */
public final class PdfPictures {
  private static final int DPI = 250;
  private static final int LEAST_DPI = 60;

  /** Dots of one page: two sheets of A4 at this density. */
  private static final double MOST_DOTS = 12_000_000;

  /** Dots of one picture inside; a page of A4 at 600 dots an inch has 35 million. */
  private static final long LARGEST = 40_000_000;

  /** What is done with a page. */
  public interface Taker {
    void take(BufferedImage page, int dpi);
  }

  private PdfPictures() {}

  /** Draws page after page, one in memory at a time. */
  public static void each(byte[] bytes, int mostPages, Taker taker) {
    try (PDDocument document =
        Loader.loadPDF(bytes, "", null, null, IOUtils.createMemoryOnlyStreamCache())) {
      if (document.getNumberOfPages() > mostPages) {
        throw new UnreadableException(
            "too-many-pages",
            "The scan has more than " + mostPages + " pages; send fewer at a time.");
      }
      checkPictures(document);
      PDFRenderer renderer = new PDFRenderer(document);
      renderer.setSubsamplingAllowed(true);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        int dpi = dpi(document.getPage(page).getCropBox());
        taker.take(renderer.renderImageWithDPI(page, dpi, ImageType.GRAY), dpi);
      }
    } catch (IOException broken) {
      throw new UnreadableException(
          "damaged", "The PDF is damaged and cannot be read; ask for it again.");
    }
  }

  private static int dpi(PDRectangle page) {
    double inches = Math.max(1, page.getWidth() / 72.0 * page.getHeight() / 72.0);
    int fitting = (int) Math.min(DPI, Math.sqrt(MOST_DOTS / inches));
    if (fitting < LEAST_DPI) {
      throw tooLarge();
    }
    return fitting;
  }

  /** A picture says how large it becomes; one that would fill the memory is not unpacked. */
  private static void checkPictures(PDDocument document) throws IOException {
    for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
      COSObject object = document.getDocument().getObjectFromPool(key);
      COSBase base = object == null ? null : object.getObject();
      if (base instanceof COSStream stream
          && COSName.IMAGE.equals(stream.getDictionaryObject(COSName.SUBTYPE))) {
        long dots = (long) stream.getInt(COSName.WIDTH, 0) * stream.getInt(COSName.HEIGHT, 0);
        if (dots > LARGEST) {
          throw tooLarge();
        }
      }
    }
  }

  private static UnreadableException tooLarge() {
    return new UnreadableException(
        "too-large", "The picture has more dots than are read; scan it at 300 dots an inch.");
  }
}
