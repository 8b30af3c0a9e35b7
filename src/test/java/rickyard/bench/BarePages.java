package rickyard.bench;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;

/**
 * The library that prints our sheets, and nothing else: ready pages to PDF in a bare loop.
 *
 * <p>{@code BarePages TIMES PAGE...}
 */
public final class BarePages {
  private BarePages() {}

  public static void main(String[] args) throws Exception {
    XRLog.setLoggingEnabled(false);
    byte[] regular = font("DejaVuSans.ttf");
    byte[] bold = font("DejaVuSans-Bold.ttf");
    int times = Integer.parseInt(args[0]);
    long bytes = 0;
    for (int i = 0; i < times; i++) {
      String html = Files.readString(Path.of(args[1 + i % (args.length - 1)]));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.withW3cDocument(W3CDom.convert(Jsoup.parse(html)), "");
      builder.useFont(
          () -> new ByteArrayInputStream(regular), "DejaVu Sans", 400, FontStyle.NORMAL, true);
      builder.useFont(
          () -> new ByteArrayInputStream(bold), "DejaVu Sans", 700, FontStyle.NORMAL, true);
      builder.toStream(out);
      builder.run();
      bytes += out.size();
    }
    System.out.println(times + " pages, " + bytes + " bytes");
  }

  private static byte[] font(String name) throws Exception {
    try (InputStream in = BarePages.class.getResourceAsStream("/rickyard/report/fonts/" + name)) {
      return in.readAllBytes();
    }
  }
}
