package rickyard.report.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collections;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** A workbook with the morning's day in the place of every clock time. */
final class Repacked {
  private static final String CORE = "docProps/core.xml";
  private static final Pattern TIME =
      Pattern.compile("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}[0-9.]*Z");

  private Repacked() {}

  static void write(byte[] workbook, LocalDate day, OutputStream out) throws IOException {
    ZipOutputStream packed = new ZipOutputStream(out, StandardCharsets.UTF_8);
    try (ZipFile file = ZipFile.builder().setByteArray(workbook).get()) {
      for (ZipArchiveEntry from : Collections.list(file.getEntriesInPhysicalOrder())) {
        ZipEntry entry = new ZipEntry(from.getName());
        // A zip holds local times: no zone of this machine comes into it.
        entry.setTimeLocal(day.atStartOfDay());
        packed.putNextEntry(entry);
        try (InputStream in = file.getInputStream(from)) {
          if (from.getName().equals(CORE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            packed.write(dated(text, day).getBytes(StandardCharsets.UTF_8));
          } else {
            in.transferTo(packed);
          }
        }
        packed.closeEntry();
      }
    }
    packed.finish();
  }

  private static String dated(String properties, LocalDate day) {
    return TIME.matcher(properties).replaceAll(day + "T00:00:00Z");
  }
}
