package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Layout;
import rickyard.core.forage.LayoutHeading;
import rickyard.core.forage.LayoutLine;

/** What is kept of a page: the laboratory's own words, and nothing of the sample. */
class PageLayoutTest {
  private static final String LONG =
      """
      Brook Vale Forage Laboratory
      Client: | Netherby Livery
      Lot: | N2
      Sampled: | 2026-02-17
      Analyte | Unit | As fed | Dry matter
      Dry matter | % | 88.2 | 100.0
      WSC | % | 9.0 | 10.2
      Starch | % | 1.1 | 1.2
      """;

  private static Layout layout(String table) {
    return Readings.report(Grids.table(table)).layout();
  }

  @Test
  void aPageIsDescribedByHeadingsFieldsAndLines() {
    Layout layout = layout(LONG);

    assertEquals("brook vale forage laboratory", layout.lab());
    assertEquals(
        List.of("analyte", "unit", "as fed", "dry matter"),
        layout.headings().stream().map(LayoutHeading::words).toList());
    assertEquals(
        List.of("", "", "af", "dm"), layout.headings().stream().map(LayoutHeading::basis).toList());
    assertEquals(
        List.of("DM", "WSC", "STARCH"), layout.lines().stream().map(LayoutLine::analyte).toList());
    assertEquals(
        List.of("%", "[af, dm]"),
        List.of(
            String.join("", layout.lines().get(1).units()),
            layout.lines().get(1).bases().toString()));
  }

  @Test
  void itHoldsNoFigureNoSampleNoDateAndNoClient() {
    String numbered = LONG.replace("Forage Laboratory", "Forage Laboratory 4711");
    String all = layout(numbered).toString().toLowerCase(java.util.Locale.ROOT);

    assertEquals(layout(LONG).id(), layout(numbered).id());
    for (String own : List.of("4711", "netherby", "n2", "2026", "88", "10.2", "1.1")) {
      assertFalse(all.contains(own), own + " in " + all);
    }
  }

  @Test
  void otherFiguresOtherSamplesAndOtherAnalytesAreTheSameLayout() {
    Layout other =
        layout(
            """
            Brook Vale Forage Laboratory
            Client: | Upper Moss
            Lot: | U7
            Sampled: | 2026-09-30
            Analyte | Unit | As fed | Dry matter
            Dry matter | % | 90.4 | 100.0
            Starch | % | <0.5 | <0.5
            Calcium | % | 0.41 | 0.45
            """);

    assertEquals(layout(LONG).id(), other.id());
  }

  @Test
  void anotherLaboratoryAnotherHeadingAndAnotherOrderAreOtherLayouts() {
    String id = layout(LONG).id();

    assertNotEquals(id, layout(LONG.replace("Brook Vale", "Hollow Farm")).id());
    assertNotEquals(id, layout(LONG.replace("As fed | Dry", "As received | Dry")).id());
    assertNotEquals(id, layout(LONG.replace("As fed | Dry matter", "Dry matter | As fed")).id());
  }

  @Test
  void aWideTableIsKnownByTheColumnsThatAreNoAnalytes() {
    String wide =
        """
        Hollow Farm Analytical Laboratory
        All results on dry matter except moisture.
        Lab no | Lot | Moisture (%) | WSC (%) | Starch (%)
        1 | N2 | 11.8 | 9.4 | 1.2
        """;
    String other =
        """
        Hollow Farm Analytical Laboratory
        All results on dry matter except moisture.
        Lab no | Lot | Moisture (%) | WSC (%) | Starch (%) | Ca (%)
        1 | P5 | 12.1 | 7.7 | 0.9 | 0.44
        2 | P6 | 12.4 | 8.1 | 0.8 | 0.45
        """;

    assertEquals(layout(wide).id(), layout(other).id());
    assertEquals(
        List.of("lab no", "lot"),
        layout(wide).headings().stream().map(LayoutHeading::words).toList());
    assertEquals("[dm]", layout(other).lines().get(3).bases().toString());
  }

  @Test
  void aHeadingThatStatesTheBasisOfAllResultsIsAHeadingToo() {
    Layout layout =
        layout(
            """
            Marsh End Soil and Crop
            Lot | N2
            Test | Unit | Result on dry matter | Technique
            Dry matter (as received) | % | 88.4 | NIR
            WSC | % | 13.6 | NIR
            """);

    assertEquals(4, layout.headings().size(), layout::toString);
  }

  @Test
  void withoutALaboratorysNameALayoutIsNotNamed() {
    Layout layout =
        layout(
            """
            Lot | Analyte | Result | Unit | Basis
            N2 | WSC | 9.4 | % | dry matter
            N2 | Starch | 1.2 | % | dry matter
            """);

    assertFalse(layout.isNamed(), layout::toString);
    assertTrue(!layout.isNone());
  }
}
