package rickyard.expectations;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Method;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;
import rickyard.core.forage.Subject;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LotJudge;
import rickyard.core.judgement.LotRules;
import rickyard.core.judgement.Suitability;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;
import rickyard.tables.JudgementTables;
import rickyard.tables.UncertaintyTable;

/**
 * The figures from which on a lot clears and exceeds for a group, found by judging lots with the
 * program itself.
 *
 * @param u standard uncertainty of WSC + starch
 * @param clearsTo the highest figure that clears
 * @param exceedsFrom the lowest that exceeds
 */
record Rule(double u, double clearsTo, double exceedsFrom) {
  static final JudgementTables TABLES = JudgementTables.load(Optional.empty());
  private static final AnalysisMaker MAKER =
      new AnalysisMaker(UncertaintyTable.load(Optional.empty()).uncertainties());

  /** A figure printed with one decimal. */
  private static final double ROUNDING = 0.05 / Math.sqrt(3);

  /** The group's limits for lots, as the table has them. */
  static Rule ofGroup(String group, MaterialClass material, Method method, int cores) {
    List<Limit> own =
        TABLES.limits().stream()
            .filter(l -> l.group().equals(group) && l.quantity().equals("nsc_wsc"))
            .toList();
    return of(own, group, material, method, cores);
  }

  /** The group's one limit at 10 or 12 % with another risk; blank for no guard band. */
  static Rule ofOne(
      double value, OptionalDouble risk, MaterialClass material, Method method, int cores) {
    Limit like =
        TABLES.limits().stream().filter(l -> l.id().equals("id-nsc-lot")).findFirst().orElseThrow();
    Limit one =
        new Limit(
            like.id(),
            like.group(),
            like.subject(),
            like.quantity(),
            like.bound(),
            value,
            like.unit(),
            risk,
            like.severity(),
            like.ifMissing(),
            like.materials(),
            like.source(),
            like.locator(),
            like.status(),
            false);
    return of(List.of(one), like.group(), material, method, cores);
  }

  private static Rule of(
      List<Limit> limits, String group, MaterialClass material, Method method, int cores) {
    LotRules rules = new LotRules(limits, TABLES.settings());
    double u =
        analysis(5, material, method, cores).analysis().find(AnalyteCode.NSC_WSC).orElseThrow().u();
    DoublePredicate clears =
        y -> suitability(y, rules, material, method, cores).suits().contains(group);
    DoublePredicate exceeds =
        y -> suitability(y, rules, material, method, cores).notFor().contains(group);
    return new Rule(u, edge(clears), edge(exceeds.negate()));
  }

  /** The last figure for which it holds, if it holds at 0 and not at 60; 0 if it does not hold. */
  private static double edge(DoublePredicate holds) {
    double low = 0;
    double high = 60;
    for (int i = 0; i < 40; i++) {
      double middle = 0.5 * (low + high);
      if (holds.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  static Suitability suitability(
      double y, LotRules rules, MaterialClass material, Method method, int cores) {
    return Suitability.of(LotJudge.judge(analysis(y, material, method, cores), rules));
  }

  private static AccountedAnalysis analysis(
      double y, MaterialClass material, Method method, int cores) {
    Sample sample =
        new Sample(
            "A",
            "",
            "",
            "",
            Optional.empty(),
            OptionalInt.of(cores),
            List.of(reading("WSC", y, method), reading("STARCH", 0, method)),
            List.of(),
            List.of());
    return MAKER.make(sample, new Subject("A", "", material, OptionalInt.empty()));
  }

  private static Reading reading(String code, double value, Method method) {
    Place place = new Place("0", 1, 1, code);
    Measured measured =
        Measured.of(
            Unit.PERCENT,
            Basis.DRY_MATTER,
            value,
            0.05,
            ROUNDING,
            new Evidence.Reported(place, ""));
    return new Reading(
        new AnalyteCode(code), "", "%", "dm", method, place, Optional.of(measured), "");
  }
}
