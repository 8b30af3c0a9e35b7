package rickyard.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class EvidenceTest {
  private static final Place PLACE = new Place("d0c", 2, 7, "WSC");

  @Test
  void eachKindHasTheWordOfTheOutputColumns() {
    assertEquals("reported", new Evidence.Reported(PLACE, "9.4").origin());
    assertEquals("assumed", new Evidence.Hinted(PLACE, "9.4", "basis, layouts 3").origin());
    assertEquals("derived", new Evidence.Derived("WSC + starch", List.of()).origin());
    assertEquals("assumed", new Evidence.Assumed("typical-values 1", "grass-hay").origin());
    assertEquals("reported", new Evidence.Registered("feeds", 4, "nsc", "12").origin());
    assertEquals("answered", new Evidence.Answered("q1", "ruth", "2026-11-02").origin());
  }

  @Test
  void whatWentIntoAFormulaStaysWhatItWas() {
    Measured wsc =
        Measured.of(Unit.PERCENT, Basis.DRY_MATTER, 9, 0, 1, new Evidence.Reported(PLACE, "9"));
    List<Evidence.Term> terms = new ArrayList<>(List.of(new Evidence.Term("WSC", wsc)));
    Evidence.Derived derived = new Evidence.Derived("WSC + starch", terms);

    terms.clear();

    assertEquals(List.of(new Evidence.Term("WSC", wsc)), derived.inputs());
  }

  @Test
  void aPlaceIsSaidAsAPersonCounts() {
    assertEquals("page 2, row 7, column \"WSC\"", PLACE.words());
    assertEquals("page 1, row 1, column \"\"", new Place("d0c", 1, 1, "").words());
  }

  @Test
  void aPlaceCountsFromOne() {
    assertEquals(
        "page and row count from 1, were 0, 3",
        assertThrows(IllegalArgumentException.class, () -> new Place("d0c", 0, 3, "WSC"))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> new Place("d0c", 1, 0, "WSC"));
  }

  @Test
  void aBasisHasTheCodeOfTheTables() {
    assertEquals("af", Basis.AS_FED.code());
    assertEquals("dm", Basis.DRY_MATTER.code());
    assertEquals("none", Basis.NONE.code());
  }
}
