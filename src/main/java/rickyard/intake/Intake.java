package rickyard.intake;

import static java.util.Objects.requireNonNull;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.GridReader;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.Part;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;

/** Reads a file of the inbox, and whatever documents it holds, into reports. */
public final class Intake {
  private final GridReader reader;
  private final Interpreter interpreter;
  private final ReadLimits limits;

  public Intake(GridReader reader, Interpreter interpreter, ReadLimits limits) {
    this.reader = requireNonNull(reader, "reader");
    this.interpreter = requireNonNull(interpreter, "interpreter");
    this.limits = requireNonNull(limits, "limits");
  }

  /**
   * Reads one file.
   *
   * @param bytes its bytes
   * @param name its name, as a hint for a person's sentence only
   * @return the file's own document and those inside it; never throws for bad input
   */
  public ReadFile read(byte[] bytes, String name) {
    List<ReadDocument> documents = new ArrayList<>();
    read(bytes, name, "", 0, new Budget(limits.unpackedBytes(), limits.parts()), documents);
    return new ReadFile(documents);
  }

  private void read(
      byte[] bytes, String name, String part, int depth, Budget budget, List<ReadDocument> into) {
    String sha256 = sha256(bytes);
    Opened opened = reader.open(bytes, name);
    into.add(
        opened.fold(
            cells -> interpreted(cells.kind(), cells.grid(), part, sha256, bytes.length),
            parts ->
                new ReadDocument(
                    part, sha256, bytes.length, parts.kind(), true, Optional.empty(), "", ""),
            bad ->
                new ReadDocument(
                    part,
                    sha256,
                    bytes.length,
                    bad.kind(),
                    false,
                    Optional.empty(),
                    bad.code(),
                    bad.reason())));
    List<Part> inside = opened.fold(cells -> List.of(), Opened.Parts::parts, bad -> List.of());
    int number = 0;
    for (Part child : inside) {
      number++;
      String at = (part.isEmpty() ? "" : part + "/") + number + ":" + child.name();
      if (depth + 1 > limits.depth() || !budget.takes(child.bytes().length)) {
        into.add(beyondLimits(child, at));
      } else {
        read(child.bytes(), child.name(), at, depth + 1, budget, into);
      }
    }
  }

  private static ReadDocument beyondLimits(Part child, String at) {
    return new ReadDocument(
        at,
        sha256(child.bytes()),
        child.bytes().length,
        "other",
        false,
        Optional.empty(),
        "container-too-large",
        "The container holds too much, or too deeply; unpack it and put the files in the inbox.");
  }

  private ReadDocument interpreted(
      String kind, Grid grid, String part, String sha256, long bytes) {
    return interpreter
        .interpret(grid, sha256)
        .fold(
            found ->
                new ReadDocument(
                    part, sha256, bytes, kind, false, Optional.of(found.report()), "", ""),
            none ->
                new ReadDocument(
                    part, sha256, bytes, kind, false, Optional.empty(), none.code(), none.reason()));
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Text that names this way of reading: part of the digest under which results are cached. */
  public String describe() {
    return limits.toString();
  }

  /** What all documents of one file may unpack to, together. */
  private static final class Budget {
    private long bytes;
    private int parts;

    Budget(long bytes, int parts) {
      this.bytes = bytes;
      this.parts = parts;
    }

    boolean takes(long size) {
      bytes -= size;
      parts--;
      return bytes >= 0 && parts >= 0;
    }
  }
}
