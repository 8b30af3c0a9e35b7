package rickyard.intake.grid;

/** The name of a part for people to read: no folders upwards, no control characters, not long. */
final class PartName {
  private static final int LONGEST = 200;

  private PartName() {}

  /**
   * Cleans a name from inside a container.
   *
   * @param number the part's place in its container from 1, its name where it has none
   */
  static String of(String raw, int number) {
    StringBuilder out = new StringBuilder();
    for (String step : raw.replace('\\', '/').split("/", -1)) {
      String clean = CellText.plain(step).replace(':', '_');
      if (!clean.isEmpty() && !clean.equals(".") && !clean.equals("..")) {
        out.append(out.isEmpty() ? "" : "/").append(clean);
      }
    }
    String name = out.isEmpty() ? "part-" + number : out.toString();
    return name.length() <= LONGEST ? name : name.substring(name.length() - LONGEST).strip();
  }

  static UnreadableException tooMany(ReadLimits limits) {
    return new UnreadableException(
        "too-many-parts", "It holds more than " + limits.parts() + " files; send fewer at a time.");
  }
}
