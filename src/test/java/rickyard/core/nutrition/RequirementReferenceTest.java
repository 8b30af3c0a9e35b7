package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rickyard.core.nutrition.CheckRow.Evidence;
import rickyard.core.nutrition.RequirementChecks.Check;

/**
 * Holds requirements, needs per kg, steps of pregnancy, growth, intake rules and maximum levels
 * against {@code reference/requirement-checks.csv}. Values are the sources', never ours; what does
 * not agree is listed with its reason in {@code reference/requirement-exceptions.csv}.
 */
class RequirementReferenceTest {
  private static final List<Check> ALL = RequirementChecks.all();

  static Stream<Check> held() {
    return ALL.stream().filter(Check::mustAgree);
  }

  static Stream<Check> listed() {
    return ALL.stream().filter(c -> !c.mustAgree());
  }

  /**
   * Rows that were computed from the same equations prove nothing about the source; they hold that
   * no coefficient changes unseen.
   */
  @ParameterizedTest
  @MethodSource("held")
  void agreesWithTheRowAtItsPrintedRounding(Check check) {
    assertTrue(check.agrees(), check::toString);
  }

  /** An exception that agrees is none, and would hide a change. */
  @ParameterizedTest
  @MethodSource("listed")
  void aListedExceptionDoesNotAgree(Check check) {
    assertFalse(check.agrees(), check::toString);
    assertEquals(check.exception().orElseThrow().kind().equals("not-held"), check.got().isEmpty());
  }

  @Test
  void everyListedExceptionIsARow() {
    Set<String> rows = ALL.stream().map(c -> c.row().key()).collect(Collectors.toSet());
    Set<String> listed = new TreeSet<>(RequirementChecks.exceptions().keySet());
    listed.removeAll(rows);
    assertEquals(Set.of(), listed);
  }

  @Test
  void everyRowMarkedAsAMismatchIsListed() {
    assertEquals(
        List.of(),
        ALL.stream().filter(c -> c.row().isKnownMismatch() && c.exception().isEmpty()).toList());
  }

  @Test
  void theTableHoldsAsManyRowsOfEachKindAsWhenItWasRead() {
    assertEquals(1060, ALL.size());
    assertEquals(17, ALL.stream().filter(c -> c.row().isKnownMismatch()).count());
    assertEquals(
        Map.of(
            Evidence.PRINTED, 191L,
            Evidence.RECALLED, 199L,
            Evidence.FITTED, 49L,
            Evidence.COMPUTED, 605L,
            Evidence.MEMORY, 16L),
        ALL.stream()
            .collect(Collectors.groupingBy(c -> c.row().evidence(), Collectors.counting())));
  }
}
