package rickyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LedgerChoiceTest {
  private static final Path USUAL = Path.of("office", "ledger");
  private static final String SERVER = "jdbc:postgresql://db.example/hay";

  private static LedgerChoice of(List<String> given, Map<String, String> environment) {
    return LedgerChoice.of(given, USUAL, environment);
  }

  private static String server(LedgerChoice choice) {
    return choice.server().map(Object::toString).orElse("none");
  }

  @Test
  void withoutAWordItIsTheFolderInTheOffice() {
    assertEquals(new LedgerChoice(USUAL, Optional.empty()), of(List.of(), Map.of()));
  }

  @Test
  void aServerLeavesTheFolderWhereItIs() {
    LedgerChoice choice = of(List.of(SERVER), Map.of());

    assertEquals(USUAL, choice.folder());
    assertEquals("the PostgreSQL database hay at db.example", server(choice));
  }

  @Test
  void aFolderAndAServerMayBothBeGiven() {
    LedgerChoice choice = of(List.of(SERVER, "elsewhere"), Map.of());

    assertEquals(Path.of("elsewhere"), choice.folder());
    assertTrue(choice.server().isPresent());
  }

  @Test
  void theVariableCountsOnlyWhereTheOptionIsNotGiven() {
    Map<String, String> environment = Map.of(LedgerChoice.VARIABLE, SERVER);

    assertTrue(of(List.of(), environment).server().isPresent());
    assertEquals(
        new LedgerChoice(Path.of("elsewhere"), Optional.empty()),
        of(List.of("elsewhere"), environment));
    assertEquals(
        new LedgerChoice(USUAL, Optional.empty()),
        of(List.of(), Map.of(LedgerChoice.VARIABLE, "")));
  }

  @Test
  void twoOfAKindAreRefused() {
    for (List<String> given : List.of(List.of("a", "b"), List.of(SERVER, SERVER + "2"))) {
      IllegalArgumentException e =
          assertThrows(IllegalArgumentException.class, () -> of(given, Map.of()));
      assertEquals("--ledger takes one folder and one database at most", e.getMessage());
    }
  }
}
