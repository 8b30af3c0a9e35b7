package rickyard.core.remedy;

import java.util.List;

/**
 * One day of a changeover.
 *
 * @param day from 1, the day of the first step
 * @param share how far the change has gone, in (0, 1]
 * @param amounts every item of the day, unchanged ones too, those not fed with 0 kg
 */
public record ChangeoverDay(int day, double share, List<Serving> amounts) {
  public ChangeoverDay {
    amounts = List.copyOf(amounts);
  }

  /** Forage of the day, kg of dry matter. */
  public double forageDmKg() {
    return MixModel.forageDm(amounts);
  }
}
