package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.season.OverTimeRules;

class SeasonTableTest {
  private static final String HEADER = "setting,key,value,source,locator,status\n";

  @TempDir Path config;

  private void office(String rows) {
    try {
      Files.writeString(config.resolve("season.csv"), HEADER + rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<String> problems(String row) {
    office(row);
    return assertThrows(UnusableTablesException.class, () -> SeasonTable.load(Optional.of(config)))
        .problems()
        .stream()
        .map(TableProblem::message)
        .toList();
  }

  @Test
  void theBuiltInTableIsSound() {
    OverTimeRules rules = SeasonTable.load(Optional.empty()).rules();
    assertEquals(AnalyteCode.NSC_WSC, rules.quantities().get(0));
    assertEquals(5, rules.leastPairs());
    assertEquals(0.05, rules.rareChance(), 1e-12);
  }

  @Test
  void anOfficeAsksForMoreLotsAndAnotherOrder() {
    office("pairs-least,,8,assumed,,office\nquantity,CP,0.5,assumed,,office\n");
    OverTimeRules rules = SeasonTable.load(Optional.of(config)).rules();
    assertEquals(8, rules.leastPairs());
    assertEquals(AnalyteCode.CP, rules.quantities().get(0));
  }

  @Test
  void numbersThatWouldSayTooMuchStopTheRun() {
    for (String row :
        List.of(
            "pairs-least,,1,assumed,,office\n",
            "tests-least,,2,assumed,,office\n",
            "years-least,,3.5,assumed,,office\n",
            "rare-chance-pct,,60,assumed,,office\n",
            "pairs-least,,many,assumed,,office\n",
            "quantity,no code,3,assumed,,office\n",
            "pairs-most,,3,assumed,,office\n",
            "pairs-least,,,,,off\n")) {
      List<String> problems = problems(row);
      assertEquals(1, problems.size(), row + problems);
    }
    assertEquals(
        List.of(
            "office config/season.csv, row 2, column \"value\": expected a whole number from 2 to"
                + " 1000, found \"1\""),
        problems("pairs-least,,1,assumed,,office\n"));
  }
}
