package rickyard.core.advice;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rickyard.core.forage.Decision;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;

/**
 * A remedy that the client accepted: from its first day on the diet follows its changeover, until a
 * newer ration stands in the register.
 *
 * @param goal what is fed in the end
 * @param day day of the changeover, from 1
 * @param decision the row of the register
 */
record Acceptance(AcceptedRation goal, int day, Decision decision) {

  /**
   * The last acceptance of a horse, followed or not.
   *
   * @param followed the one that the diet follows
   * @param notFollowed why a row that is meant to be followed is not, for a person
   */
  record Found(Optional<Acceptance> followed, Optional<String> notFollowed) {
    static final Found NONE = new Found(Optional.empty(), Optional.empty());

    private static Found no(Decision decision, String why) {
      return new Found(
          Optional.empty(),
          Optional.of(
              String.format(
                  Locale.ROOT,
                  "accepted on %s, not followed (decisions.csv, row %d): %s",
                  decision.date(),
                  decision.row(),
                  why)));
    }
  }

  /** The words for the page; no amounts, since it may be a horse for which none may be shown. */
  String words() {
    return String.format(
        Locale.ROOT,
        "accepted on %s: %s from %s, day %d of the changeover",
        decision.date(),
        goal.words(),
        decision.startOn().map(LocalDate::toString).orElse(""),
        day);
  }

  /**
   * The acceptance that holds for a horse.
   *
   * @param ration the ration in force; an acceptance that it already follows no longer counts
   */
  static Found find(
      String horseId, List<Decision> decisions, Ration ration, Larder larder, LocalDate asOf) {
    return decisions.stream()
        .filter(d -> d.kind().equals("accepted") && d.about().equals(horseId))
        .filter(d -> !d.date().isAfter(asOf))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row))
        .map(d -> of(d, ration, larder, asOf))
        .orElse(Found.NONE);
  }

  private static Found of(Decision decision, Ration ration, Larder larder, LocalDate asOf) {
    LocalDate start = decision.startOn().orElse(decision.date());
    if (!ration.since().isBefore(start)) {
      return Found.NONE;
    }
    Optional<AcceptedRation> goal = AcceptedRation.parse(decision.value(), larder);
    if (goal.isEmpty()) {
      return Found.no(
          decision,
          "\""
              + decision.value()
              + "\" names no ration; write an item with its batch and share (MEADOW 50 %), or"
              + " every item with its amount (MEADOW 5.5 kg; SALT 0.03 kg)");
    }
    if (decision.startOn().isEmpty()) {
      return Found.no(decision, "start_on is blank");
    }
    if (start.isAfter(asOf)) {
      return Found.no(decision, "it begins on " + start);
    }
    int day = (int) ChronoUnit.DAYS.between(start, asOf) + 1;
    return new Found(Optional.of(new Acceptance(goal.get(), day, decision)), Optional.empty());
  }

  /** The ration as it is accepted, from the one that would be fed without. */
  List<Portion> applied(List<Portion> portions, Larder larder) {
    return goal.applied(portions, larder);
  }
}
