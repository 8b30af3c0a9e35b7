package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Horses' conditions by the built-in table; the groups are those of the design. */
class ConditionsTest {
  private static final Conditions TABLE = Hay.TABLES.conditions();

  private static HorseGroups of(String... conditions) {
    return TABLE.of(List.of(conditions));
  }

  /** Past or acute laminitis makes the group, with insulin or PPID beside it as well as alone. */
  @ParameterizedTest
  @CsvSource({
    "laminitis-past, laminitis",
    "laminitis-acute, laminitis",
    "insulin-dysregulation, ID",
    "ems, ID",
    "insulin-dysregulation|laminitis-past, laminitis",
    "ems|laminitis-acute, laminitis",
    "ppid|laminitis-past, laminitis",
    "ppid, ID",
    "pssm, PSSM",
    "hypp, HYPP",
    "hypp|pssm1, HYPP|PSSM",
    "ulcers, ''",
    "overweight|dental, ''"
  })
  void conditionsMakeTheGroups(String conditions, String groups) {
    HorseGroups found = of(conditions.split("\\|", -1));

    assertEquals(groups, String.join("|", found.groups()));
    assertEquals(Set.of(), found.unknown());
  }

  @Test
  void howTheyAreWrittenDoesNotMatter() {
    HorseGroups found = of(" PPID ", "", "  ", "Laminitis-Past");

    assertEquals(Set.of("laminitis"), found.groups());
    assertEquals(Set.of(), found.unknown());
  }

  @Test
  void whatTheTableDoesNotKnowIsAskedAboutAndTheRestCounts() {
    HorseGroups found = of("windgalls", "hypp");

    assertEquals(Set.of("windgalls"), found.unknown());
    assertEquals(Set.of("HYPP"), found.groups());
  }

  @Test
  void ppidUntestedSaysThatItCountsAsInsulinDysregulation() {
    String untested =
        "PPID without an insulin test counts as insulin dysregulation until it is tested";

    assertEquals(List.of(untested), of("ppid").notes());
    assertEquals(List.of(), of("ppid", "ems").notes(), "it was tested");
    assertEquals(List.of(), of("pssm").notes());
  }

  @Test
  void aNoteOfTwoConditionsIsSaidOnce() {
    assertEquals(
        List.of("never restricted without a vet plan"), of("sick", "liver-disease").notes());
  }

  @Test
  void theTableKnowsItsConditionsAndGroups() {
    assertEquals("HYPP ID PSSM laminitis pregnant pregnant-late", String.join(" ", TABLE.groups()));
    assertTrue(TABLE.known().containsAll(Set.of("dental", "ppid", "hypp", "laminitis-acute")));
  }

  @Test
  void aHorseHasTheLimitsOfItsGroupsAndThoseOfAllHorses() {
    List<Limit> table =
        List.of(
            limit("z-all", Limit.ALL, LimitSubject.LOT),
            limit("id-diet", "ID", LimitSubject.DIET),
            limit("pssm", "PSSM", LimitSubject.LOT),
            limit("id", "ID", LimitSubject.LOT),
            limit("all-diet", Limit.ALL, LimitSubject.DIET));

    assertEquals(
        List.of("z-all", "id"), ids(of("ems").limits(table, LimitSubject.LOT)), "table's order");
    assertEquals(List.of("id-diet", "all-diet"), ids(of("ems").limits(table, LimitSubject.DIET)));
    assertEquals(List.of("all-diet"), ids(of().limits(table, LimitSubject.DIET)));
    assertEquals(List.of(), ids(of("ems").limits(table, LimitSubject.BUCKET_MEAL)));
  }

  private static Limit limit(String id, String group, LimitSubject subject) {
    return Limits.named(id, group, subject, Severity.CHANGE, IfMissing.ASK);
  }

  private static List<String> ids(List<Limit> limits) {
    return limits.stream().map(Limit::id).toList();
  }
}
