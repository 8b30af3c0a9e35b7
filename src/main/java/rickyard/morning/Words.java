package rickyard.morning;

/** Plain English for counts. */
final class Words {
  private Words() {}

  /** {@code 1 file}, {@code 3 files}. */
  static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
