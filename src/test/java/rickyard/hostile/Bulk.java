package rickyard.hostile;

import static rickyard.hostile.HostileFile.honest;
import static rickyard.hostile.HostileFile.notTaken;
import static rickyard.hostile.HostileFile.refused;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Bombs: small files that unpack to hundreds of MiB. They are packed piece by piece. */
final class Bulk {
  private static final int PIECE = 1 << 20;

  private Bulk() {}

  /** Packed content with the check sum and size of what it unpacks to. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Packed(byte[] bytes, int crc, int size) {
    Zips.Entry entry(String name) {
      return new Zips.Entry(name, 8, 0, crc, bytes, size, 0);
    }
  }

  /** A text, so many MiB of one character, and another text. */
  static Packed packed(boolean bare, String head, char filler, int mib, String tail) {
    Deflater deflater = new Deflater(6, bare);
    CRC32 crc = new CRC32();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] piece = new byte[PIECE];
    Arrays.fill(piece, (byte) filler);
    byte[] first = head.getBytes(StandardCharsets.US_ASCII);
    byte[] last = tail.getBytes(StandardCharsets.US_ASCII);
    feed(deflater, crc, out, first);
    for (int at = 0; at < mib; at++) {
      feed(deflater, crc, out, piece);
    }
    feed(deflater, crc, out, last);
    deflater.finish();
    drain(deflater, out);
    deflater.end();
    int size = first.length + mib * PIECE + last.length;
    return new Packed(out.toByteArray(), (int) crc.getValue(), size);
  }

  private static void feed(
      Deflater deflater, CRC32 crc, ByteArrayOutputStream out, byte[] content) {
    crc.update(content);
    deflater.setInput(content);
    drain(deflater, out);
  }

  private static void drain(Deflater deflater, ByteArrayOutputStream out) {
    byte[] buffer = new byte[1 << 14];
    int count = deflater.deflate(buffer);
    while (count > 0) {
      out.write(buffer, 0, count);
      count = deflater.deflate(buffer);
    }
  }

  static List<HostileFile> all(Paper paper) {
    Zips.Entry large = packed(true, "", '\0', 200, "").entry("results.csv");
    Zips.Entry small = packed(true, "", '\0', 8, "").entry("part.csv");
    byte[] zeros = packed(false, "", '\0', 300, "").bytes();
    byte[] blanks = packed(false, "", ' ', 300, "").bytes();
    String picture =
        "/Type/XObject/Subtype/Image/Width 60000/Height 60000/BitsPerComponent 8"
            + "/ColorSpace/DeviceGray/Filter/FlateDecode";
    return List.of(
        refused("zip", "bomb-flat.zip", "200 MiB of zeros", Zips.zip(large), "too-large-unpacked"),
        refused(
            "zip",
            "bomb-wide.zip",
            "400 entries of 8 MiB, each small enough",
            Zips.zip(Collections.nCopies(400, small)),
            "too-large-unpacked"),
        refused(
            "zip",
            "bomb-overlapping.zip",
            "300 names for the same packed 8 MiB",
            Zips.overlapping(small, 300),
            "too-large-unpacked"),
        notTaken("zip", "bomb.gz", "gzip of 200 MiB", Zips.gzip(large)),
        refused(
            "pdf",
            "bomb-flate.pdf",
            "a stream of 300 MiB",
            Pdfs.good(paper).stream("/Filter/FlateDecode", zeros).bytes(),
            "too-large-unpacked"),
        notTaken("pdf", "bomb-content.pdf", "300 MiB of blanks to draw", drawn(blanks)),
        notTaken(
            "pdf",
            "bomb-twice.pdf",
            "packed twice",
            Pdfs.good(paper).stream("/Filter[/FlateDecode/FlateDecode]", Zips.zlib(zeros))
                .set(3, "<</Type/Page/Parent 2 0 R/MediaBox[0 0 9 9]/Contents 6 0 R>>")
                .bytes()),
        honest(
            "pdf",
            "bomb-picture.pdf",
            "a picture of 60,000 by 60,000",
            RawPdf.page(
                    "",
                    RawPdf.FONTS + "/XObject<</I 6 0 R>>",
                    RawPdf.report(paper) + "q 9 0 0 9 0 0 cm /I Do Q")
                .stream(picture, zeros)
                .bytes()),
        notTaken("workbook", "bomb.xlsx", "a sheet of 200 MiB of blanks", Markup.blankSheet(200)));
  }

  private static byte[] drawn(byte[] packed) {
    return new RawPdf()
            .add("<</Type/Catalog/Pages 2 0 R>>")
            .add("<</Type/Pages/Kids[3 0 R]/Count 1>>")
            .add("<</Type/Page/Parent 2 0 R/MediaBox[0 0 9 9]/Contents 4 0 R>>")
            .stream("/Filter/FlateDecode", packed)
            .bytes();
  }
}
