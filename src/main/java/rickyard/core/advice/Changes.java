package rickyard.core.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rickyard.core.judgement.Limit;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.Replacement;

/** What changed between the diet before and the diet to come, and why, in plain words. */
final class Changes {
  /** Amounts and values closer than this share are the same: they went through a file. */
  private static final double SAME = 1e-6;

  private final AdviceContext context;
  private final List<String> sentences = new ArrayList<>();

  private Changes(AdviceContext context) {
    this.context = context;
  }

  /**
   * The sentences, causes first, the verdict last.
   *
   * @param ration in force, if there is one
   * @param accepted a remedy that the client accepted and that is followed
   * @param before the diet that the last finished morning ended with, or the same ration as if
   *     nothing had been analysed; null if there is neither
   */
  static List<String> of(
      String horseId,
      AdviceContext context,
      Optional<Ration> ration,
      ComingRation coming,
      Acceptance.Found accepted,
      @Nullable DietSummary before,
      @Nullable DietSummary after) {
    Changes changes = new Changes(context);
    accepted.followed().map(Acceptance::words).ifPresent(changes.sentences::add);
    accepted.notFollowed().ifPresent(changes.sentences::add);
    changes.addOverrides(horseId);
    coming.replacements().forEach(changes::addReplacement);
    if (before != null && after != null) {
      if (context.previous().containsKey(horseId)) {
        changes.addItems(before, after, ration, coming, accepted);
        changes.addValues(before, after);
        changes.addNutrients(before, after);
        changes.addLimits(before, after);
      } else {
        changes.sentences.add(
            "no earlier morning on record: before is this ration with typical values, as if nothing"
                + " had been analysed");
      }
      changes.addVerdict(before, after);
    }
    return List.copyOf(changes.sentences);
  }

  private void addOverrides(String horseId) {
    context.decisions().stream()
        .filter(d -> d.kind().equals("override") && d.about().equals(horseId))
        .map(
            d ->
                "override by "
                    + d.by()
                    + " on "
                    + d.date()
                    + ": "
                    + d.value()
                    + " ("
                    + d.why()
                    + ")")
        .forEach(sentences::add);
  }

  private void addReplacement(Replacement replacement) {
    Delivery delivery = replacement.delivery();
    sentences.add(
        "lot "
            + delivery.lotId()
            + " takes the place of "
            + delivery.replaces().orElse("")
            + delivery.opensOn().map(d -> " from " + d).orElse(", opening day not said")
            + ", at equal dry matter");
  }

  /** Items that came, went or changed their amount, but not by a delivery or a changeover. */
  private void addItems(
      DietSummary before,
      DietSummary after,
      Optional<Ration> ration,
      ComingRation coming,
      Acceptance.Found accepted) {
    if (accepted.followed().isPresent()) {
      return;
    }
    Map<String, Double> was = kg(before);
    Map<String, Double> is = kg(after);
    for (Replacement replacement : coming.replacements()) {
      was.remove(replacement.delivery().replaces().orElse(""));
      is.remove(replacement.delivery().lotId());
    }
    List<String> parts = new ArrayList<>();
    is.forEach((item, kg) -> parts.addAll(item(item, was.get(item), kg)));
    was.keySet().stream()
        .filter(i -> !is.containsKey(i))
        .map(i -> i + " no longer")
        .forEach(parts::add);
    if (!parts.isEmpty()) {
      String since = ration.map(r -> " (ration since " + r.since() + ")").orElse("");
      sentences.add("the ration changed" + since + ": " + String.join(", ", parts));
    }
  }

  private static Map<String, Double> kg(DietSummary diet) {
    Map<String, Double> kg = new LinkedHashMap<>();
    diet.portions().forEach(p -> kg.merge(key(p), p.kg(), Double::sum));
    return kg;
  }

  private static String key(PortionLine portion) {
    return portion.batch().isEmpty() ? portion.item() : portion.item() + " " + portion.batch();
  }

  /** In per cent, so that it may be said of a horse for which nothing may be weighed out. */
  private static List<String> item(String item, @Nullable Double was, double is) {
    if (was == null) {
      return List.of(item + " is new in it");
    }
    if (isSame(was, is)) {
      return List.of();
    }
    if (was == 0 || is == 0) {
      return List.of(item + (is == 0 ? " no longer" : " is new in it"));
    }
    double percent = 100 * (is / was - 1);
    return List.of(
        String.format(
            Locale.ROOT, "%s %.0f %% %s", item, Math.abs(percent), percent > 0 ? "more" : "less"));
  }

  private void addValues(DietSummary before, DietSummary after) {
    Map<String, PortionLine> was = new LinkedHashMap<>();
    before.portions().forEach(p -> was.putIfAbsent(key(p), p));
    Map<String, PortionLine> is = new LinkedHashMap<>();
    after.portions().forEach(p -> is.putIfAbsent(key(p), p));
    is.forEach(
        (key, portion) -> {
          PortionLine old = was.get(key);
          if (old != null) {
            addValue(key, portion.item(), old.nscPercent(), portion.nscPercent());
          }
        });
  }

  private void addValue(String key, String item, @Nullable Double was, @Nullable Double is) {
    if (was == null && is != null) {
      sentences.add(key + " was analysed: WSC + starch is " + percent(is) + ", not known before");
    } else if (was != null && is == null) {
      String why = context.whyNotJudged().getOrDefault(item, "no value is in force");
      sentences.add(
          "WSC + starch of " + key + " was " + percent(was) + " and is not known now: " + why);
    } else if (was != null && is != null && !isSame(was, is)) {
      String why =
          context.turnedLots().contains(item)
              ? "an amended or newer report is in force and turns its verdict"
              : "another analysis or label value is in force";
      sentences.add(
          "WSC + starch of "
              + key
              + " was "
              + percent(was)
              + " and is "
              + percent(is)
              + ": "
              + why);
    }
  }

  private static String percent(double value) {
    return String.format(Locale.ROOT, "%.1f %% of dry matter", value);
  }

  /** Where the items are the same and their supply is not, values changed; needs change too. */
  private void addNutrients(DietSummary before, DietSummary after) {
    Map<String, DietLine> was =
        before.lines().stream()
            .collect(Collectors.toMap(DietLine::nutrient, line -> line, (a, b) -> a));
    if (isSameFeed(before, after)) {
      String supply =
          after.lines().stream()
              .filter(l -> differs(was.get(l.nutrient()), l, DietLine::supply))
              .map(DietLine::nutrient)
              .collect(Collectors.joining(", "));
      if (!supply.isEmpty()) {
        sentences.add("the same items supply another amount, their values changed: " + supply);
      }
    }
    boolean needs =
        after.lines().stream()
            .filter(l -> !l.nutrient().equals("CA_P"))
            .anyMatch(l -> differs(was.get(l.nutrient()), l, DietLine::requirement));
    if (needs) {
      sentences.add(
          "what it needs changed: its weight, state of life, month or age, or the tables did");
    }
  }

  private static boolean isSameFeed(DietSummary before, DietSummary after) {
    Map<String, Double> was = kg(before);
    Map<String, Double> is = kg(after);
    return was.keySet().equals(is.keySet())
        && is.entrySet().stream()
            .allMatch(e -> isSame(e.getValue(), was.getOrDefault(e.getKey(), Double.NaN)));
  }

  private static boolean differs(
      @Nullable DietLine was,
      DietLine is,
      java.util.function.Function<DietLine, @Nullable Double> get) {
    if (was == null) {
      return false;
    }
    Double a = get.apply(was);
    Double b = get.apply(is);
    return (a == null || b == null) ? !Objects.equals(a, b) : !isSame(a, b);
  }

  private void addLimits(DietSummary before, DietSummary after) {
    Set<String> was = groups(before);
    Set<String> is = groups(after);
    Set<String> added = new TreeSet<>(is);
    added.removeAll(was);
    Set<String> gone = new TreeSet<>(was);
    gone.removeAll(is);
    if (!added.isEmpty()) {
      sentences.add("groups whose limits did not hold for it before: " + String.join(", ", added));
    }
    if (!gone.isEmpty()) {
      sentences.add("groups whose limits no longer hold for it: " + String.join(", ", gone));
    }
  }

  private static Set<String> groups(DietSummary diet) {
    return diet.limits().stream()
        .map(LimitLine::group)
        .filter(g -> !g.equals(Limit.ALL))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private void addVerdict(DietSummary before, DietSummary after) {
    if (!before.verdict().equals(after.verdict())) {
      sentences.add("verdict: " + before.verdict() + " before, " + after.verdict() + " now");
    }
  }

  private static boolean isSame(double a, double b) {
    return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
  }
}
