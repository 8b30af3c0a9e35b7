package rickyard.report.sheet;

import java.util.List;

/**
 * What is said of one horse on paper, in its client's language and units; every text is ready to be
 * shown.
 *
 * @param horse its name
 * @param client its client's name
 * @param course what may be done, see {@link Course#code()}
 * @param headline sheet's title line below the name
 * @param banner one or few words in large letters
 * @param lead the sentence below it
 * @param weigh what is weighed a day; empty where no amounts may be given
 * @param columns items of the changeover
 * @param steps the changeover, equal days together
 * @param changeNotes sentences on the change
 * @param missing what keeps it from being judged
 * @param officeNotes register rows that keep it from being judged
 * @param measured what was measured, a sentence an item
 * @param meaning what it means for this horse
 * @param then what the changed ration comes to; empty where there is none
 * @param unknown what is not known
 * @param asks questions to the client
 * @param more what else a letter says: a ration that waits, a second test
 * @param watch what to watch
 * @param vet when to ring the veterinarian
 * @param ring whom to ring else
 * @param foot the day, and how long it holds
 * @param size how much is on it: 0 little to 5 very much
 */
public record HorsePaper(
    String horse,
    String client,
    String course,
    String headline,
    String banner,
    String lead,
    List<Weigh> weigh,
    List<String> columns,
    List<Step> steps,
    List<String> changeNotes,
    List<String> missing,
    List<String> officeNotes,
    List<String> measured,
    String meaning,
    String then,
    List<String> unknown,
    List<String> asks,
    List<String> more,
    List<String> watch,
    List<String> vet,
    String ring,
    String foot,
    int size) {

  /** The largest {@link #size()}: the smallest letters. */
  public static final int MOST = 5;

  public HorsePaper {
    weigh = List.copyOf(weigh);
    columns = List.copyOf(columns);
    steps = List.copyOf(steps);
    changeNotes = List.copyOf(changeNotes);
    missing = List.copyOf(missing);
    officeNotes = List.copyOf(officeNotes);
    measured = List.copyOf(measured);
    unknown = List.copyOf(unknown);
    asks = List.copyOf(asks);
    more = List.copyOf(more);
    watch = List.copyOf(watch);
    vet = List.copyOf(vet);
  }

  /**
   * An item to weigh.
   *
   * @param amount a day, in the client's unit
   * @param other the same in the other unit
   * @param meals what one meal is; never empty
   * @param prepared soaked, steamed or empty
   * @param stop whether it is fed no longer
   */
  public record Weigh(
      String item, String amount, String other, String meals, String prepared, boolean stop) {}

  /** Days of the changeover with one amount an item. */
  public record Step(String days, List<StepAmount> amounts) {
    public Step {
      amounts = List.copyOf(amounts);
    }
  }

  /** An amount on a day of the changeover. */
  public record StepAmount(String amount, String other) {}

  /** The same paper with letters of another size. */
  HorsePaper withSize(int other) {
    return new HorsePaper(
        horse,
        client,
        course,
        headline,
        banner,
        lead,
        weigh,
        columns,
        steps,
        changeNotes,
        missing,
        officeNotes,
        measured,
        meaning,
        then,
        unknown,
        asks,
        more,
        watch,
        vet,
        ring,
        foot,
        other);
  }
}
