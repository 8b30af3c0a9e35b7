package rickyard.core.advice.coop;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.Word;
import rickyard.core.judgement.WorstVerdict;
import rickyard.core.remedy.share.Allotment;
import rickyard.core.remedy.share.Pile;
import rickyard.core.remedy.share.Sharing;

/**
 * Turns dry matter of piles into kilograms on the scale and days: amounts per day are rounded to
 * what can be weighed at equal dry matter, days to tenths; what is given out of a pile is counted
 * in whole grams and never passes its stock.
 */
final class ShareLines {
  private static final int TENTHS = 10;
  private static final double GRAMS_PER_KG = 1000;

  private final CoOpContext context;
  private final LotStandings standings;
  private final Sharing sharing;
  private final List<Eater> eaters;
  private final Map<Store.Place, Long> gramsLeft;
  private final Map<Store.Place, Pile> piles = new HashMap<>();

  ShareLines(CoOpContext context, LotStandings standings, Deal deal) {
    this.context = context;
    this.standings = standings;
    this.sharing = deal.sharing();
    this.eaters =
        deal.eaters().stream()
            .sorted(Comparator.comparingInt(Eater::rank).thenComparing(Eater::id))
            .toList();
    this.gramsLeft = deal.store().grams();
    deal.piles().forEach(p -> this.piles.put(new Store.Place(p.lot(), p.client()), p));
  }

  List<ShareLine> lines() {
    Map<String, List<Allotment>> byNeed = new TreeMap<>();
    sharing
        .allotments()
        .forEach(a -> byNeed.computeIfAbsent(a.need(), n -> new ArrayList<>()).add(a));
    List<ShareLine> lines = new ArrayList<>();
    for (Eater eater : eaters) {
      add(eater, byNeed.getOrDefault(eater.id(), List.of()), lines);
    }
    return lines;
  }

  private void add(Eater eater, List<Allotment> allotments, List<ShareLine> lines) {
    double need = eater.need(context.horizonDays()).grams();
    long horizon = Math.round(TENTHS * context.horizonDays());
    long given = 0;
    long before = 0;
    for (Allotment allotment : allotments) {
      given += allotment.grams();
      long until = Math.min(horizon, Math.round(horizon * given / need));
      for (Eater.Member member : eater.members()) {
        lines.add(line(eater, member, allotment, before, until));
      }
      before = until;
    }
    if (before < horizon) {
      for (Eater.Member member : eater.members()) {
        lines.add(nothing(eater, member, horizon - before));
      }
    }
  }

  private ShareLine line(
      Eater eater, Eater.Member member, Allotment allotment, long before, long until) {
    Store.Place place = new Store.Place(allotment.lot(), allotment.client());
    HayTried tried = new HayTried(context, member);
    double perDay = tried.kgPerDay(allotment.lot());
    long gramsPerDay = Math.round(perDay * GRAMS_PER_KG);
    long left = gramsLeft.getOrDefault(place, 0L);
    long tenths = until - before;
    if (gramsPerDay * tenths > left * TENTHS) {
      tenths = left * TENTHS / gramsPerDay;
    }
    long grams = gramsPerDay * tenths / TENTHS;
    gramsLeft.put(place, left - grams);
    boolean isVets = member.advice().vetFirst();
    return new ShareLine(
        member.horse().id(),
        member.horse().clientId(),
        eater.group(),
        allotment.lot(),
        allotment.client(),
        List.copyOf(standing(eater, member)),
        isVets ? null : Double.valueOf(perDay),
        (double) tenths / TENTHS,
        isVets ? null : Double.valueOf(grams / GRAMS_PER_KG),
        eater.mixed() ? member.fed().verdict() : tried.verdict(allotment.lot()),
        lotVerdict(eater, allotment.lot()),
        words(eater, member, place, before));
  }

  /** Of a mixture the one part that the line is about. */
  private static Collection<String> standing(Eater eater, Eater.Member member) {
    Collection<String> lots = member.standing();
    boolean isPart = eater.now().size() == 1 && lots.containsAll(eater.now());
    return isPart ? eater.now() : lots;
  }

  private String lotVerdict(Eater eater, String lot) {
    return word(standings.deciding(lot, eater.groups()));
  }

  private static String word(Collection<Verdict> verdicts) {
    return WorstVerdict.find(verdicts).map(v -> v.word()).orElse(Word.NO_LIMIT).code();
  }

  private String words(Eater eater, Eater.Member member, Store.Place place, long before) {
    List<String> words = new ArrayList<>();
    if (before > 0) {
      words.add("from day " + (before / TENTHS + 1));
    }
    words.add(reason(eater, place));
    if (isOther(member, place.lot())) {
      words.add(
          "not the first proposal: that hay is too little for all; tell its people before it is"
              + " fed anything else");
    }
    boolean isUnpriced =
        Optional.ofNullable(piles.get(place))
            .filter(p -> p.pricePerTonneDm().isEmpty())
            .isPresent();
    if (isUnpriced) {
      words.add("its price is not known and counts as the dearest");
    }
    if (member.advice().vetFirst()) {
      words.add("acute laminitis without a plan: the veterinarian decides how much");
    }
    return String.join("; ", words);
  }

  /** Whether its people are told of other hay than it is dealt. */
  private static boolean isOther(Eater.Member member, String lot) {
    return member
        .advice()
        .advised()
        .filter(p -> p.items().stream().noneMatch(i -> i.item().equals(lot) && i.thenKg() > 0))
        .isPresent();
  }

  private static String reason(Eater eater, Store.Place place) {
    boolean stays = eater.now().contains(place.lot()) && eater.isFed(place.lot());
    if (eater.mixed()) {
      return (stays ? "stays in its mixture" : "part of the mixture that is proposed")
          + ", which clears as a whole diet";
    }
    if (eater.limited().isEmpty() && !eater.group().isEmpty()) {
      return (stays ? "stays: " : "") + "its whole diet is judged with it, no hay alone";
    }
    if (eater.limited().isEmpty()) {
      return stays
          ? "stays: no limit for hay alone holds for it"
          : "what it is fed now does not last or is needed where hay must clear";
    }
    String clears = "clears for " + String.join(" and ", eater.limited());
    return (stays ? "stays: " : "")
        + clears
        + (place.client().isEmpty() ? "" : ", at the yard already");
  }

  private ShareLine nothing(Eater eater, Eater.Member member, long tenths) {
    return new ShareLine(
        member.horse().id(),
        member.horse().clientId(),
        eater.group(),
        "",
        "",
        List.copyOf(standing(eater, member)),
        null,
        (double) tenths / TENTHS,
        null,
        "",
        "",
        eater.group().isEmpty()
            ? "no hay is left for it for so many days"
            : "no hay that clears for "
                + (eater.limited().isEmpty()
                    ? eater.group()
                    : String.join(" and ", eater.limited()))
                + " is left for it for so many days");
  }
}
