package rickyard.intake.isolate;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import rickyard.intake.InboxReader;
import rickyard.intake.ReadFile;
import rickyard.intake.grid.ReadingProgress;

/**
 * Stands in the child where the usual reader stands; a file's name says how it goes wrong. Files of
 * any other name are read as usual.
 */
public final class FaultyReaderMaker implements ReaderMaker {
  @Override
  public InboxReader make(ChildSetup setup, ReadingProgress progress) {
    InboxReader usual = ReaderMaker.usual(setup, progress);
    return (bytes, name) -> {
      String last = name.substring(name.lastIndexOf('/') + 1);
      int dot = last.indexOf('.');
      return switch (dot < 0 ? last : last.substring(0, dot)) {
        case "bad-hang" -> hang(Long.MAX_VALUE);
        case "bad-wait" -> sleep();
        case "bad-burst" -> burst();
        case "bad-exit" -> exit();
        case "bad-throw" -> throw new IllegalArgumentException("planned");
        case "bad-deep" -> deep(bytes.length);
        case "bad-noise" -> noise(usual, bytes, name);
        case "bad-foreign" -> usual.read(new byte[] {'x'}, name);
        case "chatty" -> chatty(usual, bytes, name, progress);
        case "first-time-bad" -> firstTimeBad(usual, bytes, name);
        default -> usual.read(bytes, name);
      };
    };
  }

  private static ReadFile hang(long until) {
    long turns = 0;
    while (turns < until) {
      turns = (turns + 1) % 1_000_000;
    }
    throw new IllegalStateException("never comes here");
  }

  private static ReadFile sleep() {
    try {
      Thread.sleep(3_600_000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    throw new IllegalStateException("never comes here");
  }

  private static ReadFile burst() {
    List<byte[]> all = new ArrayList<>();
    while (true) {
      all.add(new byte[1 << 20]);
      if (all.size() > 1 << 20) {
        throw new IllegalStateException("never comes here: " + all.size());
      }
    }
  }

  private static ReadFile exit() {
    Runtime.getRuntime().halt(7);
    throw new IllegalStateException("never comes here");
  }

  private static ReadFile deep(int level) {
    return level < 0 ? exit() : deep(level + 1);
  }

  /** Writes past the child's guard, straight among the answers. */
  private static ReadFile noise(InboxReader usual, byte[] bytes, String name) {
    try {
      // Not closed: the descriptor is the child's way to its parent.
      OutputStream raw = new FileOutputStream(FileDescriptor.out);
      raw.write("noise".getBytes(java.nio.charset.StandardCharsets.UTF_8));
      raw.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return usual.read(bytes, name);
  }

  private static ReadFile chatty(
      InboxReader usual, byte[] bytes, String name, ReadingProgress progress) {
    System.out.println("a library says something");
    System.err.println("x".repeat(1 << 20));
    try {
      Thread.sleep(400);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    progress.reached("rows", 3, 7);
    return usual.read(bytes, name);
  }

  /** The bytes name a file that is made at the first try. */
  private static ReadFile firstTimeBad(InboxReader usual, byte[] bytes, String name) {
    Path mark = Path.of(new String(bytes, java.nio.charset.StandardCharsets.UTF_8).strip());
    if (Files.exists(mark)) {
      return usual.read(bytes, name);
    }
    try {
      Files.createFile(mark);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return exit();
  }
}
