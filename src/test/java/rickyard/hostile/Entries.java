package rickyard.hostile;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Entries of an inbox that are no files: folders, pipes, links, and a file of holes. */
final class Entries {
  private static final byte[] NONE = {};

  private final Path inbox;
  private final Map<String, HostileFile> made = new TreeMap<>();

  private Entries(Path inbox) {
    this.inbox = inbox;
  }

  /** Makes them; each by the mark that its path begins with. */
  static Map<String, HostileFile> make(Path inbox) throws IOException {
    Entries entries = new Entries(inbox);
    Files.createDirectory(entries.place(9001, "folder.pdf", "a folder called PDF", "not-a-file"));
    entries.pipe(entries.place(9002, "pipe.csv", "a pipe that nobody writes to", "not-a-file"));
    entries.link(9003, "passwords.csv", "a link out of the inbox", Path.of("/etc/passwd"));
    entries.link(9004, "nowhere.csv", "a link to nothing", Path.of("/nowhere/at/all"));
    entries.link(9005, "up.csv", "a link to the folder that holds it", Path.of(".."));
    entries.link(9006, "self.csv", "a link to itself", Path.of("9006!HX-self.csv"));
    entries.link(9007, "zero.csv", "a link to a device without end", Path.of("/dev/zero"));
    Path holes = entries.place(9008, "holes.csv", "four GiB of nothing", "too-large");
    try (RandomAccessFile file = new RandomAccessFile(holes.toFile(), "rw")) {
      file.setLength(4L << 30);
    }
    return entries.made;
  }

  private Path place(int number, String name, String about, String code) {
    String mark = number + "!HX";
    made.put(mark, new HostileFile(name, "entry", about, NONE, Set.of("refused"), List.of(code)));
    return inbox.resolve(mark + "-" + name);
  }

  private void link(int number, String name, String about, Path target) throws IOException {
    Files.createSymbolicLink(place(number, name, about, "link"), target);
  }

  private void pipe(Path path) throws IOException {
    Process maker = new ProcessBuilder("mkfifo", path.toString()).start();
    try {
      if (maker.waitFor() != 0) {
        throw new IOException("no pipe could be made: " + path);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }
}
