package rickyard.report.about;

/**
 * Hay that a client still has.
 *
 * @param lot its id
 * @param days that it lasts from today for the horses that eat it now
 * @param until last day
 * @param horses that eat it
 */
public record Hay(String lot, long days, String until, String horses) {

  String words() {
    return lot
        + " for "
        + horses
        + ": "
        + (days == 1 ? "1 day" : days + " days")
        + ", until "
        + until;
  }
}
