package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * A published ration with two unknowns as a special case of the search: lecture slides on balancing
 * horse diets (undated, author and institution not shown). Grass hay 5 kg and oil 0.5 kg are fixed;
 * alfalfa A and grain B meet 10.25 Mcal and 561 g of protein. The slides print B = 3.02 kg from
 * rounded coefficients.
 */
class TwoUnknownsReferenceTest {
  /**
   * Requirement printed on the slides, after NRC 1989: not what the program's own tables ask for.
   */
  private static final List<NutrientNeed> NEEDS =
      List.of(new NutrientNeed("DE", 24.6), new NutrientNeed("CP", 984));

  private static Candidate feed(String id, boolean isForage, double mcal, double proteinPercent) {
    Candidate made =
        Yard.item(
            id,
            CandidateKind.FEED,
            isForage ? "grass-hay" : "concentrate",
            "chopped",
            isForage,
            1,
            8,
            0,
            Label.NONE);
    return Yard.with(made, new TreeMap<>(Map.of("DE", mcal, "CP", 10 * proteinPercent)));
  }

  private static FreeItem free(Candidate item) {
    return new FreeItem(item, item.isForage(), OptionalInt.empty(), 0, Double.POSITIVE_INFINITY);
  }

  @Test
  void alfalfaAndGrainMeetEnergyAndProtein() {
    Candidate hay = feed("HAY", true, 1.95, 8.46);
    Candidate oil = feed("OIL", false, 9.2, 0);
    Candidate alfalfa = feed("ALFALFA", true, 1.75, 18);
    Candidate grain = feed("GRAIN", false, 2.45, 8.9);
    List<Serving> fixed = List.of(Serving.ofForage(hay, 5), Serving.ofBucket(oil, 0.5));
    RemedyRequest request = unmetCostsMost(fixed, List.of(alfalfa, grain));
    MixSpec spec =
        new MixSpec(List.of(free(alfalfa), free(grain)), fixed, OptionalDouble.empty(), true);

    double[] x = new Workbench(request).exact(spec).orElseThrow().dmKg();

    assertEquals(10.25, 24.6 - 1.95 * 5 - 9.2 * 0.5, 1e-9, "as the slides print it");
    assertEquals(561, 984 - 84.6 * 5, 1e-9, "as the slides print it");
    assertEquals(3.02, x[1], 0.02, "as the slides print it");
    assertEquals(1.620, x[0], 0.0005, "recomputed; A was cut off in the excerpt");
    assertEquals(3.026, x[1], 0.0005, "recomputed");
  }

  /** The slides meet the requirement whatever it takes: a need costs far more than any change. */
  private static RemedyRequest unmetCostsMost(List<Serving> ration, List<Candidate> reach) {
    RemedySettings s = Yard.SETTINGS;
    RemedySettings settings =
        new RemedySettings(
            s.changeWeight(),
            s.targetWeight(),
            1000,
            s.costWeight(),
            s.kgSteps(),
            s.lbSteps(),
            s.controlledShares(),
            s.stockHorizonDays(),
            s.monthDays(),
            s.largestPool(),
            s.largestNumberOfChecks(),
            s.chewableForms(),
            s.changeoverDays(),
            s.changeoverShares(),
            s.leastPortions(),
            s.leastRetestChance(),
            s.assumedRelativeU());
    HorseFacts horse = Yard.horse(500);
    IntakeRange intake = new IntakeRange(0, 15, 0, 0.3, Optional.empty());
    return new RemedyRequest(
        horse,
        ration,
        List.of(),
        reach,
        List.of(),
        List.of(),
        intake,
        NEEDS,
        MassUnit.KG,
        settings,
        new PlainCheck(horse, List.of(), List.of(), intake, NEEDS));
  }
}
