package rickyard.intake.grid.pdf;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import rickyard.fuzz.GoodReports;
import rickyard.fuzz.Oracle;

/** Any bytes as a PDF: a refusal with a code, or cells in which the interpreter never fails. */
class PdfBytesFuzz {
  private static final byte[] END = "\n%%EOF\n".getBytes(StandardCharsets.US_ASCII);

  static Stream<byte[]> seeds() {
    return GoodReports.bytes(".pdf")
        .filter(PdfBytesFuzz::isWhole)
        .map(GoodReports::unpacked)
        .filter(pdf -> pdf.length < 60_000);
  }

  private static boolean isWhole(byte[] pdf) {
    return new String(pdf, StandardCharsets.ISO_8859_1).stripTrailing().endsWith("%%EOF");
  }

  @MethodSource("seeds")
  @DictionaryEntries({
    "BT",
    "ET",
    "Tj",
    "TJ",
    "Td",
    "Tm",
    "Tf",
    "Tr",
    "Tz",
    "Ts",
    "re",
    "f",
    "W n",
    "cm",
    "q",
    "Q",
    "gs",
    "Do",
    "sh",
    "BDC",
    "EMC",
    "/OC",
    "/Kids",
    "/Parent",
    "/Contents",
    "/Annots",
    "/AP",
    "/MediaBox",
    "/CropBox",
    "/Rotate",
    "/UserUnit",
    "/ToUnicode",
    "/Type3",
    "/Length",
    "/Filter",
    "0 0 0 0 0 0",
    "-1",
    "99999999999",
    "1e38",
    "<0009>",
    "beginbfchar",
    "xref",
    "/Prev",
    "endobj"
  })
  @FuzzTest(maxDuration = "30m")
  void anyBytes(byte[] bytes) {
    byte[] ended = Arrays.copyOf(bytes, bytes.length + END.length);
    System.arraycopy(END, 0, ended, bytes.length, END.length);
    Oracle.soon(() -> PdfOracle.read(ended));
  }
}
