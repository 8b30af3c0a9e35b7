package rickyard.intake.isolate;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import rickyard.intake.InboxReader;

/**
 * The process that reads files: it takes bytes from its standard input and gives answers on its
 * standard output until the input ends, which is when its parent ends, however that happens.
 */
public final class ReadingChild {
  /** Ended with its parent or at its parent's wish. */
  private static final int DONE = 0;

  private static final long TELL_NANOS = TimeUnit.MILLISECONDS.toNanos(250);

  /** A file to read. */
  private static final class Request {
    private final String name;
    private final byte[] bytes;

    private Request(String name, byte[] bytes) {
      this.name = name;
      this.bytes = bytes;
    }
  }

  private final DataInputStream in;
  private final DataOutputStream out;
  private final BlockingQueue<Request> requests = new LinkedBlockingQueue<>();

  private long told = System.nanoTime();

  ReadingChild(InputStream in, OutputStream out) {
    this.in = new DataInputStream(new BufferedInputStream(in));
    this.out = new DataOutputStream(new BufferedOutputStream(out, Frames.PART_BYTES));
  }

  /**
   * Runs until the parent is gone.
   *
   * @param arguments the parent's process id
   */
  public static void main(String[] arguments) throws Exception {
    InputStream in = new FileInputStream(FileDescriptor.in);
    OutputStream out = new FileOutputStream(FileDescriptor.out);
    // What a library prints must not fall among the answers.
    System.setOut(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
    System.setIn(InputStream.nullInputStream());
    endWith(Long.parseLong(arguments[0]));
    new ReadingChild(in, out).run();
  }

  /** A second watch besides the end of the input; a parent that is gone already ends it at once. */
  private static void endWith(long parent) {
    Thread watch =
        new Thread(
            () -> {
              ProcessHandle.of(parent).ifPresent(handle -> handle.onExit().join());
              end();
            },
            "parent");
    watch.setDaemon(true);
    watch.start();
  }

  private void run() throws IOException, ClassNotFoundException, InterruptedException {
    ReaderMaker maker = ReaderMaker.find();
    ChildSetup setup;
    try (ObjectInputStream objects =
        new ObjectInputStream(new ByteArrayInputStream(Frames.readBlock(in)))) {
      setup = (ChildSetup) objects.readObject();
    }
    InboxReader reader = maker.make(setup, this::tell);
    out.writeInt(Frames.READY);
    out.flush();
    Thread listener = new Thread(this::listen, "listen");
    listener.setDaemon(true);
    listener.start();
    while (true) {
      answer(reader, requests.take());
    }
  }

  /** Sends progress, seldom enough that it costs nothing. */
  void tell(String what, int done, int total) {
    long now = System.nanoTime();
    if (now - told < TELL_NANOS) {
      return;
    }
    told = now;
    try {
      out.writeByte(Frames.PROGRESS);
      out.writeByte(what.charAt(0));
      out.writeInt(done);
      out.writeInt(total);
      out.flush();
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  /** Always waits for input, so that the parent's end is seen even while a file hangs. */
  private void listen() {
    try {
      while (true) {
        String name = new String(Frames.readBlock(in), StandardCharsets.UTF_8);
        requests.add(new Request(name, Frames.readBlock(in)));
      }
    } catch (IOException gone) {
      end();
    }
  }

  /** Ends at once, and with it the program that reads a picture for it. */
  private static void end() {
    ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly);
    Runtime.getRuntime().halt(DONE);
  }

  private void answer(InboxReader reader, Request request) throws IOException {
    try {
      Frames.Parts parts = new Frames.Parts(out);
      Answers.write(reader.read(request.bytes, request.name), parts);
      parts.end();
    } catch (RuntimeException | StackOverflowError | LinkageError failed) {
      out.writeByte(Frames.FAILED);
      out.flush();
    }
  }
}
