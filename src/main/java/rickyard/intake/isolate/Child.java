package rickyard.intake.isolate;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import rickyard.core.forage.SharedValues;
import rickyard.intake.ReadDocument;
import rickyard.intake.ReadFile;
import rickyard.intake.grid.ReadingProgress;
import rickyard.intake.grid.Sha256;

/** A running child, seen from its parent. One thread at a time asks it. */
final class Child {
  /** What {@code ExitOnOutOfMemoryError} ends with. */
  private static final int OUT_OF_MEMORY = 3;

  private static final Duration START = Duration.ofSeconds(60);
  private static final int SENTENCE = 300;

  private final Process process;
  private final Watch watch;
  private final DataInputStream in;
  private final DataOutputStream out;
  private final Complaint complaint;
  private final SharedValues shared;
  private boolean ready;

  private Child(Process process, SharedValues shared) {
    this.process = process;
    this.shared = shared;
    this.watch = new Watch(process);
    this.in = new DataInputStream(new BufferedInputStream(process.getInputStream()));
    this.out = new DataOutputStream(new BufferedOutputStream(process.getOutputStream()));
    this.complaint = Complaint.listenTo(process.getErrorStream());
  }

  /**
   * Starts a child and tells it what it needs; does not wait until it is ready.
   *
   * @param setup the serialised {@link ChildSetup}
   * @param shared what its answers may have in common with those of other children
   * @throws ReaderUnavailableException if the system starts no process
   */
  static Child start(ChildCommand command, byte[] setup, SharedValues shared) {
    Child child;
    try {
      child = new Child(command.builder().start(), shared);
    } catch (IOException e) {
      throw new ReaderUnavailableException(String.valueOf(e.getMessage()));
    }
    try {
      Frames.writeBlock(child.out, setup);
      child.ask(Probe.bytes(), Probe.NAME);
    } catch (IOException gone) {
      throw child.unavailable();
    }
    return child;
  }

  /**
   * Reads one file.
   *
   * @throws ChildFaultException if no usable answer came; the child must not be used again
   * @throws ReaderUnavailableException if the child never became ready
   */
  ReadFile read(byte[] bytes, String name, ProcessLimits limits, ReadingProgress progress)
      throws ChildFaultException {
    awaitReady(limits);
    watch.begin(limits.computing(bytes.length), limits.idle(), limits.helped());
    try {
      ask(bytes, name);
      return answer(bytes, limits, progress);
    } catch (Frames.Answer.FailedException failed) {
      throw new ChildFaultException(Fault.FAILED);
    } catch (IOException broken) {
      throw new ChildFaultException(why(broken));
    } finally {
      watch.end();
    }
  }

  private void ask(byte[] bytes, String name) throws IOException {
    Frames.writeBlock(out, name.getBytes(StandardCharsets.UTF_8));
    Frames.writeBlock(out, bytes);
    out.flush();
  }

  /** The answer, which must be about the bytes that were sent. */
  private ReadFile answer(byte[] bytes, ProcessLimits limits, ReadingProgress progress)
      throws IOException, ChildFaultException {
    Frames.Answer answer = new Frames.Answer(in, progress);
    ReadFile file = Answers.read(answer, limits.answer(bytes.length), shared);
    ReadDocument itself = file.documents().get(0);
    if (!answer.isAtEnd()
        || !itself.part().isEmpty()
        || itself.bytes() != bytes.length
        || !itself.sha256().equals(Sha256.of(bytes))) {
      throw new ChildFaultException(Fault.BAD_ANSWER);
    }
    return file;
  }

  private void awaitReady(ProcessLimits limits) {
    if (ready) {
      return;
    }
    watch.begin(START, START);
    try {
      ready = in.readInt() == Frames.READY;
      answer(Probe.bytes(), limits, ReadingProgress.none());
    } catch (IOException | ChildFaultException wrong) {
      ready = false;
    } finally {
      watch.end();
    }
    if (!ready) {
      throw unavailable();
    }
  }

  private ReaderUnavailableException unavailable() {
    destroy();
    String said = complaint.text();
    return new ReaderUnavailableException(
        said.isEmpty() ? "it does not read" : said.substring(0, Math.min(SENTENCE, said.length())));
  }

  private Fault why(IOException broken) {
    if (watch.isOver()) {
      return Fault.TOO_SLOW;
    }
    boolean gone = broken instanceof EOFException || broken.getMessage() == null || ended();
    if (!gone) {
      return Fault.BAD_ANSWER;
    }
    return ended() && process.exitValue() == OUT_OF_MEMORY ? Fault.TOO_MUCH_MEMORY : Fault.STOPPED;
  }

  /** Whether the process is at its end; what closed its output needs a moment to be gone. */
  private boolean ended() {
    try {
      return process.waitFor(2, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Ends the process and whatever it started, and waits until it is gone. */
  void destroy() {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
    try {
      process.waitFor(10, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether another file may be given to it. */
  boolean isUsable() {
    return isAlive() && !watch.isOver();
  }

  /** Whether it still runs. */
  boolean isAlive() {
    return process.isAlive();
  }

  long pid() {
    return process.pid();
  }
}
