package rickyard.core.remedy;

import java.util.List;

/**
 * The diet code as the search sees it: evaluates a ration and holds it against every limit of the
 * horse. Every proposal passes through it; a pure function.
 */
@FunctionalInterface
public interface DietCheck {

  /** Evaluates a ration; items with 0 kg are not in it. */
  CheckedDiet check(List<Serving> ration);
}
