package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the morning says of one horse.
 *
 * @param horse register key
 * @param client whose it is
 * @param groups the groups of limits it belongs to, sorted
 * @param priority how soon a person must hear of it
 * @param reason why, in one sentence
 * @param say the sentence to say on the telephone; empty if nobody is called
 * @param before the diet of the last finished morning; null where nothing is known of it
 * @param after the diet as it will be fed; null if it cannot be computed
 * @param changes what changed between them and why, in plain words
 * @param problems register rows and measures that keep it from being judged, in plain words
 * @param proposals best first
 * @param changeovers days of the proposals
 * @param vetFirst whether no kilograms may be shown without a veterinary plan
 * @param affected whether this morning touches it
 * @param questions what only people know and nobody has answered
 * @param trip what it is fed before, on and after a trip; null where none is on record
 */
public record HorseAdvice(
    String horse,
    String client,
    List<String> groups,
    Priority priority,
    String reason,
    String say,
    @Nullable DietSummary before,
    @Nullable DietSummary after,
    List<String> changes,
    List<String> problems,
    List<Proposal> proposals,
    List<ChangeoverLine> changeovers,
    boolean vetFirst,
    boolean affected,
    List<HorseQuestion> questions,
    @Nullable TripPlan trip)
    implements Serializable {
  public HorseAdvice {
    requireNonNull(horse, "horse");
    requireNonNull(client, "client");
    groups = List.copyOf(groups);
    requireNonNull(priority, "priority");
    requireNonNull(reason, "reason");
    requireNonNull(say, "say");
    changes = List.copyOf(changes);
    problems = List.copyOf(problems);
    proposals = List.copyOf(proposals);
    changeovers = List.copyOf(changeovers);
    questions = List.copyOf(questions);
  }

  /**
   * The ration that its people are told: the first proposal that is enough and is one. Empty where
   * none is, and where only a veterinarian may say.
   */
  public Optional<Proposal> advised() {
    return vetFirst
        ? Optional.empty()
        : proposals.stream()
            .filter(p -> p.enough() && p.diet() != null && !p.items().isEmpty())
            .findFirst();
  }

  /** The diet of the present forage where the advice is to stay on it. */
  public Optional<DietSummary> held() {
    return advised()
        .filter(p -> p.kind().equals("hold"))
        .flatMap(p -> Optional.ofNullable(p.diet()));
  }

  /** The advice on a horse of which the registers do not say enough to judge anything. */
  public static HorseAdvice unjudged(String horse, String client, List<String> problems) {
    return new HorseAdvice(
        horse,
        client,
        List.of(),
        Priority.ASK,
        "cannot be judged: " + String.join("; ", problems),
        "",
        null,
        null,
        List.of(),
        problems,
        List.of(),
        List.of(),
        false,
        true,
        List.of(),
        null);
  }
}
