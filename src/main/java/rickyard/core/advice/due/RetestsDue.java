package rickyard.core.advice.due;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.forage.Lot;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.Word;

/**
 * Lots that are fed and whose verdict for the horses that eat them is open, or rests on an old
 * test. A lot about which a question is open waits for its answer, not for a test.
 */
final class RetestsDue {
  private static final Set<Word> OPEN =
      Set.of(Word.BORDERLINE_UNDER, Word.BORDERLINE_OVER, Word.CANNOT_JUDGE);

  private final FollowUpContext context;
  private final Fed fed;
  private final Set<String> asked;

  private RetestsDue(FollowUpContext context, Fed fed) {
    this.context = context;
    this.fed = fed;
    this.asked = context.open().stream().map(OpenPoint::about).collect(Collectors.toSet());
  }

  static List<FollowUp> of(FollowUpContext context, Fed fed) {
    RetestsDue due = new RetestsDue(context, fed);
    List<FollowUp> found = new ArrayList<>();
    for (String lot : fed.byItem().keySet()) {
      if (context.lots().containsKey(lot) && !due.asked.contains(lot)) {
        due.open(lot).or(() -> due.old(lot)).ifPresent(found::add);
      }
    }
    return found;
  }

  /** The worst open verdict of a limit that asks for a change, for the groups that eat the lot. */
  private Optional<FollowUp> open(String lot) {
    List<Verdict> verdicts = context.verdicts().getOrDefault(lot, List.of());
    SortedSet<String> groups = groups(lot);
    // Where a limit is passed for good, no second test clears the others of the same group.
    verdicts.stream()
        .filter(v -> v.word() == Word.EXCEEDS && isAsking(v))
        .forEach(v -> groups.remove(v.limit().group()));
    @Nullable Verdict worst = null;
    for (Verdict verdict : verdicts) {
      if (isOpen(verdict, groups)
          && (worst == null || verdict.word().compareTo(worst.word()) > 0)) {
        worst = verdict;
      }
    }
    return Optional.ofNullable(worst).map(v -> retest(lot, v));
  }

  private static boolean isOpen(Verdict verdict, SortedSet<String> groups) {
    return isAsking(verdict)
        && !verdict.isSilent()
        && OPEN.contains(verdict.word())
        && groups.contains(verdict.limit().group());
  }

  private static boolean isAsking(Verdict verdict) {
    Severity severity = verdict.limit().severity();
    return severity == Severity.STOP || severity == Severity.CHANGE;
  }

  private SortedSet<String> groups(String lot) {
    SortedSet<String> horses =
        fed.of(lot).stream().map(Fed.Meal::horse).collect(Collectors.toCollection(TreeSet::new));
    return context.advice().stream()
        .filter(a -> horses.contains(a.horse()))
        .map(HorseAdvice::groups)
        .flatMap(List::stream)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private FollowUp retest(String lot, Verdict open) {
    return FollowUp.of(
        context.asOf(),
        FollowUpKind.RETEST,
        lot,
        open.value().isEmpty() ? "have it tested" : "test it again",
        open.reason()
            + (open.settle().isEmpty() || open.reason().contains(open.settle())
                ? ""
                : "; " + open.settle())
            + "; fed to "
            + Fed.names(fed.of(lot)));
  }

  private Optional<FollowUp> old(String lot) {
    @Nullable LocalDate day = context.sampledOn().get(lot);
    @Nullable Lot known = context.lots().get(lot);
    if (day == null || known == null) {
      return Optional.empty();
    }
    int months = context.settings().testMonths(known.material());
    LocalDate due = day.plusMonths(months);
    return context.isNear(due)
        ? Optional.of(
            FollowUp.of(
                due,
                FollowUpKind.RETEST,
                lot,
                "test it again",
                "sampled on "
                    + day
                    + "; a test counts as fresh for "
                    + months
                    + " months; fed to "
                    + Fed.names(fed.of(lot))))
        : Optional.empty();
  }
}
