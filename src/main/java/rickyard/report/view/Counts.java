package rickyard.report.view;

/**
 * The counts of a morning; files by outcome add up to files, parts of containers are counted apart.
 */
public record Counts(
    int files,
    int parts,
    int accepted,
    int question,
    int duplicate,
    int superseded,
    int refused,
    int known,
    int samples,
    int lots,
    int horses,
    int letters) {
  /** The same with a number of letters. */
  public Counts withLetters(int number) {
    return new Counts(
        files,
        parts,
        accepted,
        question,
        duplicate,
        superseded,
        refused,
        known,
        samples,
        lots,
        horses,
        number);
  }
}
