package rickyard.intake.isolate;

import static java.util.Objects.requireNonNull;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rickyard.core.forage.SharedValues;
import rickyard.intake.InboxReader;
import rickyard.intake.ReadDocument;
import rickyard.intake.ReadFile;
import rickyard.intake.grid.ReadingProgress;
import rickyard.intake.grid.Sha256;

/**
 * Reads files in children. A file on which a child hangs, bursts, ends or answers nonsense gets one
 * more try alone in a fresh child and is then refused with the cause; the others go on.
 *
 * <p>Children are started when they are needed and at most as many as asked for; all are gone when
 * this is closed or the program ends.
 */
public final class IsolatedIntake implements InboxReader, AutoCloseable {
  private final ProcessLimits limits;
  private final Function<String, ReadingProgress> progress;
  private final ChildCommand command;
  private final byte[] told;
  private final Pool pool;
  private final Object large = new Object();
  private final SharedValues shared = new SharedValues();

  /**
   * Prepares the reading; starts nothing yet.
   *
   * @param setup the dictionary and what is read of a document
   * @param limits what one file may cost
   * @param most children at a time, from 1
   * @param progress told by file name how far a long file is
   */
  public IsolatedIntake(
      ChildSetup setup,
      ProcessLimits limits,
      int most,
      Function<String, ReadingProgress> progress) {
    this(setup, limits, most, progress, ChildCommand.ofThisProcess());
  }

  IsolatedIntake(
      ChildSetup setup,
      ProcessLimits limits,
      int most,
      Function<String, ReadingProgress> progress,
      ChildCommand command) {
    this.limits = requireNonNull(limits, "limits");
    this.progress = requireNonNull(progress, "progress");
    this.command = requireNonNull(command, "command");
    this.told = bytes(setup);
    this.pool = new Pool(most, () -> start(limits.heapMib()));
  }

  private static byte[] bytes(ChildSetup setup) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(setup);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** Starts the first child while the caller does something else. */
  public void warm() {
    pool.warm();
  }

  @Override
  public ReadFile read(byte[] bytes, String name) {
    if (!limits.isLarge(bytes.length)) {
      return read(pool, bytes, name);
    }
    // One large file at a time, in a child of its own that gives its memory back at the end.
    synchronized (large) {
      try (Pool alone = new Pool(1, () -> start(limits.heapMib(bytes.length)))) {
        return read(alone, bytes, name);
      }
    }
  }

  private Child start(int heapMib) {
    return Child.start(command.withHeap(heapMib), told, shared);
  }

  private ReadFile read(Pool children, byte[] bytes, String name) {
    Child child = children.take();
    try {
      return child.read(bytes, name, limits, progress.apply(name));
    } catch (ChildFaultException first) {
      child.destroy();
      child = children.fresh();
      return again(children, child, bytes, name);
    } finally {
      children.giveBack(child);
    }
  }

  private ReadFile again(Pool children, Child child, byte[] bytes, String name) {
    try {
      return child.read(bytes, name, limits, progress.apply(name));
    } catch (ChildFaultException second) {
      child.destroy();
      children.requireOpen();
      return refused(second.fault(), bytes);
    }
  }

  private ReadFile refused(Fault fault, byte[] bytes) {
    return new ReadFile(
        List.of(
            new ReadDocument(
                "",
                Sha256.of(bytes),
                bytes.length,
                "other",
                false,
                Optional.empty(),
                fault.code(),
                fault.sentence(limits, bytes.length))));
  }

  /** How many children run now. */
  int running() {
    return pool.running();
  }

  /** Process ids of the children that run now. */
  List<Long> pids() {
    return pool.pids();
  }

  /** Ends all children. */
  @Override
  public void close() {
    pool.close();
  }
}
