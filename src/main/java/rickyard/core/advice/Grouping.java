package rickyard.core.advice;

import java.util.SortedSet;
import java.util.TreeSet;
import rickyard.core.judgement.Conditions;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.HorseStatus;

/** Which groups of limits hold for a horse, by its conditions and by its pregnancy. */
final class Grouping {
  private static final int LATE_PREGNANCY_MONTH = 9;

  private Grouping() {}

  static HorseGroups of(Horse horse, Conditions table) {
    SortedSet<String> conditions = new TreeSet<>(horse.conditions());
    if (horse.status() == HorseStatus.PREGNANT) {
      conditions.add("pregnant");
      if (horse.month().orElse(0) >= LATE_PREGNANCY_MONTH) {
        conditions.add("pregnant-late");
      }
    }
    return table.of(conditions);
  }
}
