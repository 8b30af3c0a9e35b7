package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.nutrition.Extras;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.HorseStatus;
import rickyard.core.nutrition.HorseType;
import rickyard.core.nutrition.Level;
import rickyard.core.nutrition.WeightBy;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;
import rickyard.tables.JudgementTables;
import rickyard.tables.NutritionTables;

/** The search against the diet code and the limits that a morning really uses. */
class RemedyWithDietCodeTest {
  private static final FeedingStandards STANDARDS = NutritionTables.load().standards();
  private static final List<Limit> LIMITS =
      JudgementTables.load(Optional.empty()).limits().stream()
          .filter(l -> l.group().equals("ID") && l.subject() == LimitSubject.DIET)
          .toList();
  private static final TreeMap<String, Unit> UNITS = new TreeMap<>(Map.of("nsc_wsc", Unit.PERCENT));

  private static Measured percent(double value, double u, Basis basis) {
    Evidence evidence = new Evidence.Reported(new Place("00", 1, 1, "x"), "" + value);
    return Measured.of(Unit.PERCENT, basis, value, 0, u, evidence);
  }

  private static Foodstuff food(
      String id, String role, String form, boolean isForage, double nsc, double u) {
    TreeMap<AnalyteCode, Measured> contents = new TreeMap<>();
    contents.put(AnalyteCode.NSC_WSC, percent(nsc, u, Basis.DRY_MATTER));
    return new Foodstuff(
        id, "", id, role, form, isForage, false, percent(88, 0.5, Basis.AS_FED), contents);
  }

  private static final Foodstuff HIGH = food("HIGH", "grass-hay", "long-stem", true, 14, 1.2);
  private static final Foodstuff LOW = food("LOW", "grass-hay", "long-stem", true, 7, 0.8);
  private static final Foodstuff BAG = food("BAG", "controlled-forage", "chopped", true, 7.5, 0.4);

  private static Horse horse() {
    return new Horse(
        "H1",
        "C1",
        "H1",
        HorseType.HORSE,
        Optional.of(YearMonth.of(2012, 4)),
        500,
        WeightBy.TAPE,
        Optional.<LocalDate>empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(500),
        HorseStatus.MAINTENANCE,
        Level.AVERAGE,
        OptionalInt.empty(),
        OptionalDouble.of(7),
        new TreeSet<>(List.of("insulin-dysregulation")),
        OptionalInt.of(2),
        false,
        OptionalDouble.of(0),
        false,
        Extras.NONE,
        "",
        Optional.<LocalDate>empty(),
        Optional.<LocalDate>empty());
  }

  private static Candidate candidate(Foodstuff food, CandidateKind kind, Label label) {
    return Candidate.ofFood(food, kind, UNITS, Stock.UNKNOWN, label, STANDARDS);
  }

  private static RemedyRequest request() {
    double lowEnd = STANDARDS.settings().lowEndKg(horse());
    List<DietLimit> limits =
        LIMITS.stream()
            .filter(l -> l.quantity().equals("nsc_wsc"))
            .map(
                l ->
                    new DietLimit(
                        l.id(), l.quantity(), l.words(), l.value(), true, l.guardFactor(), true))
            .toList();
    return new RemedyRequest(
        new HorseFacts("H1", 500, horse().conditions(), 2),
        List.of(Serving.ofForage(candidate(HIGH, CandidateKind.LOT, Label.NONE), 10)),
        List.of(),
        List.of(
            candidate(LOW, CandidateKind.LOT, Label.NONE),
            candidate(BAG, CandidateKind.FEED, Yard.fullRate(1.5, 2))),
        limits,
        List.of(),
        new IntakeRange(0.0125 * lowEnd, 0.025 * 500, 0.0125 * lowEnd, 0.3, Optional.empty()),
        List.of(),
        MassUnit.KG,
        Yard.SETTINGS,
        new DietCode(horse(), List.of(HIGH, LOW, BAG), LIMITS, STANDARDS));
  }

  @Test
  void theProposalsClearBothLimitsOfTheGroupInTheRealDiet() {
    RemedyRequest request = request();

    List<Remedy> found = RemedySearch.search(request);

    assertEquals(2, request.dietLimits().size(), "10 % at risk 20 %, 12 % at risk 2.5 %");
    assertTrue(found.get(0).isEnough(), found.toString());
    for (Remedy r : found) {
      CheckedDiet again = request.check().check(r.then());
      assertEquals(again.isEnough(), r.isEnough(), r.why());
    }
    assertEquals(
        List.of(RemedyKind.BLEND, RemedyKind.CONTROLLED, RemedyKind.SWAP),
        found.stream()
            .filter(Remedy::isEnough)
            .map(Remedy::kind)
            .distinct()
            .sorted(java.util.Comparator.comparing(RemedyKind::code))
            .toList());
  }

  @Test
  void aTypicalValueOfForageIsNoContentForALimit() {
    TreeMap<AnalyteCode, Measured> contents = new TreeMap<>();
    contents.put(
        AnalyteCode.K,
        Measured.of(
            Unit.PERCENT, Basis.DRY_MATTER, 1.5, 0, 0.4, new Evidence.Assumed("t", "grass-hay K")));
    Foodstuff hay =
        new Foodstuff(
            "T",
            "",
            "T",
            "grass-hay",
            "long-stem",
            true,
            false,
            percent(88, 0, Basis.AS_FED),
            contents);

    Candidate c =
        Candidate.ofFood(
            hay,
            CandidateKind.LOT,
            new TreeMap<>(Map.of("k", Unit.PERCENT)),
            Stock.UNKNOWN,
            Label.NONE,
            STANDARDS);

    assertTrue(c.findContent("k").isEmpty());
    // 1.5 % is 15 g per kg, by definition of the unit
    assertEquals(15, c.nutrientsPerKgDm().getOrDefault("K", 0.0), 1e-12);
  }
}
