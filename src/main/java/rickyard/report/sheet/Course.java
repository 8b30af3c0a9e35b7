package rickyard.report.sheet;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.Priority;
import rickyard.core.advice.Proposal;

/**
 * What a sheet may tell people to do with a horse. Amounts are given only where the ration that
 * they describe clears, or no limit applies, or it is what is fed and stands under its limit.
 */
public enum Course {
  /** Acute laminitis without a veterinary plan: no amounts. */
  VET_FIRST,
  /** The diet cannot be judged: no amounts. */
  MISSING,
  /** Over a limit and no change is enough: no amounts. */
  NOT_CLEARED,
  /** A changed ration that clears. */
  CHANGE,
  /** The present ration clears, the coming one does not. */
  HOLD,
  /** Under the limit by less than the guard band: the ration stands until a second test. */
  BORDERLINE,
  /** The ration stands. */
  KEEP;

  private static final double EVEN = 0.5;

  /** As templates and texts call it. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The course for a horse. */
  public static Course of(HorseAdvice horse) {
    if (horse.vetFirst()) {
      return VET_FIRST;
    }
    DietSummary after = horse.after();
    if (!horse.problems().isEmpty() || after == null) {
      return MISSING;
    }
    if (after.limits().stream().anyMatch(l -> decides(l) && isOver(l))) {
      return over(horse);
    }
    if (isOpen(after)) {
      return MISSING;
    }
    if (isCalled(horse)) {
      return over(horse);
    }
    return after.limits().stream()
            .anyMatch(l -> decides(l) && l.verdict().equals("borderline-under"))
        ? BORDERLINE
        : KEEP;
  }

  /** The best proposal that is enough and is a ration. */
  public static Optional<Proposal> chosen(HorseAdvice horse) {
    return horse.proposals().stream()
        .filter(p -> p.enough() && p.diet() != null && !p.items().isEmpty())
        .findFirst();
  }

  /** A limit that stops or asks for a change; the others are for looking at. */
  static boolean decides(LimitLine line) {
    return line.severity().equals("stop") || line.severity().equals("change");
  }

  private static boolean isOpen(DietSummary diet) {
    return diet.verdict().equals("cannot-judge")
        || diet.limits().stream().anyMatch(l -> decides(l) && l.verdict().equals("cannot-judge"));
  }

  private static Course over(HorseAdvice horse) {
    return chosen(horse).map(p -> p.kind().equals("hold") ? HOLD : CHANGE).orElse(NOT_CLEARED);
  }

  /** A call is never answered with 'go on', whatever the diet as a whole says. */
  private static boolean isCalled(HorseAdvice horse) {
    return horse.priority() == Priority.CALL_NOW || horse.priority() == Priority.CALL_TODAY;
  }

  private static boolean isOver(LimitLine line) {
    @Nullable Double chance = line.pOver();
    return line.verdict().equals("exceeds")
        || line.verdict().equals("borderline-over")
        || (chance != null && chance >= EVEN && !line.verdict().equals("no-limit"));
  }
}
