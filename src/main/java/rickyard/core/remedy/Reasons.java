package rickyard.core.remedy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The sentences of the proposals: what changes, and why it is enough or is not. */
final class Reasons {
  /** Dry matter within this share of today's is called equal: a step of the scale. */
  private static final double EQUAL_DRY_MATTER = 0.05;

  private Reasons() {}

  static String hold(RemedyRequest request, Draft draft, List<RemedyItem> items) {
    return "Stay on the present forage: "
        + Figures.verdict(draft.diet())
        + lasts(items)
        + (isMoreInReach(request, draft) ? "; more of it is in reach" : "")
        + ".";
  }

  private static String lasts(List<RemedyItem> items) {
    List<RemedyItem> forage =
        items.stream().filter(i -> i.thenKg() > 0 && i.item().isForage()).toList();
    Optional<Double> days =
        forage.stream()
            .filter(i -> i.daysOfStock().isPresent())
            .map(i -> i.daysOfStock().getAsDouble())
            .min(Double::compare);
    return days.map(d -> "; what is at the yard lasts " + (long) Math.floor(d) + " days")
        .orElse("; how long it lasts is not known");
  }

  private static boolean isMoreInReach(RemedyRequest request, Draft draft) {
    return draft.ration().stream()
        .map(Serving::item)
        .filter(c -> c.kind() == CandidateKind.LOT)
        .allMatch(
            c ->
                request.reach().stream()
                    .filter(c::isSameAs)
                    .anyMatch(r -> kg(r.stock()) > kg(c.stock()) + 1e-9));
  }

  private static double kg(Stock stock) {
    return stock.stockKg().orElse(0);
  }

  static String swap(RemedyRequest request, Draft draft) {
    return "Feed "
        + names(forage(draft))
        + dryMatter(request, draft)
        + bucket(request, draft)
        + ": "
        + Figures.verdict(draft.diet())
        + chewing(request, draft)
        + ".";
  }

  private static String dryMatter(RemedyRequest request, Draft draft) {
    double now = MixModel.forageDm(request.ration());
    double then = MixModel.forageDm(draft.ration());
    if (Math.abs(then - now) <= EQUAL_DRY_MATTER * now) {
      return " at equal dry matter";
    }
    return then > now ? " with more dry matter than today" : " with less dry matter than today";
  }

  /** The least share that is enough, in weighable amounts. */
  static String leastShare(RemedyRequest request, Draft draft, Candidate item) {
    double forage = MixModel.forageDm(draft.ration());
    double share = forage > 0 ? draft.dmOf(item) / forage : 0;
    String words = share > 0.995 ? "All" : Figures.percent(share);
    return share(words, request, draft, item, ", the least share that is enough");
  }

  /** A share that is always shown. */
  static String givenShare(RemedyRequest request, Draft draft, Candidate item, double share) {
    String words =
        share == 0.25
            ? "A quarter"
            : share == 0.5 ? "Half" : share == 1 ? "All" : Figures.percent(share);
    return share(words, request, draft, item, "");
  }

  private static String share(
      String words, RemedyRequest request, Draft draft, Candidate item, String added) {
    return words
        + " of the forage dry matter as "
        + item.name()
        + added
        + bucket(request, draft)
        + ": "
        + Figures.verdict(draft.diet())
        + chewing(request, draft)
        + ".";
  }

  static String mix(RemedyRequest request, Draft draft) {
    double forage = MixModel.forageDm(draft.ration());
    String parts =
        draft.ration().stream()
            .filter(a -> a.item().isForage())
            .map(a -> Figures.percent(a.dmKg() / forage) + " " + a.item().name())
            .collect(Collectors.joining(", "));
    return "A mix of "
        + parts
        + " (of the forage dry matter), only if it is mixed at every"
        + " feeding"
        + bucket(request, draft)
        + ": "
        + Figures.verdict(draft.diet())
        + chewing(request, draft)
        + ".";
  }

  static String bucket(Draft draft, RemedyRequest request) {
    return "Change the bucket only"
        + bucket(request, draft)
        + ": "
        + Figures.verdict(draft.diet())
        + ".";
  }

  /** What happens in the bucket, for example {@code , no oats, less sweet feed}. */
  private static String bucket(RemedyRequest request, Draft draft) {
    StringBuilder words = new StringBuilder();
    for (Serving a : request.ration()) {
      double then = draft.kgOf(a.item());
      if (!a.fedAsForage() && then < a.kg() - 1e-9) {
        words.append(then <= 0 ? ", no " : ", less ").append(a.item().name());
      }
    }
    for (Serving a : draft.ration()) {
      if (!a.fedAsForage() && a.kg() > request.todayKg(a.item()) + 1e-9) {
        boolean isNew = request.todayKg(a.item()) <= 0;
        words.append(isNew ? ", with " : ", more ").append(a.item().name());
      }
    }
    return words.toString();
  }

  private static String chewing(RemedyRequest request, Draft draft) {
    return draft.added().stream().allMatch(request::canChew)
        ? ""
        : "; long stem: first make sure that this horse can chew it";
  }

  private static List<Candidate> forage(Draft draft) {
    List<Candidate> added = draft.added().stream().filter(Candidate::isForage).toList();
    return added.isEmpty()
        ? draft.ration().stream()
            .filter(Serving::fedAsForage)
            .map(Serving::item)
            .filter(c -> c.kind() == CandidateKind.LOT)
            .toList()
        : added;
  }

  private static String names(List<Candidate> items) {
    return items.stream().map(Candidate::name).collect(Collectors.joining(" and "));
  }
}
