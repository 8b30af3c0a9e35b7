package rickyard.core.advice.coop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.remedy.share.Sharing;

/** What each group goes short of; a horse counts once, in its most sensitive group. */
final class Shortages {
  private static final double KG_PER_TONNE = 1000;

  private final CoOpContext context;
  private final List<Eater> eaters;
  private final Sharing sharing;

  Shortages(CoOpContext context, List<Eater> eaters, Sharing sharing) {
    this.context = context;
    this.eaters = eaters;
    this.sharing = sharing;
  }

  List<ShortageLine> lines() {
    SortedMap<Integer, SortedMap<String, List<Eater>>> byRank = new TreeMap<>();
    for (Eater eater : eaters) {
      byRank
          .computeIfAbsent(eater.rank(), r -> new TreeMap<>())
          .computeIfAbsent(eater.group(), g -> new ArrayList<>())
          .add(eater);
    }
    List<ShortageLine> lines = new ArrayList<>();
    byRank.values().forEach(groups -> groups.forEach((group, all) -> add(group, all, lines)));
    return lines;
  }

  private void add(String group, List<Eater> all, List<ShortageLine> lines) {
    List<Eater> without =
        all.stream().filter(e -> sharing.shortGrams().containsKey(e.id())).toList();
    if (without.isEmpty()) {
      return;
    }
    double needed = all.stream().mapToDouble(e -> e.kg() * context.horizonDays()).sum();
    double lacking = without.stream().mapToDouble(this::shortKg).sum();
    double share = Math.max(0, 1 - lacking / needed);
    LocalDate runsOut =
        context.asOf().plusDays((long) Math.floor(context.horizonDays() * share + 1e-9));
    List<String> horses =
        without.stream()
            .flatMap(e -> e.horses().stream())
            .distinct()
            .sorted(Comparator.naturalOrder())
            .toList();
    lines.add(
        new ShortageLine(
            group,
            horses,
            needed,
            needed - lacking,
            runsOut,
            words(group, all, horses, lacking, runsOut)));
  }

  /** Kg as fed, by the dry matter of what it is fed now. */
  private double shortKg(Eater eater) {
    long grams = sharing.shortGrams().getOrDefault(eater.id(), 0L);
    double needed = eater.kg() * context.horizonDays();
    return Math.min(needed, grams / 1000.0 * eater.kg() / eater.kgDm());
  }

  private String words(
      String group, List<Eater> all, List<String> horses, double lacking, LocalDate runsOut) {
    long of = all.stream().flatMap(e -> e.horses().stream()).distinct().count();
    String hay = group.isEmpty() ? "hay" : "hay that clears for " + group;
    return String.format(
        Locale.ROOT,
        "%.2f t of %s too little for %.0f days: %d of %d %s without for some of them; shared"
            + " alike it would last until %s",
        lacking / KG_PER_TONNE,
        hay,
        context.horizonDays(),
        horses.size(),
        of,
        of == 1 ? "horse goes" : horses.size() == 1 ? "horses goes" : "horses go",
        runsOut);
  }
}
