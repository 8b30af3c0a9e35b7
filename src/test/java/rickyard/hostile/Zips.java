package rickyard.hostile;

import static rickyard.hostile.HostileFile.honest;
import static rickyard.hostile.HostileFile.notTaken;
import static rickyard.hostile.HostileFile.refused;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Archives: bombs, lying directories, names that want out, and what else unpacking can break on.
 */
final class Zips {
  private static final int STORED = 0;
  private static final int DEFLATED = 8;

  private Zips() {}

  /** An entry written by hand, so that every field can lie. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Entry(
      String name, int method, int flags, int crc, byte[] packed, int size, int attributes) {

    static Entry stored(String name, byte[] content) {
      return new Entry(name, STORED, 0, crcOf(content), content, content.length, 0);
    }

    static Entry deflated(String name, byte[] content) {
      return new Entry(name, DEFLATED, 0, crcOf(content), deflate(content), content.length, 0);
    }

    private static int crcOf(byte[] content) {
      CRC32 crc = new CRC32();
      crc.update(content);
      return (int) crc.getValue();
    }

    Entry withFlags(int some) {
      return new Entry(name, method, some, crc, packed, size, attributes);
    }

    Entry withSize(int some) {
      return new Entry(name, method, flags, crc, packed, some, attributes);
    }

    Entry withMethod(int some) {
      return new Entry(name, some, flags, crc, packed, size, attributes);
    }

    Entry withAttributes(int some) {
      return new Entry(name, method, flags, crc, packed, size, some);
    }

    Entry withCrc(int some) {
      return new Entry(name, method, flags, some, packed, size, attributes);
    }
  }

  static byte[] deflate(byte[] content) {
    return deflate(content, true);
  }

  private static byte[] deflate(byte[] content, boolean bare) {
    Deflater deflater = new Deflater(9, bare);
    deflater.setInput(content);
    deflater.finish();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 14];
    while (!deflater.finished()) {
      out.write(buffer, 0, deflater.deflate(buffer));
    }
    deflater.end();
    return out.toByteArray();
  }

  static byte[] zip(Entry... entries) {
    return zip(List.of(entries));
  }

  static byte[] zip(List<Entry> entries) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<Integer> places = new ArrayList<>();
    for (Entry entry : entries) {
      places.add(out.size());
      out.writeBytes(local(entry));
    }
    return ended(out, entries, places);
  }

  /** All entries point at the one local file. */
  static byte[] overlapping(Entry entry, int times) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(local(entry));
    List<Entry> entries = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (int copy = 0; copy < times; copy++) {
      entries.add(entry);
      places.add(0);
    }
    return ended(out, entries, places);
  }

  private static byte[] local(Entry entry) {
    byte[] name = entry.name().getBytes(StandardCharsets.UTF_8);
    ByteBuffer head = buffer(30 + name.length + entry.packed().length);
    head.putInt(0x04034b50).putShort((short) 20).putShort((short) (entry.flags() | 0x800));
    head.putShort((short) entry.method()).putInt(0x5C6F6000).putInt(entry.crc());
    head.putInt(entry.packed().length).putInt(entry.size());
    head.putShort((short) name.length).putShort((short) 0).put(name).put(entry.packed());
    return content(head);
  }

  private static byte[] ended(
      ByteArrayOutputStream out, List<Entry> entries, List<Integer> places) {
    int start = out.size();
    for (int at = 0; at < entries.size(); at++) {
      Entry entry = entries.get(at);
      byte[] name = entry.name().getBytes(StandardCharsets.UTF_8);
      ByteBuffer row = buffer(46 + name.length);
      row.putInt(0x02014b50).putShort((short) 0x0314).putShort((short) 20);
      row.putShort((short) (entry.flags() | 0x800)).putShort((short) entry.method());
      row.putInt(0x5C6F6000).putInt(entry.crc()).putInt(entry.packed().length);
      row.putInt(entry.size()).putShort((short) name.length).putShort((short) 0);
      row.putShort((short) 0).putShort((short) 0).putShort((short) 0).putInt(entry.attributes());
      row.putInt(places.get(at)).put(name);
      out.writeBytes(content(row));
    }
    ByteBuffer end = buffer(22);
    end.putInt(0x06054b50).putShort((short) 0).putShort((short) 0);
    end.putShort((short) entries.size()).putShort((short) entries.size());
    end.putInt(out.size() - start).putInt(start).putShort((short) 0);
    out.writeBytes(content(end));
    return out.toByteArray();
  }

  private static byte[] content(ByteBuffer buffer) {
    byte[] bytes = new byte[buffer.capacity()];
    buffer.rewind();
    buffer.get(bytes);
    return bytes;
  }

  private static ByteBuffer buffer(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** A packed entry as a gzip file. */
  static byte[] gzip(Entry entry) {
    ByteBuffer out = buffer(10 + entry.packed().length + 8);
    out.put(new byte[] {0x1F, (byte) 0x8B, 8, 0, 0, 0, 0, 0, 0, 3});
    out.put(entry.packed()).putInt(entry.crc()).putInt(entry.size());
    return content(out);
  }

  static byte[] zlib(byte[] content) {
    return deflate(content, false);
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] nested(byte[] core, int levels, int copies) {
    byte[] inner = core;
    for (int level = 0; level < levels; level++) {
      List<Entry> entries = new ArrayList<>();
      for (int copy = 0; copy < copies; copy++) {
        entries.add(Entry.deflated("level" + level + "-" + copy + ".zip", inner));
      }
      inner = zip(entries);
    }
    return inner;
  }

  private static byte[] many(int count, String name) {
    List<Entry> entries = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      entries.add(Entry.stored(name + at + ".csv", new byte[0]));
    }
    return zip(entries);
  }

  static List<HostileFile> all(Paper paper) {
    List<HostileFile> files = new ArrayList<>(bombs(paper));
    files.addAll(names(paper));
    files.addAll(lies(paper));
    files.addAll(others(paper));
    return files;
  }

  private static List<HostileFile> bombs(Paper paper) {
    return List.of(
        honestOrNot("bomb-nested.zip", "8 zips in 8 zips in 8 zips", nested(new byte[1], 3, 8)),
        honestOrNot(
            "bomb-nested-wide.zip",
            "16 by 16 by 16 zips around 1 MiB of zeros",
            nested(zip(Entry.deflated("x.csv", new byte[1 << 20])), 3, 16)),
        honestOrNot("matryoshka.zip", "12 zips inside one another", nested(new byte[1], 12, 1)),
        honestOrNot("quine.zip", "an entry that holds its own archive", quine(paper)),
        refused("zip", "many.zip", "20,000 empty files", many(20_000, "a"), "too-many-parts"),
        notTaken("zip", "just-enough.zip", "500 files of two bytes", bytesEach(500)));
  }

  private static HostileFile honestOrNot(String name, String about, byte[] bytes) {
    return honest("zip", name, about, bytes);
  }

  private static byte[] bytesEach(int count) {
    List<Entry> entries = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      entries.add(Entry.stored("x" + at, new byte[] {(byte) ('0' + at % 10), (byte) (at / 10)}));
    }
    return zip(entries);
  }

  /** A stored entry whose content is the archive that holds it, as far as its directory. */
  private static byte[] quine(Paper paper) {
    byte[] first = zip(Entry.stored("results.csv", paper.csvBytes()));
    byte[] second = zip(Entry.stored("again.zip", first), Entry.stored("me.zip", first));
    return zip(Entry.stored("again.zip", second), Entry.stored("me.zip", second));
  }

  private static List<HostileFile> names(Paper paper) {
    List<HostileFile> files = new ArrayList<>();
    List<String> names =
        List.of(
            "../../../../../../tmp/rickyard-escape.csv",
            "/tmp/rickyard-escape-absolute.csv",
            "C:\\rickyard-escape.csv",
            "..\\..\\registers\\lots.csv",
            "a\u0000b.csv",
            "new\nline,\"quoted\".csv",
            "=cmd|'/c calc'!A1.csv",
            "<script>alert(1)</script>.csv",
            "\u202Evsc.tropeR.csv",
            "n".repeat(5000) + ".csv",
            "CON.csv",
            "!/!.csv");
    for (int at = 0; at < names.size(); at++) {
      files.add(
          honest(
              "zip",
              "entry-name-" + at + ".zip",
              "an entry's name that wants out or in",
              zip(Entry.deflated(names.get(at), paper.csvBytes()))));
    }
    byte[] one = paper.csvBytes();
    files.add(
        honest(
            "zip",
            "same-name-twice.zip",
            "two files of one name",
            zip(Entry.stored("r.csv", one), Entry.stored("r.csv", paper.csvBytes()))));
    return files;
  }

  private static List<HostileFile> lies(Paper paper) {
    byte[] csv = paper.csvBytes();
    Entry good = Entry.deflated("results.csv", csv);
    byte[] whole = zip(good);
    byte[] cutData = Arrays.copyOf(good.packed(), good.packed().length / 2);
    Entry cut = new Entry("r.csv", DEFLATED, 0, good.crc(), cutData, csv.length, 0);
    return List.of(
        notTaken("zip", "size-too-small.zip", "says 10 bytes, is more", zip(good.withSize(10))),
        notTaken(
            "zip", "size-too-large.zip", "says 2 GiB, is less", zip(good.withSize(0x7FFFFFFF))),
        refused("zip", "crc.zip", "check sum wrong", zip(good.withCrc(1)), "damaged"),
        refused("zip", "cut-deflate.zip", "packed data breaks off", zip(cut), "damaged"),
        refused("zip", "encrypted.zip", "asks for a password", zip(good.withFlags(1)), "encrypted"),
        notTaken("zip", "method-99.zip", "unknown packing", zip(good.withMethod(99))),
        notTaken("zip", "stored-as-deflated.zip", "wrong packing", zip(good.withMethod(STORED))),
        refused(
            "zip",
            "symlink.zip",
            "a link to the password file",
            zip(Entry.stored("results.csv", text("/etc/passwd")).withAttributes(0xA1FF0000)),
            "link-in-container"),
        refused(
            "zip",
            "cut-directory.zip",
            "central directory cut",
            Arrays.copyOf(whole, whole.length - 30),
            "damaged"),
        refused(
            "zip",
            "no-end.zip",
            "no end of the directory",
            Arrays.copyOf(whole, whole.length - 22),
            "damaged"),
        notTaken("zip", "empty-archive.zip", "no entry at all", zip()),
        honest("zip", "before.zip", "text before the archive", joined(text("MZ junk\n"), whole)),
        honest("zip", "behind.zip", "text behind the archive", joined(whole, text("junk"))),
        notTaken("zip", "half.zip", "half an archive", Arrays.copyOf(whole, whole.length / 2)));
  }

  private static List<HostileFile> others(Paper paper) {
    byte[] tar = new byte[2048];
    byte[] name = text("../../../tmp/rickyard-escape.csv");
    System.arraycopy(name, 0, tar, 0, name.length);
    System.arraycopy(text("ustar"), 0, tar, 257, 5);
    byte[] seven = {'7', 'z', (byte) 0xBC, (byte) 0xAF, 0x27, 0x1C, 0, 4};
    return List.of(
        notTaken(
            "zip",
            "report.csv.gz",
            "a packed report",
            gzip(Entry.deflated("r.csv", paper.csvBytes()))),
        notTaken("zip", "escape.tar", "tar with a name that climbs", tar),
        notTaken("zip", "x.7z", "another packer", joined(seven, new byte[64])),
        notTaken("zip", "x.rar", "another packer", joined(text("Rar!\u001A\u0007\u0000"), tar)));
  }

  static byte[] joined(byte[] one, byte[] other) {
    byte[] both = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, both, one.length, other.length);
    return both;
  }
}
