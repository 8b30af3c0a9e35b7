package rickyard.intake;

/** The seam between the bytes of a file and what it says. */
public interface InboxReader {

  /**
   * Reads one file.
   *
   * @param bytes its bytes, never changed
   * @param name its name, as a hint for a person's sentence only
   * @return the file's own document and those inside it; never throws for bad input
   */
  ReadFile read(byte[] bytes, String name);
}
