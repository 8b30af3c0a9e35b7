package rickyard.core.advice.coop;

import java.io.Serializable;
import java.util.List;

/**
 * What the morning says of a co-op's hay.
 *
 * @param days the horizon
 * @param shares by sensitivity, then horse, then in the order of feeding
 * @param shortages the most sensitive group first
 * @param retests the most expected first
 * @param notes what could not be weighed, in plain words
 */
public record CoOpAdvice(
    double days,
    List<ShareLine> shares,
    List<ShortageLine> shortages,
    List<RetestLine> retests,
    List<String> notes)
    implements Serializable {

  public CoOpAdvice {
    shares = List.copyOf(shares);
    shortages = List.copyOf(shortages);
    retests = List.copyOf(retests);
    notes = List.copyOf(notes);
  }

  /** An office without hay of a co-op or for sale. */
  public static CoOpAdvice none() {
    return new CoOpAdvice(0, List.of(), List.of(), List.of(), List.of());
  }
}
