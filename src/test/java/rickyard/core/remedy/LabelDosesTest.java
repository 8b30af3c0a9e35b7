package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LabelDosesTest {
  private static final Candidate HAY = Yard.lot("HAY", 8, 0.5);
  private static final Candidate MIX = bucket("MIX", Yard.dose(0.5, 3));

  private static Candidate bucket(String id, Label label) {
    return Yard.item(id, CandidateKind.FEED, "concentrate", "pellets", false, 0.9, 30, 1, label);
  }

  private static RemedyRequest fed(Candidate item, double kg) {
    List<Serving> ration = List.of(Serving.ofForage(HAY, 9), Yard.bucket(item, kg, 2));
    return Yard.request(Yard.horse(500), ration, List.of(), Yard.nscLimit(10, 0));
  }

  private static List<String> against(RemedyRequest request, double kg) {
    Candidate item = request.ration().get(1).item();
    return new LabelDoses(request)
        .against(List.of(Serving.ofForage(HAY, 9), Yard.bucket(item, kg, 2)));
  }

  @Test
  void aFeedIsMadeLessDownToItsLeastDoseOrTakenAway() {
    RemedyRequest request = fed(MIX, 2);
    assertEquals(List.of(), against(request, 0.5));
    assertEquals(List.of("a dose of MIX that its label does not give"), against(request, 0.4));
    assertEquals(List.of(), against(request, 2), "what is fed today is not asked about");
    assertEquals(0.5, new Portions(request).leastKg(MIX, false), 1e-12);
  }

  @Test
  void aLabelWithALargestDoseAloneAsksForNoLeastOne() {
    Label label =
        new Label(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(3),
            false);
    RemedyRequest request = fed(bucket("OATS", label), 2);
    assertEquals(List.of(), against(request, 0.2));
    assertEquals(1, against(request, 3.5).size());
  }

  @Test
  void aBalancerIsRoundedIntoItsDose() {
    Candidate balancer = Yard.balancer("BAL");
    RemedyRequest request = fed(balancer, 0.5);
    List<Serving> ration = request.ration();
    // 0.4 to 0.6 kg; 0.409 would go to 0.4, 0.396 to 0.4 and 0.391 to 0.38
    assertEquals(0.4, new LabelDoses(request).weighedKg(balancer, 0.391, ration), 1e-12);
    assertEquals(0.6, new LabelDoses(request).weighedKg(balancer, 0.604, ration), 1e-12);
  }

  @Test
  void theSearchNeverHalvesAFeedBelowItsLabel() {
    RemedyRequest request = fed(MIX, 1.5);
    for (Remedy r : RemedySearch.search(request)) {
      r.then().stream()
          .filter(a -> a.item().isSameAs(MIX))
          .forEach(a -> assertTrue(a.kg() >= 0.5 - 1e-9, r.why()));
    }
  }
}
