package rickyard.registers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.nutrition.Extras;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Level;
import rickyard.core.nutrition.WeightBy;
import rickyard.tables.TableProblem;
import rickyard.tables.UnusableTablesException;

class RegistersTest {
  @TempDir private Path folder;

  private static List<String> messages(List<TableProblem> problems) {
    return problems.stream().map(TableProblem::message).toList();
  }

  private static List<String> badMessages(Loaded loaded) {
    return loaded.badRows().stream().map(BadRow::message).distinct().toList();
  }

  @Test
  void anAnswerMayHoldForTheLayout() {
    String header = "question_id,answer,by,on,note,scope\n";
    Loaded loaded =
        new OfficeFolder(folder)
            .with(
                "answers.csv",
                header
                    + "Q1,dry matter,Ash,2026-05-10,,layout\n"
                    + "Q2,as fed,Ash,2026-05-10,,report\n"
                    + "Q3,as fed,Ash,2026-05-10,,\n"
                    + "Q4,as fed,Ash,2026-05-10,,lab\n")
            .load();

    assertEquals(
        List.of("layout", "", ""), loaded.office().answers().stream().map(a -> a.scope()).toList());
    assertEquals(
        List.of(
            "answers.csv, row 5, column \"scope\": expected one of report, layout, found \"lab\""),
        loaded.badRows().stream().map(BadRow::message).toList());
  }

  @Test
  void aFaultlessOfficeLoadsWhole() {
    Loaded loaded = new OfficeFolder(folder).load();

    assertEquals(List.of(), messages(loaded.fatal()));
    assertEquals(List.of(), badMessages(loaded));
    Office office = loaded.requireUsable();
    assertEquals(2, office.clients().size());
    assertEquals(4, office.horses().size());
    assertEquals(2, office.lots().size());
    assertEquals(1, office.deliveries().size());
    assertEquals(3, office.feeds().size());
    assertEquals(4, office.rations().size());
    assertEquals(2, office.measures().size());
    assertEquals(1, office.answers().size());
    assertEquals(2, office.decisions().size());
    assertEquals(9, office.files().size());
  }

  @Test
  void aHorseKeepsWhatItsRowSays() {
    Horse horse = new OfficeFolder(folder).load().office().findHorse("H1").orElseThrow();

    assertEquals(512.5, horse.bodyWeightKg());
    assertEquals(Optional.of(YearMonth.of(2012, 4)), horse.birthMonth());
    assertEquals(Set.of("insulin-dysregulation", "ppid"), horse.conditions());
    assertEquals(Level.AVERAGE, horse.level());
    assertEquals(OptionalDouble.of(512.5), horse.matureWeightKg());
    assertEquals(OptionalDouble.of(6.5), horse.bodyCondition());
    assertEquals(OptionalInt.of(2), horse.mealsPerDay());
    assertEquals(Extras.NONE, horse.extras());
  }

  @Test
  void aClientsLanguageIsReadAndWhatIsNoneIsOnlyWarnedAbout() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with(
                "clients.csv",
                "client_id,name,email,phone,adviser,units,language\n"
                    + "C1,Ash Farm,ash@example.org,0100,A1,kg,DE\n"
                    + "C2,Birch Farm,,,A1,lb,Deutsch\n")
            .load();

    assertEquals("de", loaded.office().findClient("C1").orElseThrow().language());
    assertEquals("", loaded.office().findClient("C2").orElseThrow().language());
    assertEquals(List.of(), badMessages(loaded));
    assertTrue(
        messages(loaded.warnings())
            .contains(
                "clients.csv, row 3, column \"language\": expected two or three letters, for"
                    + " example en or de; English is used, found \"Deutsch\""),
        messages(loaded.warnings()).toString());
  }

  @Test
  void blankCellsAreNotAskedUnknownOrGuessed() {
    Loaded loaded = new OfficeFolder(folder).load();
    Horse horse = loaded.office().findHorse("H2").orElseThrow();

    assertEquals(OptionalDouble.empty(), horse.grazingHoursPerDay());
    assertEquals(Extras.UNKNOWN, horse.extras());
    assertEquals(WeightBy.GUESS, horse.weightBy());
    assertEquals(
        List.of(
            "horses.csv, row 3, column \"weight_by\": expected scale, tape or guess; taken as a"
                + " guess, found \"\""),
        messages(loaded.warnings()));
  }

  @Test
  void aWrongCellIsToldInOneSentenceAndTakesOnlyItsHorse() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("horses.csv", OfficeFolder.HORSES.replace("2012-04", "12/2019"))
            .load();

    assertTrue(loaded.isUsable());
    assertEquals(
        List.of("horses.csv, row 2, column \"birth_month\": expected YYYY-MM, found \"12/2019\""),
        badMessages(loaded));
    assertEquals(List.of("H1"), loaded.concerned(Concern.HORSE));
    assertEquals("C1", loaded.badRowsOf(Concern.HORSE, "H1").get(0).clientId());
    assertEquals(Set.of("H2", "H3", "H4"), loaded.office().horses().keySet());
  }

  @Test
  void everyFaultIsCollectedNotOnlyTheFirst() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with(
                "horses.csv",
                OfficeFolder.HORSES
                    .replace("512.5,tape,2026-05-01", "-3,rope,2026-05-12")
                    .replace("work,moderate", "work,average")
                    .replace("pregnant,,9", "pregnant,,")
                    .replace(
                        "H4,C2,Dill,horse,2025-04,310,scale,,,560",
                        "H4,C9,Dill,hors,,310,scale,,,"))
            .load();

    assertEquals(
        List.of(
            "horses.csv, row 2, column \"body_weight_kg\": expected a weight above 0 to 1500 kg,"
                + " found \"-3\"",
            "horses.csv, row 2, column \"weigh"
                + "ed_on\": expected a day not after 2026-05-11, found \"2026-05-12\"",
            "horses.csv, row 2, column \"weight_by\": expected one of scale, tape, guess, found"
                + " \"rope\"",
            "horses.csv, row 3, column \"level\": expected one of light, moderate, heavy,"
                + " very-heavy for status work, found \"average\"",
            "horses.csv, row 4, column \"month\": expected the month of status pregnant, from 1 to"
                + " 12, found \"\"",
            "horses.csv, row 5, column \"birth_month\": expected YYYY-MM for a growing horse,"
                + " found \"\"",
            "horses.csv, row 5, column \"client_id\": expected a client of clients.csv (nearest:"
                + " C1), found \"C9\"",
            "horses.csv, row 5, column \"mature_weight_kg\": expected the mature weight of a"
                + " growing horse, found \"\"",
            "horses.csv, row 5, column \"type\": expected one of horse, pony, miniature, donkey,"
                + " found \"hors\""),
        badMessages(loaded));
  }

  @Test
  void aMistypedConditionIsNeverPassedOver() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("horses.csv", OfficeFolder.HORSES.replace(";ppid", ";laminitis-acut"))
            .load();

    assertEquals(List.of("H1"), loaded.concerned(Concern.HORSE));
    assertTrue(badMessages(loaded).get(0).contains("(nearest to laminitis-acut: laminitis-acute)"));
  }

  @Test
  void anUnknownItemTakesTheWholeRationOfItsHorse() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("rations.csv", OfficeFolder.RATIONS.replace("H1,F1", "H1,F9"))
            .load();

    assertEquals(
        List.of(
            "rations.csv, row 3, column \"item\": expected a lot of lots.csv or a feed of feeds.csv"
                + " (nearest: F1), found \"F9\""),
        badMessages(loaded));
    assertEquals(List.of("H1"), loaded.concerned(Concern.HORSE));
    assertTrue(loaded.office().findRation("H1", OfficeFolder.AS_OF).isEmpty());
    assertTrue(loaded.office().findRation("H2", OfficeFolder.AS_OF).isPresent());
  }

  @Test
  void aRationRowOfAMistypedHorseAlsoConcernsTheHorseMeant() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("rations.csv", OfficeFolder.RATIONS.replace("H1,F1", "HI,F1"))
            .load();

    assertEquals(List.of("H1", "H2", "H3", "H4", "HI"), loaded.concerned(Concern.HORSE));
  }

  @Test
  void aRationRowWithoutAHorseStopsTheMorning() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("rations.csv", OfficeFolder.RATIONS.replace("H1,F1", ",F1"))
            .load();

    assertEquals(
        List.of("rations.csv, row 3, column \"horse_id\": expected a value, found \"\""),
        messages(loaded.fatal()));
  }

  @Test
  void aBadLotConcernsTheLotAndTheHorsesOnIt() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("lots.csv", OfficeFolder.LOTS.replace("grass-hay,5", "grass-hay,105"))
            .load();

    assertEquals(List.of("L1"), loaded.concerned(Concern.LOT));
    assertEquals(List.of("H1", "H2"), loaded.concerned(Concern.HORSE));
    assertFalse(loaded.office().lots().containsKey("L1"));
  }

  @Test
  void aBatchMustBeSaidWhereAFeedHasSeveral() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("rations.csv", OfficeFolder.RATIONS.replace("F2,B7", "F2,"))
            .load();

    assertEquals(
        List.of(
            "rations.csv, row 4, column \"batch\": expected the batch, because F2 has several:"
                + " B7, B8, found \"\""),
        badMessages(loaded));
  }

  @Test
  void theRationInForceIsTheNewestNotAfterTheDay() {
    Office office = new OfficeFolder(folder).load().office();

    assertEquals(2, office.findRation("H1", OfficeFolder.AS_OF).orElseThrow().items().size());
    assertEquals(1, office.findRation("H1", LocalDate.of(2026, 6, 1)).orElseThrow().items().size());
    assertEquals(1, office.plannedRations("H1", OfficeFolder.AS_OF).size());
    assertEquals(Optional.empty(), office.findRation("H1", LocalDate.of(2025, 12, 31)));
  }

  @Test
  void theApostropheOfOurOwnFilesIsStripped() {
    assertEquals("=second test", new OfficeFolder(folder).load().office().decisions().get(1).why());
    assertEquals(3, new OfficeFolder(folder).load().office().decisions().get(1).row());
  }

  @Test
  void anAdviserHasANameOnceTheRegisterIsThere() {
    Office without = new OfficeFolder(folder).load().office();
    assertEquals(Optional.empty(), without.findAdviser("quist"));

    Loaded loaded =
        new OfficeFolder(folder)
            .with("advisers.csv", "adviser,name,phone\nquist,Ada Quist,555-9\nnobody,,\n")
            .load();
    Optional<Adviser> quist = loaded.office().findAdviser(" quist ");
    assertEquals(Optional.of(new Adviser("quist", "Ada Quist", "", "555-9")), quist);
    assertEquals(Optional.empty(), loaded.office().findAdviser("nobody"));
    assertEquals(List.of(Concern.ADVISER), loaded.badRows().stream().map(BadRow::concern).toList());
  }

  @Test
  void anUnknownFileNameStopsWithTheNearestName() {
    Loaded loaded = new OfficeFolder(folder).with("horse.csv", "x").load();

    assertEquals(
        List.of(
            "horse.csv: expected only advisers.csv, answers.csv, clients.csv, decisions.csv,"
                + " deliveries.csv, feeds.csv, horses.csv, lots.csv, measures.csv, rations.csv in"
                + " this folder (nearest: horses.csv), found \"horse.csv\""),
        messages(loaded.fatal()));
    assertThrows(UnusableTablesException.class, loaded::requireUsable);
  }

  @Test
  void filesThatSystemsLeaveBehindAreNoRegisters() {
    Loaded loaded =
        new OfficeFolder(folder).with(".DS_Store", "x").with(".~lock.horses.csv#", "x").load();

    assertTrue(loaded.isClean());
  }

  @Test
  void aRegisterNeverSeenMayBeAbsentButNotOneThatWasThere() {
    OfficeFolder office = new OfficeFolder(folder).without("measures.csv");

    assertTrue(office.load().isClean());
    assertEquals(
        List.of(
            "measures.csv: expected a file, because it was there at the last finished morning,"
                + " found \"none\""),
        messages(
            office
                .load(LoadContext.of(OfficeFolder.AS_OF).withPresentBefore(Set.of("measures.csv")))
                .fatal()));
  }

  @Test
  void anAbsentFolderIsAnOfficeWithoutRegisters() {
    Loaded loaded = Registers.load(folder.resolve("nowhere"), LoadContext.of(OfficeFolder.AS_OF));

    assertTrue(loaded.isClean());
    assertTrue(loaded.office().horses().isEmpty());
  }

  @Test
  void aMissingColumnNamesTheOneThatWasProbablyMeant() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("horses.csv", OfficeFolder.HORSES.replace("vet_plan", "vet_plann"))
            .load();

    assertEquals(
        List.of(
            "horses.csv, row 1, column \"vet_plan\": expected a column vet_plan, found \"none"
                + " (nearest: vet_plann)\""),
        messages(loaded.fatal()));
  }

  @Test
  void aColumnThatSaysNothingWhenBlankMayBeAbsentUnlessMistyped() {
    OfficeFolder office = new OfficeFolder(folder);
    office.with("clients.csv", "client_id,name\nC1,Ash\nC2,Birch\n");
    assertTrue(office.load().isClean());

    office.with("clients.csv", "client_id,name,emial\nC1,Ash,\nC2,Birch,\n");
    assertFalse(office.load().isUsable());
  }

  @Test
  void bothUnitsOfOneWeightStop() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("measures.csv", "client_id,item,measure,kg,lb,weighed_on\nC1,F1,scoop,1,2,\n")
            .load();

    assertEquals(
        List.of(
            "measures.csv, row 1, column \"lb\": expected only one of kg and lb, found \"both\""),
        messages(loaded.fatal()));
  }

  @Test
  void aDuplicateKeyStops() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("lots.csv", OfficeFolder.LOTS + "L1,C1,straw,,,,,,,,,,\n")
            .load();

    assertEquals(
        List.of(
            "lots.csv, row 4, column \"lot_id\": expected each lot_id once (also in row 2), found"
                + " \"L1\""),
        messages(loaded.fatal()));
  }

  @Test
  void unknownColumnsAreWarnedAbout() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with(
                "clients.csv",
                "client_id,name,email,phone,adviser,units,vip\nC1,A,,,,,x\nC2,B,,,,,\n")
            .load();

    assertTrue(loaded.isClean());
    assertTrue(
        messages(loaded.warnings()).stream()
            .anyMatch(m -> m.startsWith("clients.csv, row 1, column \"vip\": expected a known")));
    assertTrue(loaded.office().files().get(1).text().contains("vip"));
  }

  @Test
  void aBadMeasureHidesTheOlderOnesAndConcernsTheHorsesMeasuredByIt() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("measures.csv", OfficeFolder.MEASURES + "C2,L2,bale,about 20,2026-05-01\n")
            .load();

    assertEquals(List.of("H3"), loaded.concerned(Concern.HORSE));
    assertEquals(Optional.empty(), loaded.office().findMeasure("C2", "L2", "bale"));
  }

  @Test
  void aBadDeliveryConcernsTheClientsHorsesOnThatHay() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with("deliveries.csv", OfficeFolder.DELIVERIES.replace("2026-05-20", "20 May"))
            .load();

    assertEquals(List.of("L2"), loaded.concerned(Concern.LOT));
    assertEquals(List.of("H1", "H2"), loaded.concerned(Concern.HORSE));
  }

  @Test
  void theDigestFollowsTheBytesAndNothingElse() {
    String digest = new OfficeFolder(folder).load().office().digest();

    assertEquals(digest, new OfficeFolder(folder).load().office().digest());
    assertFalse(
        digest.equals(
            new OfficeFolder(folder)
                .with("clients.csv", OfficeFolder.CLIENTS.replace("\n", "\r\n"))
                .load()
                .office()
                .digest()));
  }
}
