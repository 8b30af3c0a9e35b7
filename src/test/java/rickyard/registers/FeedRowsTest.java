package rickyard.registers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.nutrition.Feed;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;
import rickyard.tables.TableProblem;

class FeedRowsTest {
  private static final double EXACT = 1e-12;

  @TempDir private Path folder;

  private Measured content(String feed, String batch, AnalyteCode code) {
    Feed found = new OfficeFolder(folder).load().office().findFeed(feed, batch).orElseThrow();
    return content(found, code);
  }

  private static Measured content(Feed feed, AnalyteCode code) {
    return Optional.ofNullable(feed.contents().get(code)).orElseThrow();
  }

  private Loaded withFeeds(String header, String row) {
    return new OfficeFolder(folder)
        .with("feeds.csv", "feed_id,name,role,form,batch,dm_pct," + header + "\n" + row + "\n")
        .with("rations.csv", "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n")
        .with("measures.csv", "client_id,item,measure,kg,weighed_on\n")
        .load();
  }

  @Test
  void aDryMatterContentIsTakenAsItStands() {
    Measured wsc = content("F1", "", AnalyteCode.WSC);

    assertEquals(6.0, wsc.best());
    assertEquals(5.95, wsc.low(), EXACT);
    assertEquals(6.05, wsc.high(), EXACT);
    assertEquals(Basis.DRY_MATTER, wsc.basis());
    assertEquals(new Evidence.Registered("feeds.csv", 2, "wsc_pct_dm", "6.0"), wsc.evidence());
  }

  // By definition of dry matter: 22 g/kg as fed at 88 % DM is 2.2 % / 0.88 = 2.5 % of dry matter.
  @Test
  void anAsFedContentIsPutOnDryMatterThroughTheFeedsOwnDryMatter() {
    Measured calcium = content("F1", "", AnalyteCode.CA);

    assertEquals(2.5, calcium.best(), EXACT);
    assertEquals(Unit.PERCENT, calcium.unit());
    assertInstanceOf(Evidence.Derived.class, calcium.evidence());
  }

  // By definition of the calorie: 12.552 MJ / 4.184 = 3 Mcal.
  @Test
  void energyAndVitaminsComeInCanonicalUnits() {
    assertEquals(3.0, content("F1", "", AnalyteCode.DE).best(), EXACT);
    assertEquals(Unit.MCAL_PER_KG, content("F1", "", AnalyteCode.DE).unit());
    assertEquals(500.0, content("F1", "", AnalyteCode.VIT_E).best(), 1e-9);
    assertEquals(30.0, content("F1", "", AnalyteCode.CU).best(), EXACT);
  }

  // Maximum 4.4 % as fed at 88 % DM: at most 5 % of dry matter.
  @Test
  void aMaximumIsABoundAndNoValue() {
    Measured starch = content("F1", "", AnalyteCode.STARCH);

    assertEquals(5.0, starch.upper(), EXACT);
    assertEquals(0.0, starch.lower());
    assertTrue(starch.isOneSided());
  }

  @Test
  void aMinimumIsOpenAbove() {
    Loaded loaded = withFeeds("cp_pct_dm,cp_kind", "F1,Cubes,balancer,pellets,,90,12,min");
    Measured protein = content(loaded.office().feeds().get(0), AnalyteCode.CP);

    assertEquals(12.0, protein.lower());
    assertFalse(protein.isBoundedAbove());
  }

  // 0.4 points: design of the judgement for batches, assumed; given u wins over the table.
  @Test
  void uncertaintyComesFromTheRegisterElseFromTheKind() {
    assertEquals(0.4, content("F2", "B7", AnalyteCode.WSC).u(), EXACT);
    assertEquals(1.0, content("F1", "", AnalyteCode.WSC).u(), EXACT);
    Measured given = content("F2", "B7", AnalyteCode.STARCH);
    // u² = (0.3/0.9)² + (y · u_DM/DM)² with the typical u of dry matter, 1 point
    double fromDryMatter = 2.0 * 1 / 90;
    assertEquals(Math.hypot(0.3 / 0.9, fromDryMatter), given.u(), EXACT);
  }

  @Test
  void aMissingBasisShowsTheFormExpected() {
    Loaded loaded = withFeeds("wsc_pct,de_mj_per_kg,se", "F1,Cubes,balancer,pellets,,90,6,12,0.3");

    assertEquals(
        List.of(
            "feeds.csv, row 1, column \"de_mj_per_kg\": expected name, unit and basis, as in"
                + " de_mj_per_kg_dm or de_mj_per_kg_af, found \"de_mj_per_kg\"",
            "feeds.csv, row 1, column \"se\": expected name, unit and basis, as in"
                + " se_mg_per_kg_dm or se_mg_per_kg_af, found \"se\"",
            "feeds.csv, row 1, column \"wsc_pct\": expected name, unit and basis, as in wsc_pct_dm"
                + " or wsc_pct_af, found \"wsc_pct\""),
        loaded.fatal().stream().map(TableProblem::message).toList());
  }

  @Test
  void aUnitOfAnotherKindIsRefused() {
    Loaded loaded = withFeeds("vit_e_mg_per_kg_dm", "F1,Cubes,balancer,pellets,,90,6");

    assertEquals(
        List.of(
            "feeds.csv, row 1, column \"vit_e_mg_per_kg_dm\": expected name, unit and basis, as in"
                + " vit_e_iu_per_kg_dm or vit_e_iu_per_kg_af, found \"vit_e_mg_per_kg_dm\""),
        loaded.fatal().stream().map(TableProblem::message).toList());
  }

  @Test
  void oneAnalyteInTwoColumnsIsReadFromTheFilledOne() {
    String header = "wsc_pct_dm,wsc_pct_af";
    Loaded one = withFeeds(header, "F1,Cubes,balancer,pellets,,90,,5.4");
    Loaded both = withFeeds(header, "F1,Cubes,balancer,pellets,,90,6,5.4");

    assertEquals(6.0, content(one.office().feeds().get(0), AnalyteCode.WSC).best(), EXACT);
    assertEquals(List.of("F1"), both.concerned(Concern.FEED));
  }

  @Test
  void aContentAboveTheWholeIsABadRowOfThatFeedOnly() {
    Loaded loaded = withFeeds("wsc_pct_af", "F1,Cubes,balancer,pellets,,50,60");

    assertEquals(
        List.of(
            "feeds.csv, row 2, column \"wsc_pct_af\": expected at most 100 % of dry matter, found"
                + " \"60\""),
        loaded.badRows().stream().map(BadRow::message).toList());
  }

  @Test
  void theOnlyBatchIsMeantWhereNoneIsSaid() {
    Office office = new OfficeFolder(folder).load().office();

    assertTrue(office.findFeed("F1", "").isPresent());
    assertTrue(office.findFeed("F2", "").isEmpty());
    assertEquals("B8", office.findFeed("F2", "B8").orElseThrow().batch());
  }

  @Test
  void aColumnOfAnUnknownAnalyteIsKeptAndWarnedAbout() {
    Loaded loaded = withFeeds("biotin_mg_per_kg_af", "F1,Cubes,balancer,pellets,,90,3");

    assertTrue(loaded.isClean());
    assertTrue(loaded.warnings().stream().anyMatch(w -> w.column().equals("biotin_mg_per_kg_af")));
  }
}
