package rickyard.intake.grid;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** Takes a zip apart; sizes are counted while unpacking, never believed. */
final class ZipParts {
  private final ReadLimits limits;

  ZipParts(ReadLimits limits) {
    this.limits = limits;
  }

  Opened open(byte[] bytes) {
    try (ZipFile zip =
        ZipFile.builder()
            .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
            .setIgnoreLocalFileHeader(false)
            .get()) {
      List<ZipArchiveEntry> entries = Collections.list(zip.getEntries());
      Optional<Opened> office = OfficeZip.open(bytes, zip, entries, limits);
      if (office.isPresent()) {
        return office.get();
      }
      return new Opened.Parts(ContentKind.ZIP.label(), parts(zip, entries));
    } catch (IOException broken) {
      throw new UnreadableException(
          "damaged", "The zip archive is damaged and cannot be unpacked; ask for it again.");
    }
  }

  private List<Part> parts(ZipFile zip, List<ZipArchiveEntry> entries) throws IOException {
    List<Part> parts = new ArrayList<>();
    long left = limits.unpackedBytes();
    for (ZipArchiveEntry entry : entries) {
      if (entry.isDirectory()) {
        continue;
      }
      if (parts.size() == limits.parts()) {
        throw PartName.tooMany(limits);
      }
      refuse(zip, entry);
      byte[] unpacked = unpack(zip, entry, left);
      left -= unpacked.length;
      parts.add(new Part(PartName.of(entry.getName(), parts.size() + 1), unpacked));
    }
    if (parts.isEmpty()) {
      throw new UnreadableException("empty", "The zip archive holds no files; ask for it again.");
    }
    return parts;
  }

  private static void refuse(ZipFile zip, ZipArchiveEntry entry) {
    if (entry.getGeneralPurposeBit().usesEncryption()) {
      throw new UnreadableException(
          "encrypted", "The zip archive asks for a password; unpack it and put the files in.");
    }
    if (entry.isUnixSymlink()) {
      throw new UnreadableException(
          "link-in-container",
          "The zip archive holds a link instead of a file; ask for the files.");
    }
    if (!zip.canReadEntryData(entry)) {
      throw new UnreadableException(
          "unsupported-kind",
          "The zip archive is packed in a way that is not read; unpack it and put the files in.");
    }
  }

  private byte[] unpack(ZipFile zip, ZipArchiveEntry entry, long left) throws IOException {
    // A document above the limit is cut nowhere: one byte more than allowed proves it too large.
    long allowed = Math.min(left, limits.bytes());
    byte[] unpacked;
    try (InputStream in = zip.getInputStream(entry)) {
      unpacked = in.readNBytes((int) Math.min(Integer.MAX_VALUE - 8, allowed + 1));
    }
    if (unpacked.length > allowed) {
      throw new UnreadableException(
          "too-large-unpacked",
          "The zip archive unpacks to more than is read; unpack it and put the files in.");
    }
    if (entry.getCrc() != -1 && entry.getCrc() != crc(unpacked)) {
      throw new IOException("check sum differs");
    }
    return unpacked;
  }

  private static long crc(byte[] bytes) {
    java.util.zip.CRC32 crc = new java.util.zip.CRC32();
    crc.update(bytes);
    return crc.getValue();
  }
}
