package rickyard.intake.grid;

/** The seam between bytes and cells: bytes in, serialisable grid out. */
public interface GridReader {

  /**
   * Opens one document.
   *
   * @param bytes the document, never changed
   * @param name its name, only as a hint for a person's sentence; content decides the kind
   * @return cells, parts or a plain reason; never throws for bad input
   */
  Opened open(byte[] bytes, String name);
}
