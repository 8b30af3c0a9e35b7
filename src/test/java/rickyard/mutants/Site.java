package rickyard.mutants;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.mutants.Paper.Spot;

/**
 * Where a figure of a report and all that belongs to it stands.
 *
 * @param sample number of the sample in the report from 0
 * @param code what was analysed
 * @param basis of the figure, as read
 * @param value the figure that the reader takes
 * @param label its name: beside it, above it, or before the colon of the same cell
 * @param twin the as-fed figure printed beside it
 * @param unit the cell of its line that holds the unit and nothing of the name
 * @param head the heading over the figure
 * @param twinHead the heading over the twin
 */
record Site(
    int sample,
    String code,
    String basis,
    Spot value,
    Spot label,
    Optional<Spot> twin,
    Optional<Spot> unit,
    Optional<Spot> head,
    Optional<Spot> twinHead) {

  static final Pattern NUMBER = Pattern.compile("[<≤]?\\s*[0-9]+(?:[.,][0-9]+)?");

  private static int from(String text) {
    return text.lastIndexOf(": ") + 1;
  }

  /** The number of a cell, with a mark before it. */
  static String number(Paper paper, Spot spot) {
    String text = paper.text(spot);
    Matcher found = NUMBER.matcher(text);
    return found.find(from(text)) ? found.group() : "";
  }

  static void setNumber(Paper paper, Spot spot, String number) {
    String text = paper.text(spot);
    Matcher found = NUMBER.matcher(text);
    if (found.find(from(text))) {
      paper.set(spot, text.substring(0, found.start()) + number + text.substring(found.end()));
    } else {
      paper.set(spot, number);
    }
  }

  String name(Paper paper) {
    String text = paper.text(label);
    return label.equals(value) ? text.substring(0, Math.max(0, from(text) - 1)) : text;
  }

  void rename(Paper paper, String name) {
    String text = paper.text(label);
    paper.set(
        label, label.equals(value) ? name + text.substring(Math.max(0, from(text) - 1)) : name);
  }
}
