package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.Decision;
import rickyard.core.judgement.Conditions;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.WeighedMeasure;
import rickyard.core.remedy.RemedySettings;

/**
 * What advice on any horse of a morning rests on.
 *
 * @param asOf the morning's day
 * @param larder lots and feeds with the values in force
 * @param horses every horse whose row could be read, by id
 * @param rations all rations
 * @param deliveries all deliveries
 * @param measures all measures
 * @param decisions the register, in its order
 * @param standards requirements and feeding tables
 * @param conditions condition to group
 * @param limits limits of lots, diets and meals
 * @param lotVerdicts by lot
 * @param previous the diets that the last finished morning ended with, by horse
 * @param whyNotJudged why a lot has no analysis in force, by lot
 * @param turnedLots lots whose verdict an amended report changed since the last morning
 * @param askedAbout lots and horses about which a question is open
 * @param answered ids of the questions that the office has answered
 * @param problems bad register rows by horse
 * @param remedySettings the office's choices for proposals
 * @param scales the unit that each client weighs in
 * @param use what all horses take of each lot per day
 */
public record AdviceContext(
    LocalDate asOf,
    Larder larder,
    SortedMap<String, Horse> horses,
    List<Ration> rations,
    List<Delivery> deliveries,
    List<WeighedMeasure> measures,
    List<Decision> decisions,
    FeedingStandards standards,
    Conditions conditions,
    List<Limit> limits,
    SortedMap<String, List<Verdict>> lotVerdicts,
    SortedMap<String, DietSummary> previous,
    SortedMap<String, String> whyNotJudged,
    SortedSet<String> turnedLots,
    SortedSet<String> askedAbout,
    SortedSet<String> answered,
    SortedMap<String, List<String>> problems,
    RemedySettings remedySettings,
    Scales scales,
    HayUse use) {

  public AdviceContext {
    requireNonNull(asOf, "asOf");
    requireNonNull(larder, "larder");
    horses = copy(horses);
    rations = List.copyOf(rations);
    deliveries = List.copyOf(deliveries);
    measures = List.copyOf(measures);
    decisions = List.copyOf(decisions);
    requireNonNull(standards, "standards");
    requireNonNull(conditions, "conditions");
    limits = List.copyOf(limits);
    lotVerdicts = copy(lotVerdicts);
    previous = copy(previous);
    whyNotJudged = copy(whyNotJudged);
    turnedLots = Collections.unmodifiableSortedSet(new TreeSet<>(turnedLots));
    askedAbout = Collections.unmodifiableSortedSet(new TreeSet<>(askedAbout));
    answered = Collections.unmodifiableSortedSet(new TreeSet<>(answered));
    problems = copy(problems);
    requireNonNull(scales, "scales");
    requireNonNull(use, "use");
  }

  private static <T> SortedMap<String, T> copy(Map<String, T> map) {
    return Collections.unmodifiableSortedMap(new TreeMap<>(map));
  }
}
