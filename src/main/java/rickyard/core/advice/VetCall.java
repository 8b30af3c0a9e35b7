package rickyard.core.advice;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import rickyard.core.forage.Decision;
import rickyard.core.nutrition.Horse;

/**
 * The call about a horse with acute laminitis and no veterinary plan on record: whatever it is fed,
 * somebody asks whether the veterinarian is in charge. What is on record of the veterinarian is
 * said; a call there that is a few days old at most counts, the horse then stands as told.
 */
final class VetCall {
  private static final String NO_PLAN = "vet first: acute laminitis on record, no veterinary plan";

  private final String name;
  private final Optional<Decision> called;
  private final boolean isLately;

  private VetCall(String name, Optional<Decision> called, boolean isLately) {
    this.name = name;
    this.called = called;
    this.isLately = isLately;
  }

  static boolean isNeeded(Horse horse) {
    return horse.has("laminitis-acute") && !horse.vetPlan();
  }

  /** The call about a horse; empty where it needs none of this kind. */
  static Optional<VetCall> of(Horse horse, AdviceContext context) {
    if (!isNeeded(horse)) {
      return Optional.empty();
    }
    Optional<Decision> called =
        context.decisions().stream()
            .filter(d -> d.about().equals(horse.id()) && isOfTheVet(d))
            .filter(d -> !d.date().isAfter(context.asOf()))
            .max(Comparator.comparing(Decision::date).thenComparing(Decision::row));
    long days = (long) context.standards().settings().number("vet_told_days");
    LocalDate since = context.asOf().minusDays(days);
    return Optional.of(
        new VetCall(
            horse.name(), called, called.filter(d -> !d.date().isBefore(since)).isPresent()));
  }

  /** A row of the register that says what became of calling the veterinarian: 'vet called' … */
  private static boolean isOfTheVet(Decision decision) {
    return decision.kind().equals("told")
        && decision.value().strip().toLowerCase(Locale.ROOT).startsWith("vet");
  }

  /** The more urgent of this call and what the diet asks for. */
  PriorityRule.Ruling over(PriorityRule.Ruling diet) {
    Priority own =
        isLately ? Priority.STANDING : called.isPresent() ? Priority.CALL_TODAY : Priority.CALL_NOW;
    boolean isCall = isCall(diet.priority()) || diet.priority() == Priority.ASK;
    Priority priority = isCall && diet.priority().compareTo(own) < 0 ? diet.priority() : own;
    String rest = isCall ? "; " + diet.reason() : "";
    return new PriorityRule.Ruling(
        priority, NO_PLAN + "; " + record() + rest, isCall ? diet.line() : null);
  }

  private static boolean isCall(Priority priority) {
    return priority == Priority.CALL_NOW || priority == Priority.CALL_TODAY;
  }

  /** What is on record, in words. */
  private String record() {
    return called
        .map(
            d ->
                "on record of "
                    + d.date()
                    + ", by "
                    + d.by()
                    + ": "
                    + d.value().strip()
                    + (d.why().isBlank() ? "" : " (" + d.why().strip() + ")"))
        .orElse("nothing is on record of a call to the veterinarian");
  }

  /** What is asked on the telephone; no amounts and nothing of its feed. */
  String say() {
    return name
        + " is on record with acute laminitis and no veterinary plan. Is the veterinarian in"
        + " charge? If not, ring the veterinarian first, now: the veterinarian decides what it is"
        + " fed. "
        + Character.toUpperCase(record().charAt(0))
        + record().substring(1)
        + ".";
  }
}
