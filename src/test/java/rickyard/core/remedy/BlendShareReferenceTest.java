package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.remedy.Yard.horse;
import static rickyard.core.remedy.Yard.lot;
import static rickyard.core.remedy.Yard.nscLimit;
import static rickyard.core.remedy.Yard.request;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The closed formulas for the share of a low lot come out of the general search. */
class BlendShareReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/blend-share.csv", useHeadersInDisplayName = true)
  void agreesWithTheWorkedShare(
      double a,
      double ua,
      double b,
      double ub,
      double limit,
      double z,
      double share,
      double tolerance,
      String source,
      String locator,
      String status) {
    Candidate high = lot("A", a, ua, 0.88);
    Candidate low = lot("B", b, ub, 0.91);
    List<Serving> ration = List.of(Serving.ofForage(high, 10));
    RemedyRequest request = request(horse(500), ration, List.of(low), nscLimit(limit, z));
    MixSpec spec =
        new MixSpec(
            List.of(
                new FreeItem(high, true, OptionalInt.empty(), 0, Double.POSITIVE_INFINITY),
                new FreeItem(low, true, OptionalInt.empty(), 0, Double.POSITIVE_INFINITY)),
            List.of(),
            OptionalDouble.of(8.8),
            true);

    double[] x = new MixModel(request, spec).solve().orElseThrow();

    assertEquals(share, x[1] / 8.8, tolerance, () -> source + ", " + locator);
    assertEquals(8.8, x[0] + x[1], 1e-9);
    Remedy blend =
        RemedySearch.search(request).stream()
            .filter(r -> r.kind() == RemedyKind.BLEND)
            .findFirst()
            .orElseThrow();
    double dmLow = blend.then().stream().mapToDouble(s -> dm(s, "B")).sum();
    double dmHigh = blend.then().stream().mapToDouble(s -> dm(s, "A")).sum();
    assertTrue(blend.isEnough(), blend.why());
    assertTrue(dmLow / (dmLow + dmHigh) >= share - tolerance, "weighable and still enough");
    assertTrue(dmLow / (dmLow + dmHigh) <= share + 0.08, "a step of the scale more at most");
  }

  private static double dm(Serving s, String id) {
    return s.item().id().equals(id) ? s.dmKg() : 0;
  }
}
