package rickyard.intake.isolate;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import rickyard.intake.grid.ReadingProgress;

/**
 * The bytes between parent and child.
 *
 * <p>To the child: a setup, then requests; each block is a length and as many bytes. From the
 * child: {@link #READY} once, then for each request frames of {@link #PROGRESS} and {@link #PART},
 * ended by {@link #END} or {@link #FAILED}.
 */
final class Frames {
  /** Says that what comes is a child of this program and this version of the protocol. */
  static final int READY = 0x52594301;

  static final int PROGRESS = 'P';
  static final int PART = 'A';
  static final int END = 'Z';
  static final int FAILED = 'F';

  /** Bytes of one part of an answer, at most. */
  static final int PART_BYTES = 1 << 16;

  private Frames() {}

  static void writeBlock(DataOutputStream out, byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  static byte[] readBlock(DataInputStream in) throws IOException {
    byte[] bytes = new byte[in.readInt()];
    in.readFully(bytes);
    return bytes;
  }

  /** Cuts an answer into parts. */
  static final class Parts extends OutputStream {
    private final DataOutputStream out;
    private final byte[] part = new byte[PART_BYTES];
    private int filled;

    Parts(DataOutputStream out) {
      this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
      if (filled == part.length) {
        send();
      }
      part[filled++] = (byte) b;
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      int at = from;
      int left = length;
      while (left > 0) {
        if (filled == part.length) {
          send();
        }
        int some = Math.min(left, part.length - filled);
        System.arraycopy(bytes, at, part, filled, some);
        filled += some;
        at += some;
        left -= some;
      }
    }

    private void send() throws IOException {
      out.writeByte(PART);
      out.writeInt(filled);
      out.write(part, 0, filled);
      filled = 0;
    }

    void end() throws IOException {
      if (filled > 0) {
        send();
      }
      out.writeByte(END);
      out.flush();
    }
  }

  /** Puts an answer together again and passes progress on. */
  static final class Answer extends InputStream {
    private final DataInputStream in;
    private final ReadingProgress progress;
    private int left;
    private boolean ended;

    Answer(DataInputStream in, ReadingProgress progress) {
      this.in = in;
      this.progress = progress;
    }

    /** The child says that it failed; its next answer may be good. */
    static final class FailedException extends IOException {
      private static final long serialVersionUID = 1L;
    }

    private boolean hasMore() throws IOException {
      while (left == 0 && !ended) {
        int type = in.readUnsignedByte();
        switch (type) {
          case PROGRESS -> progress.reached(what(in.readByte()), in.readInt(), in.readInt());
          case PART -> left = partLength(in.readInt());
          case END -> ended = true;
          case FAILED -> throw new FailedException();
          default -> throw new java.io.StreamCorruptedException("frame " + type);
        }
      }
      return !ended;
    }

    private static String what(byte code) {
      return code == 'p' ? "pages" : code == 's' ? "samples" : "rows";
    }

    private static int partLength(int length) throws IOException {
      if (length < 1 || length > PART_BYTES) {
        throw new java.io.StreamCorruptedException("part of " + length);
      }
      return length;
    }

    @Override
    public int read() throws IOException {
      if (!hasMore()) {
        return -1;
      }
      left--;
      return in.readUnsignedByte();
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      if (length == 0) {
        return 0;
      }
      if (!hasMore()) {
        return -1;
      }
      int some = in.read(into, from, Math.min(length, left));
      if (some < 0) {
        throw new java.io.EOFException();
      }
      left -= some;
      return some;
    }

    /** Waits for the end behind the last byte. */
    boolean isAtEnd() throws IOException {
      return !hasMore();
    }
  }
}
