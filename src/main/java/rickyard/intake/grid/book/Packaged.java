package rickyard.intake.grid.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.UnreadableException;

/**
 * The zip that a workbook comes in, looked through before any library opens it.
 *
 * <p>Every part in XML is unpacked once and thrown away: its size is counted, never believed, its
 * check sum compared, and a document type (the door of all entity tricks) ends the reading.
 */
final class Packaged {
  /** What a library holds in memory as a whole: styles, shared texts. */
  private static final int HELD_BYTES = 16 << 20;

  private static final String SHARED = "sharedStrings.xml";
  private static final byte[] TYPE = "<!DOCTYPE".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] ENTITY = "<!ENTITY".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] TEXT = "<si".getBytes(StandardCharsets.US_ASCII);

  private final ZipFile zip;
  private final ReadLimits limits;
  private final List<ZipArchiveEntry> entries;
  private long left;

  Packaged(ZipFile zip, ReadLimits limits) {
    this.zip = zip;
    this.limits = limits;
    this.entries = Collections.list(zip.getEntries());
    this.left = limits.unpackedBytes();
  }

  /** Looks all parts through; throws a reason where the workbook must not be opened. */
  void check() throws IOException {
    Set<String> names = new HashSet<>();
    for (ZipArchiveEntry entry : entries) {
      // The same name twice: two readers would read two different workbooks.
      if (!names.add(entry.getName()) || names.size() > 20 * limits.parts()) {
        throw Book.damaged();
      }
      if (entry.getGeneralPurposeBit().usesEncryption()) {
        throw Book.encrypted();
      }
      if (entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels")) {
        look(entry);
      }
    }
  }

  boolean has(String name) {
    return find(name).isPresent();
  }

  Optional<ZipArchiveEntry> find(String name) {
    return entries.stream().filter(e -> e.getName().equals(name)).findFirst();
  }

  /** The first part whose name fits. */
  Optional<ZipArchiveEntry> matching(String pattern) {
    return entries.stream().filter(e -> e.getName().matches(pattern)).findFirst();
  }

  InputStream open(ZipArchiveEntry entry) throws IOException {
    return zip.getInputStream(entry);
  }

  private void look(ZipArchiveEntry entry) throws IOException {
    boolean held =
        !entry.getName().contains("worksheets/") && !entry.getName().equals("content.xml");
    long most = Math.min(left, held ? HELD_BYTES : limits.unpackedBytes());
    long size = 0;
    int texts = 0;
    CRC32 crc = new CRC32();
    byte[] block = new byte[1 << 16];
    int kept = 0;
    try (InputStream in = zip.getInputStream(entry)) {
      for (int got; (got = in.read(block, kept, block.length - kept)) > 0; ) {
        if (size == 0 && got > 1 && isTwoBytes(block)) {
          throw Book.damaged();
        }
        crc.update(block, kept, got);
        size += got;
        if (size > most) {
          throw tooLarge();
        }
        int end = kept + got;
        if (find(block, end, TYPE) > 0 || find(block, end, ENTITY) > 0) {
          throw new UnreadableException(
              "damaged",
              "The workbook defines texts outside its cells, as no honest one does; ask for a CSV.");
        }
        texts += entry.getName().endsWith(SHARED) ? find(block, end, TEXT) : 0;
        // The last bytes are looked at again: a word may lie across two blocks.
        kept = Math.min(end, TYPE.length - 1);
        System.arraycopy(block, end - kept, block, 0, kept);
      }
    }
    left -= size;
    if (texts > limits.cells()) {
      throw new UnreadableException(
          "too-many-cells", "The workbook has more than " + limits.cells() + " texts.");
    }
    if (entry.getCrc() != -1 && entry.getCrc() != crc.getValue()) {
      throw new IOException("check sum differs");
    }
  }

  private static UnreadableException tooLarge() {
    return new UnreadableException(
        "too-large-unpacked",
        "The workbook unpacks to more than is read; ask for the report as CSV or PDF.");
  }

  private static boolean isTwoBytes(byte[] head) {
    return head[0] == 0 || head[1] == 0 || (head[0] & 0xFE) == 0xFE;
  }

  /** How often a word stands among the first bytes of a block. */
  private static int find(byte[] block, int end, byte[] word) {
    int found = 0;
    for (int at = 0; at <= end - word.length; at++) {
      if (block[at] == word[0] && startsAt(block, at, word)) {
        found++;
      }
    }
    return found;
  }

  private static boolean startsAt(byte[] block, int at, byte[] word) {
    for (int i = 1; i < word.length; i++) {
      if (block[at + i] != word[i]) {
        return false;
      }
    }
    return true;
  }
}
