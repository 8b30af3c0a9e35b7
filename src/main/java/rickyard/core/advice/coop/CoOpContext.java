package rickyard.core.advice.coop;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.HayEaten;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.HorseAdviser;
import rickyard.core.advice.Larder;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Horse;
import rickyard.core.remedy.MassUnit;
import rickyard.core.remedy.RemedySettings;
import rickyard.core.remedy.ScaleSteps;
import rickyard.core.remedy.share.ShareSettings;

/**
 * What the sharing of a morning rests on.
 *
 * @param asOf the morning's day
 * @param horses by id
 * @param advice on every horse
 * @param larder lots and feeds with the values in force
 * @param deliveries all deliveries
 * @param eaten what was fed of them before
 * @param limits the table of limits
 * @param verdicts by lot
 * @param analyses in force, by lot
 * @param adviser judges a horse's ration with other hay
 * @param remedy horizon, scale steps, forms that can be chewed
 * @param share order of sensitivity, retests
 * @param units unit of the scale
 */
public record CoOpContext(
    LocalDate asOf,
    SortedMap<String, Horse> horses,
    List<HorseAdvice> advice,
    Larder larder,
    List<Delivery> deliveries,
    HayEaten eaten,
    List<Limit> limits,
    SortedMap<String, List<Verdict>> verdicts,
    SortedMap<String, AccountedAnalysis> analyses,
    HorseAdviser adviser,
    RemedySettings remedy,
    ShareSettings share,
    MassUnit units) {

  public CoOpContext {
    requireNonNull(asOf, "asOf");
    horses = Collections.unmodifiableSortedMap(new TreeMap<>(horses));
    advice = List.copyOf(advice);
    requireNonNull(larder, "larder");
    deliveries = List.copyOf(deliveries);
    limits = List.copyOf(limits);
    verdicts = Collections.unmodifiableSortedMap(new TreeMap<>(verdicts));
    analyses = Collections.unmodifiableSortedMap(new TreeMap<>(analyses));
    requireNonNull(eaten, "eaten");
    requireNonNull(adviser, "adviser");
    requireNonNull(remedy, "remedy");
    requireNonNull(share, "share");
    requireNonNull(units, "units");
  }

  double horizonDays() {
    return remedy.stockHorizonDays();
  }

  ScaleSteps steps() {
    return units == MassUnit.KG ? remedy.kgSteps() : remedy.lbSteps();
  }
}
