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
import org.junit.jupiter.params.provider.CsvSource;

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
    double p = dmLow / (dmLow + dmHigh);
    assertEquals(
        p / 0.91 / ((1 - p) / 0.88),
        blend.then().stream().mapToDouble(s -> kg(s, "B")).sum()
            / blend.then().stream().mapToDouble(s -> kg(s, "A")).sum(),
        1e-9,
        "as-fed weights, limits-and-remedies 6.1");
  }

  /**
   * Where the low lot alone is not below its guard band, no blend with a higher one clears: b + z
   * u_b ≥ T, for lots further apart than z u_b (jcgm100-2008, 5.1.2; calculated).
   */
  @ParameterizedTest(name = "{arguments}")
  @CsvSource({
    "14, 1.2, 9.5, 0.4, 10, 1.645, false",
    "14, 1.2, 8.7, 0.8, 10, 1.645, false",
    "13, 0.5, 10, 0, 10, 1.645, true",
    "13, 0.5, 10.1, 0.0, 10, 0, false",
    "14, 1.2, 8.6, 0.8, 10, 1.645, true",
  })
  void noBlendClearsWhereTheLowLotAloneDoesNot(
      double a, double ua, double b, double ub, double limit, double z, boolean clears) {
    Candidate high = lot("A", a, ua, 0.88);
    Candidate low = lot("B", b, ub, 0.91);
    assertEquals(clears, b + z * ub <= limit);

    List<Remedy> found =
        RemedySearch.search(
            request(
                horse(500), List.of(Serving.ofForage(high, 10)), List.of(low), nscLimit(limit, z)));

    assertEquals(clears, found.stream().anyMatch(Remedy::isEnough), found.toString());
  }

  private static double kg(Serving s, String id) {
    return s.item().id().equals(id) ? s.kg() : 0;
  }

  private static double dm(Serving s, String id) {
    return s.item().id().equals(id) ? s.dmKg() : 0;
  }
}
