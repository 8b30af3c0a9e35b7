package rickyard.core.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Lot;
import rickyard.core.forage.LotTest;
import rickyard.core.forage.Settled;

/**
 * What the tests of many mornings show beside each other. Lots and fields are in the order of their
 * names, laboratories in that of the quantities first, whatever the order of arrival.
 *
 * @param rules from how many tests on something is said
 * @param lots lots tested on two days or more
 * @param fields fields and cuttings with hay of two years or more
 * @param laboratories two laboratories with lots that both have tested
 * @param again laboratories that tested lots on two days or more
 */
public record OverTime(
    OverTimeRules rules,
    List<LotCourse> lots,
    List<FieldCourse> fields,
    List<LaboratoryPair> laboratories,
    List<LaboratoryPair> again) {

  public OverTime {
    lots = List.copyOf(lots);
    fields = List.copyOf(fields);
    laboratories = List.copyOf(laboratories);
    again = List.copyOf(again);
  }

  /** Nothing yet. */
  public static OverTime none(OverTimeRules rules) {
    return new OverTime(rules, List.of(), List.of(), List.of(), List.of());
  }

  /**
   * Looks through everything that was settled.
   *
   * @param settled all reports ever kept, as they count now
   * @param lots the register of lots by id
   */
  public static OverTime of(Settled settled, Map<String, Lot> lots, OverTimeRules rules) {
    Laboratories laboratories = Laboratories.of(settled.tests());
    SortedMap<String, List<LotTest>> byLot = new TreeMap<>();
    settled.tests().forEach(t -> byLot.computeIfAbsent(t.lot(), l -> new ArrayList<>()).add(t));
    byLot.values().removeIf(tests -> tests.size() < 2);
    List<LotCourse> courses = new ArrayList<>();
    byLot.forEach(
        (lot, tests) ->
            rules
                .quantities()
                .forEach(
                    q ->
                        course(lot, q, tested(tests, q, laboratories), rules)
                            .ifPresent(courses::add)));
    List<LaboratoryPair> pairs = new ArrayList<>();
    for (AnalyteCode quantity : rules.quantities()) {
      LaboratoryPairs of = new LaboratoryPairs(quantity, rules);
      byLot.values().forEach(tests -> of.lot(tested(tests, quantity, laboratories)));
      pairs.addAll(of.found());
    }
    return new OverTime(
        rules,
        courses,
        new FieldCourses(rules).of(settled.inForce(), lots),
        pairs.stream().filter(p -> !p.isAgain()).toList(),
        pairs.stream().filter(LaboratoryPair::isAgain).toList());
  }

  private static List<Tested> tested(
      List<LotTest> tests, AnalyteCode quantity, Laboratories laboratories) {
    return tests.stream().flatMap(t -> Tested.find(t, quantity, laboratories).stream()).toList();
  }

  private static Optional<LotCourse> course(
      String lot, AnalyteCode quantity, List<Tested> tests, OverTimeRules rules) {
    List<DayValue> days = Tested.byDay(tests);
    return days.size() < 2
        ? Optional.empty()
        : Optional.of(LotCourse.of(lot, quantity, tests.get(0).unit(), days, rules));
  }
}
