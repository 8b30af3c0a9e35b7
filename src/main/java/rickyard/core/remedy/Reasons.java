package rickyard.core.remedy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The sentences of the proposals: what changes, and why it is enough or is not. */
final class Reasons {
  /** Dry matter within this share of today's is called equal: a step of the scale. */
  private static final double EQUAL_DRY_MATTER = 0.05;

  private Reasons() {}

  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  /** Why a checked ration is enough or is not, without the full stop. */
  static String verdict(CheckedDiet diet) {
    if (!diet.obstacles().isEmpty() && diet.uncleared().isEmpty()) {
      return "not enough: " + String.join("; ", diet.obstacles());
    }
    String figure = diet.leading().map(Reasons::figure).orElse("no limit applies");
    String open = diet.obstacles().isEmpty() ? "" : "; " + String.join("; ", diet.obstacles());
    return (diet.isEnough() ? "clears the chosen limit: " : "not enough: ") + figure + open;
  }

  private static String figure(CheckedLimit l) {
    String value =
        l.value().isPresent()
            ? l.words() + " " + rounded(l.value().getAsDouble()) + " " + l.unit()
            : l.words() + " cannot be told";
    String chance =
        l.pOver().isPresent() ? ", chance of being over " + chance(l.pOver().getAsDouble()) : "";
    return value + " against " + number(l.limit()) + chance;
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.1f", value);
  }

  private static String chance(double p) {
    if (p < 0.001) {
      return "below 0.1 %";
    }
    return String.format(Locale.ROOT, p < 0.1 ? "%.1f %%" : "%.0f %%", 100 * p);
  }

  static String hold(Draft draft, List<RemedyItem> items) {
    Optional<Double> days =
        items.stream()
            .filter(i -> i.thenKg() > 0 && i.item().isForage() && i.daysOfStock().isPresent())
            .map(i -> i.daysOfStock().getAsDouble())
            .min(Double::compare);
    String lasts =
        days.map(d -> "; it lasts " + (long) Math.floor(d) + " days")
            .orElse("; its stock is not known");
    return "Stay on the present forage: " + verdict(draft.diet()) + lasts + ".";
  }

  static String swap(RemedyRequest request, Draft draft) {
    return "Feed "
        + names(forage(draft))
        + dryMatter(request, draft)
        + bucket(request, draft)
        + ": "
        + verdict(draft.diet())
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
    return share(percent(share), request, draft, item, ", the least share that is enough");
  }

  /** A share that is always shown. */
  static String givenShare(RemedyRequest request, Draft draft, Candidate item, double share) {
    String words =
        share == 0.25 ? "A quarter" : share == 0.5 ? "Half" : share == 1 ? "All" : percent(share);
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
        + verdict(draft.diet())
        + chewing(request, draft)
        + ".";
  }

  static String mix(RemedyRequest request, Draft draft) {
    double forage = MixModel.forageDm(draft.ration());
    String parts =
        draft.ration().stream()
            .filter(a -> a.item().isForage())
            .map(a -> percent(a.dmKg() / forage) + " " + a.item().name())
            .collect(Collectors.joining(", "));
    return "A mix of "
        + parts
        + " (of the forage dry matter), only if it is mixed at every"
        + " feeding"
        + bucket(request, draft)
        + ": "
        + verdict(draft.diet())
        + chewing(request, draft)
        + ".";
  }

  static String bucket(Draft draft, RemedyRequest request) {
    return "Change the bucket only" + bucket(request, draft) + ": " + verdict(draft.diet()) + ".";
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

  static String retest(CheckedLimit limit, double z) {
    String because =
        switch (limit.word()) {
          case "borderline-under" -> "it lies under the limit, but by less than the guard band";
          case "borderline-over" -> "it lies over the limit, but by less than the guard band";
          default -> "the evidence does not bound it";
        };
    return "A second test may settle it: "
        + because
        + " ("
        + figure(limit)
        + ")"
        + neededU(limit, z)
        + ".";
  }

  private static String neededU(CheckedLimit limit, double z) {
    double margin = limit.limit() - limit.value().orElse(limit.limit());
    return z > 0 && margin > 0 && limit.word().equals("borderline-under")
        ? "; at this value it clears with a standard uncertainty of "
            + rounded(margin / z)
            + " or less"
        : "";
  }
}
