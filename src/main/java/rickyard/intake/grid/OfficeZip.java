package rickyard.intake.grid;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import rickyard.intake.grid.book.OpenWorkbook;
import rickyard.intake.grid.book.XmlWorkbook;

/** Zips that are one office document: a workbook is read, everything else is no archive either. */
final class OfficeZip {
  private static final String SPREADSHEET = "application/vnd.oasis.opendocument.spreadsheet";

  private OfficeZip() {}

  /**
   * Opens an office document.
   *
   * @return empty if the zip is an archive of files
   */
  static Optional<Opened> open(
      byte[] bytes, ZipFile zip, List<ZipArchiveEntry> entries, ReadLimits limits)
      throws IOException {
    boolean types = has(entries, "[Content_Types].xml");
    boolean mime = has(entries, "mimetype");
    if (!types && !mime) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          types ? xml(bytes, zip, entries, limits) : openDocument(zip, entries, limits));
    } catch (UnreadableException reason) {
      return Optional.of(reason.of(ContentKind.WORKBOOK.label()));
    } catch (IOException | RuntimeException broken) {
      return Optional.of(
          ContentKind.WORKBOOK.refused(
              "damaged", "The workbook is damaged and cannot be read; ask for it again."));
    }
  }

  private static Opened xml(
      byte[] bytes, ZipFile zip, List<ZipArchiveEntry> entries, ReadLimits limits)
      throws IOException {
    if (entries.stream().anyMatch(e -> e.getName().endsWith("workbook.bin"))) {
      return ContentKind.WORKBOOK.refused(
          "unsupported-kind",
          "Binary workbooks (.xlsb) are not read; save it as .xlsx and put that in the inbox.");
    }
    boolean sheets = entries.stream().anyMatch(e -> e.getName().startsWith("xl/"));
    return sheets ? XmlWorkbook.read(bytes, zip, limits) : document();
  }

  private static Opened openDocument(ZipFile zip, List<ZipArchiveEntry> entries, ReadLimits limits)
      throws IOException {
    ZipArchiveEntry mime =
        entries.stream().filter(e -> e.getName().equals("mimetype")).findFirst().orElseThrow();
    try (InputStream in = zip.getInputStream(mime)) {
      String type = new String(in.readNBytes(200), StandardCharsets.US_ASCII).strip();
      return type.startsWith(SPREADSHEET) ? OpenWorkbook.read(zip, limits) : document();
    }
  }

  private static Opened document() {
    return ContentKind.DOCUMENT.refused(
        "unsupported-kind",
        "Office documents are not read; save it as PDF and put that in the inbox.");
  }

  private static boolean has(List<ZipArchiveEntry> entries, String name) {
    return entries.stream().anyMatch(e -> e.getName().equals(name));
  }
}
