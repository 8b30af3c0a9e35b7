package rickyard.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The demo office's papers, as seeds to damage. */
public final class GoodReports {
  private GoodReports() {}

  /** All files of the demo inbox whose name ends so, in the order of their names. */
  public static List<Path> files(String end) {
    try (Stream<Path> files = Files.list(inbox())) {
      return files.filter(f -> f.toString().endsWith(end)).sorted().toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static Path inbox() {
    try {
      URI found = GoodReports.class.getResource("/demo/office/inbox").toURI();
      return Path.of(found);
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** The bytes of all files whose name ends so. */
  public static Stream<byte[]> bytes(String end) {
    return files(end).stream().map(GoodReports::content);
  }

  /** The bytes of a file. */
  public static byte[] content(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** A PDF with its streams unpacked, so that a changed byte changes what is drawn. */
  public static byte[] unpacked(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf);
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      for (COSObjectKey key : List.copyOf(document.getDocument().getXrefTable().keySet())) {
        if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSStream stream) {
          unpack(stream);
        }
      }
      document.save(out, CompressParameters.NO_COMPRESSION);
      return out.toByteArray();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static void unpack(COSStream stream) throws IOException {
    COSDictionary dictionary = stream;
    byte[] plain;
    try (InputStream in = stream.createInputStream()) {
      plain = in.readAllBytes();
    }
    dictionary.removeItem(COSName.FILTER);
    dictionary.removeItem(COSName.DECODE_PARMS);
    try (OutputStream raw = stream.createRawOutputStream()) {
      raw.write(plain);
    }
  }
}
