package rickyard.core.advice;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How soon a person must hear of a horse.
 *
 * <p>call-now: not yet told, fed or opening within two days, and a limit of severity 'stop' passed
 * with a chance of at least one half, or an amended report that turned a verdict told before.
 * call-today: a limit that asks for a change passed with that chance otherwise, or an asked limit
 * that cannot be judged for what is fed, a question open about it or not. Of a value of which only
 * a lower end is known the chance of that end counts. ask: something about it waits for an answer.
 * note: changed, or within a limit by less than the guard band. standing: told, unchanged.
 * Potassium calls only when it rises with a new forage.
 */
final class PriorityRule {
  private static final double EVEN = 0.5;

  private PriorityRule() {}

  /**
   * What the rule looks at.
   *
   * @param before the diet of the last finished morning, null if unknown
   * @param present the diet of the ration in force today, before any delivery takes a place in it;
   *     null if unknown
   * @param after the diet as it will be fed, null if it cannot be computed
   * @param lotLimits verdicts on a lot that is all of the horse's forage
   * @param fedSoon whether what is judged is fed now or opens within two days
   * @param toldVerdict the verdict that the client was told last, with its limit; null if never
   * @param turned whether an amended report changed what was told
   * @param rationChanged whether items of the ration changed
   * @param waiting whether a question about it is open
   * @param lotAsked whether a lot that it is fed waits for an answer of the office
   * @param problems what keeps it from being judged at all
   */
  record Facts(
      @Nullable DietSummary before,
      @Nullable DietSummary present,
      @Nullable DietSummary after,
      List<LimitLine> lotLimits,
      boolean fedSoon,
      @Nullable String toldVerdict,
      boolean turned,
      boolean rationChanged,
      boolean waiting,
      boolean lotAsked,
      List<String> problems) {}

  /** The rule's answer; {@code line} is the limit that decided, null if none did. */
  record Ruling(Priority priority, String reason, @Nullable LimitLine line) {}

  static Ruling rule(Facts facts) {
    if (!facts.problems().isEmpty() || facts.after() == null) {
      String why =
          facts.problems().isEmpty()
              ? "no ration is on record"
              : String.join("; ", facts.problems());
      return new Ruling(Priority.ASK, "cannot be judged: " + why, null);
    }
    DietSummary after = facts.after();
    Optional<LimitLine> passed = passed(after, facts);
    Optional<LimitLine> open = open(after);
    boolean told = isTold(facts, after);
    if (facts.turned() && facts.fedSoon() && !told) {
      return ruling(
          Priority.CALL_NOW,
          "an amended report turned a verdict told before",
          worst(after, passed));
    }
    if (passed.isPresent()) {
      return passed(facts, passed.get(), told);
    }
    if (open.isPresent()) {
      return open(facts, open.get(), told);
    }
    if (facts.waiting()) {
      return ruling(Priority.ASK, waitingWords(after), after.worst());
    }
    return quiet(facts, after, told);
  }

  private static Ruling passed(Facts facts, LimitLine line, boolean told) {
    if (told) {
      return ruling(Priority.STANDING, "told, unchanged: " + sentence(line), line);
    }
    boolean now = line.severity().equals("stop") && facts.fedSoon();
    return ruling(now ? Priority.CALL_NOW : Priority.CALL_TODAY, sentence(line), line);
  }

  private static Ruling open(Facts facts, LimitLine line, boolean told) {
    if (told) {
      return ruling(Priority.STANDING, "told, still not judged: " + sentence(line), line);
    }
    if (facts.fedSoon()) {
      String first = facts.lotAsked() ? "an open question about it may settle it: " : "";
      return ruling(Priority.CALL_TODAY, first + sentence(line), line);
    }
    return facts.lotAsked()
        ? ruling(Priority.ASK, "answer the open question first: " + sentence(line), line)
        : ruling(Priority.ASK, "to be settled before it opens: " + sentence(line), line);
  }

  private static Ruling quiet(Facts facts, DietSummary after, boolean told) {
    LimitLine worst = after.worst();
    if (told && worst != null && !worst.verdict().equals("clears")) {
      return ruling(Priority.STANDING, "told, unchanged: " + sentence(worst), worst);
    }
    if (worst != null && worst.verdict().startsWith("borderline")) {
      return ruling(Priority.NOTE, sentence(worst), worst);
    }
    boolean changed =
        facts.rationChanged()
            || (facts.before() != null && !facts.before().verdict().equals(after.verdict()));
    if (changed && worst != null) {
      return ruling(Priority.NOTE, "changed: " + sentence(worst), worst);
    }
    return changed
        ? ruling(Priority.NOTE, "the ration changes; no limit applies", null)
        : ruling(Priority.NONE, worst == null ? "no limit applies" : sentence(worst), worst);
  }

  private static String waitingWords(DietSummary after) {
    return after.worst() == null
        ? "a question about it is open"
        : "a question about it is open; the ration recorded: " + sentence(after.worst());
  }

  private static Ruling ruling(Priority priority, String reason, @Nullable LimitLine line) {
    return new Ruling(priority, reason, line);
  }

  private static @Nullable LimitLine worst(DietSummary after, Optional<LimitLine> passed) {
    return passed.isPresent() ? passed.get() : after.worst();
  }

  /** The most severe limit that is more likely passed than not. */
  private static Optional<LimitLine> passed(DietSummary after, Facts facts) {
    Optional<LimitLine> stop = passed(after, facts, "stop");
    return stop.isPresent() ? stop : passed(after, facts, "change");
  }

  private static Optional<LimitLine> passed(DietSummary after, Facts facts, String severity) {
    return lines(after, facts)
        .filter(l -> l.severity().equals(severity))
        .filter(l -> l.pOver() != null && l.pOver() >= EVEN && !l.verdict().equals("no-limit"))
        .filter(l -> !l.quantity().equals("k") || potassiumRose(facts))
        .max(
            java.util.Comparator.<LimitLine>comparingDouble(l -> chance(l))
                .thenComparing(l -> -l.limit())
                .thenComparing(LimitLine::limitId, java.util.Comparator.reverseOrder()));
  }

  private static double chance(LimitLine line) {
    return line.pOver() == null ? 0 : line.pOver();
  }

  private static java.util.stream.Stream<LimitLine> lines(DietSummary after, Facts facts) {
    return java.util.stream.Stream.concat(after.limits().stream(), facts.lotLimits().stream());
  }

  /** A diet limit that asks and cannot be judged for what is fed. */
  private static Optional<LimitLine> open(DietSummary after) {
    return after.limits().stream()
        .filter(l -> l.verdict().equals("cannot-judge"))
        .filter(l -> l.severity().equals("stop") || l.severity().equals("change"))
        .findFirst();
  }

  private static boolean potassiumRose(Facts facts) {
    Double now = potassium(facts.after());
    Double then = potassium(facts.present());
    return facts.rationChanged() && now != null && (then == null || now > then * (1 + 1e-9));
  }

  private static @Nullable Double potassium(@Nullable DietSummary diet) {
    if (diet == null || diet.dmKg() <= 0) {
      return null;
    }
    return diet.lines().stream()
        .filter(l -> l.nutrient().equals("K"))
        .map(l -> l.supply() == null ? null : l.supply() / diet.dmKg())
        .filter(java.util.Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** Told means told this: the same word for the worst-placed limit. */
  private static boolean isTold(Facts facts, DietSummary after) {
    String told = facts.toldVerdict();
    return told != null && told.equals(after.verdict());
  }

  /** {@code id-nsc-diet: exceeds; 14.2 % DM …} in the words of the verdict. */
  static String sentence(LimitLine line) {
    return line.verdict() + ": " + line.reason();
  }
}
