package rickyard.intake.grid;

/** Told how far the reading of one long file is. */
@FunctionalInterface
public interface ReadingProgress {

  /**
   * Part of the file is read.
   *
   * @param what what is counted: rows, pages or samples
   * @param done how many so far
   * @param total how many there are
   */
  void reached(String what, int done, int total);

  /** Tells nobody. */
  static ReadingProgress none() {
    return (what, done, total) -> {};
  }
}
