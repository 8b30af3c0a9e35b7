package rickyard.intake.grid;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.util.Matrix;

/** A PDF drawn piece by piece, in any order, for tests. */
final class Drawing implements AutoCloseable {
  static final PDFont SANS = new PDType1Font(FontName.HELVETICA);
  static final PDFont FIXED = new PDType1Font(FontName.COURIER);

  final PDDocument document = new PDDocument();
  PDPage page = new PDPage(PDRectangle.A4);
  PDFont font = SANS;
  float size = 10;
  private PDPageContentStream content;

  Drawing() {
    document.addPage(page);
    content = opened();
  }

  private PDPageContentStream opened() {
    try {
      return new PDPageContentStream(document, page, AppendMode.APPEND, true);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** A step that draws with the library. */
  interface Step {
    void on(PDPageContentStream content) throws IOException;
  }

  Drawing draw(Step step) {
    try {
      step.on(content);
      return this;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Text that begins at x points from the left, with its base line y points from the top. */
  Drawing text(double x, double y, String text) {
    return draw(
        c -> {
          c.beginText();
          c.setFont(font, size);
          c.newLineAtOffset((float) x, (float) (page.getMediaBox().getHeight() - y));
          c.showText(text);
          c.endText();
        });
  }

  /** Text that ends at x. */
  Drawing textTo(double x, double y, String text) {
    return text(x - width(text), y, text);
  }

  /** Text in a frame of its own. */
  Drawing turned(double degrees, double x, double y, String text) {
    return draw(
        c -> {
          c.beginText();
          c.setFont(font, size);
          c.setTextMatrix(Matrix.getRotateInstance(Math.toRadians(degrees), (float) x, (float) y));
          c.showText(text);
          c.endText();
        });
  }

  Drawing box(double x, double y, double width, double height, Color color) {
    return draw(
        c -> {
          c.saveGraphicsState();
          c.setNonStrokingColor(color);
          c.addRect(
              (float) x,
              (float) (page.getMediaBox().getHeight() - y - height),
              (float) width,
              (float) height);
          c.fill();
          c.restoreGraphicsState();
        });
  }

  double width(String text) {
    try {
      return font.getStringWidth(text) / 1000 * size;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  Drawing nextPage() {
    draw(PDPageContentStream::close);
    page = new PDPage(PDRectangle.A4);
    document.addPage(page);
    content = opened();
    return this;
  }

  byte[] bytes() {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      content.close();
      document.save(out);
      return out.toByteArray();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
