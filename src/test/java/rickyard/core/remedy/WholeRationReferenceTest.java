package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Amounts of a fortified complete forage and of the balancer beside it. */
class WholeRationReferenceTest {
  private static final double LB = MassUnit.LB.kg();

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/whole-ration-rates.csv", useHeadersInDisplayName = true)
  void agreesWithCommonPractice(
      String what,
      double bodyWeightLb,
      double share,
      double low,
      double high,
      double tolerance,
      String source,
      String locator,
      String status) {
    double bodyWeight = bodyWeightLb * LB;
    if (what.equals("whole-ration")) {
      Label label = Yard.fullRate(1.5, 2.0);
      assertEquals(low, label.leastAsWholeRationKg(bodyWeight) / LB, tolerance);
      assertEquals(high, label.mostAsWholeRationKg(bodyWeight) / LB, tolerance);
      wholeRationOfTheSearch(bodyWeight, low, high);
    } else {
      balancerOfTheSearch(bodyWeight, share, low, tolerance);
    }
  }

  /** A full dose of a pound for 1,000 lb is 0.5 kg for a 500-kg horse. */
  private static void balancerOfTheSearch(
      double bodyWeight, double share, double expectedLb, double tolerance) {
    Candidate hay = Yard.lot("HAY", 14, 1.2, 0.9);
    Candidate bag = Yard.controlled("BAG", 6, 0.4);
    Candidate balancer =
        Yard.item(
            "BAL",
            CandidateKind.FEED,
            "balancer",
            "pellets",
            false,
            0.9,
            12,
            0.4,
            Yard.dose(0.5, 0.5));
    double forageKg = 0.0175 * bodyWeight;
    List<Serving> ration = List.of(Serving.ofForage(hay, forageKg), Yard.bucket(balancer, LB, 2));
    RemedyRequest request =
        Yard.request(
            Yard.horse(bodyWeight),
            ration,
            List.of(bag),
            List.of(Yard.nscLimit(10, 0)),
            List.of(),
            List.of(),
            MassUnit.LB);

    List<Serving> then =
        FortifiedShare.withBalancers(
            request,
            List.of(
                Serving.ofForage(hay, (1 - share) * forageKg),
                Serving.ofForage(bag, share * forageKg),
                ration.get(1)));

    assertEquals(expectedLb, then.get(2).kg() / LB, tolerance);
    if (share > 0 && share < 1) {
      Remedy half =
          RemedySearch.search(request).stream()
              .filter(r -> r.why().startsWith("Half"))
              .findFirst()
              .orElseThrow();
      double lb =
          half.then().stream()
              .filter(s -> s.item().isBalancer())
              .mapToDouble(s -> s.kg() / LB)
              .sum();
      assertEquals(expectedLb, lb, tolerance, half.why());
    }
  }

  private static void wholeRationOfTheSearch(double bodyWeight, double low, double high) {
    Candidate hay = Yard.lot("HAY", 14, 1.2, 0.9);
    RemedyRequest request =
        Yard.request(
            Yard.horse(bodyWeight),
            List.of(Serving.ofForage(hay, 0.022 * bodyWeight)),
            List.of(Yard.controlled("BAG", 6, 0.4)),
            List.of(Yard.nscLimit(10, 0)),
            List.of(),
            List.of(),
            MassUnit.LB);

    double all =
        RemedySearch.search(request).stream()
            .filter(r -> r.why().startsWith("All"))
            .flatMap(r -> r.then().stream())
            .mapToDouble(s -> s.kg() / LB)
            .sum();

    assertTrue(all >= low && all <= high + 1e-9, all + " lb of " + low + " to " + high);
  }
}
