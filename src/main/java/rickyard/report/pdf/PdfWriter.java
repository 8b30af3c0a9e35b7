package rickyard.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.w3c.dom.Document;

/**
 * Pages to PDF. Identity and dates come from the page and the morning's day, fonts are embedded,
 * nothing is fetched.
 */
public final class PdfWriter {
  private static final byte[] REGULAR = font("DejaVuSans.ttf");
  private static final byte[] BOLD = font("DejaVuSans-Bold.ttf");
  private static final String FAMILY = "DejaVu Sans";

  /** Where the directory of a font begins, and the length of an entry. */
  private static final int TABLES = 12;

  private static final int TABLE = 16;

  private static final int BOLD_WEIGHT = 700;
  private static final int REGULAR_WEIGHT = 400;

  static {
    // The library logs pieces of pages; names stay out of logs.
    XRLog.setLoggingEnabled(false);
  }

  private PdfWriter() {}

  /**
   * Writes a page as a PDF.
   *
   * @param html the whole page, with its style in it
   * @param day the day that the document bears
   */
  public static Pdf of(String html, LocalDate day) {
    Document page = W3CDom.convert(Jsoup.parse(html));
    try (PDDocument document = new PDDocument();
        PdfBoxRenderer renderer = builder(page, document).buildPdfRenderer()) {
      renderer.createPDFWithoutClosing();
      document.setDocumentId(identity(html));
      describe(document, day);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return new Pdf(out.toByteArray(), document.getNumberOfPages());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PdfRendererBuilder builder(Document page, PDDocument document) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(document);
    builder.withW3cDocument(page, "");
    builder.useUriResolver((base, uri) -> null);
    builder.useReplacementText("\uFFFD");
    builder.useFont(
        () -> new ByteArrayInputStream(REGULAR), FAMILY, REGULAR_WEIGHT, FontStyle.NORMAL, true);
    builder.useFont(
        () -> new ByteArrayInputStream(BOLD), FAMILY, BOLD_WEIGHT, FontStyle.NORMAL, true);
    return builder;
  }

  private static void describe(PDDocument document, LocalDate day) {
    Calendar noon = Calendar.getInstance(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
    noon.setTimeInMillis(day.atTime(12, 0).toInstant(ZoneOffset.UTC).toEpochMilli());
    PDDocumentInformation about = document.getDocumentInformation();
    about.setCreationDate(noon);
    about.setModificationDate(noon);
    about.setProducer("Rickyard");
    about.setCreator("Rickyard");
  }

  private static Long identity(String html) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(html.getBytes(StandardCharsets.UTF_8));
      return ByteBuffer.wrap(hash).getLong();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * The font without its table of substitutions: a ligature in an id would be copied out of the
   * paper as one character, and found by no search.
   */
  private static byte[] withoutLigatures(byte[] font) {
    int tables = ByteBuffer.wrap(font).getShort(Short.BYTES * 2);
    for (int i = 0; i < tables; i++) {
      int at = TABLES + i * TABLE;
      if (new String(font, at, Integer.BYTES, StandardCharsets.US_ASCII).equals("GSUB")) {
        font[at] = '-';
      }
    }
    return font;
  }

  private static byte[] font(String name) {
    try (InputStream in = PdfWriter.class.getResourceAsStream("/rickyard/report/fonts/" + name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing");
      }
      return withoutLigatures(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
