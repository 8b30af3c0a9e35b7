package rickyard.core.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said on the telephone of the vet and of the change. */
class CallWordsTest {
  private static Proposal proposal(int rank, String kind, boolean enough) {
    return new Proposal(rank, kind, enough, kind + " it: because of the figures", List.of(), null);
  }

  private static String remedy(List<Proposal> proposals, ChangeoverLine... days) {
    return CallWords.remedy(new RemedyFinder.Found(proposals, List.of(days)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ID | footsore or off its feed",
        "laminitis | footsore or off its feed",
        "PSSM | stiff, sweating, unwilling to move or off its feed",
        "HYPP | weak, trembling, breathing noisily or off its feed",
      })
  void namesTheSignsOfTheHorsesOwnIllness(String group, String signs) {
    assertEquals(
        " If it is " + signs + ", ring the veterinarian first.", CallWords.signs(Set.of(group)));
  }

  @Test
  void namesAllSignsOfAHorseOfTwoGroupsAndTheCommonOneOfNone() {
    assertEquals(
        " If it is footsore, stiff, sweating, unwilling to move or off its feed, ring the"
            + " veterinarian first.",
        CallWords.signs(List.of("ID", "PSSM")));
    assertEquals(
        " If it is footsore or off its feed, ring the veterinarian first.",
        CallWords.signs(List.of()));
  }

  @Test
  void anotherForageAtOnceAsksTheVetBeforeItStarts() {
    assertEquals(
        " What would put it right: swap it. It would be at once: ask the veterinarian before it"
            + " starts.",
        remedy(List.of(proposal(1, "swap", true)), new ChangeoverLine(1, 1, "HAY", 9)));
  }

  @Test
  void inStepsItTakesDaysAndStillAsksTheVet() {
    assertEquals(
        " What would put it right: blend it. It is phased in over days; ask the veterinarian before"
            + " it starts.",
        remedy(
            List.of(proposal(1, "controlled", false), proposal(2, "blend", true)),
            new ChangeoverLine(1, 1, "HAY", 9),
            new ChangeoverLine(2, 1, "HAY", 9),
            new ChangeoverLine(2, 5, "HAY", 4)));
  }

  @Test
  void whatChangesNoForageAsksNobody() {
    assertEquals(" What would put it right: hold it.", remedy(List.of(proposal(1, "hold", true))));
    assertEquals(
        " What would put it right: bucket it.", remedy(List.of(proposal(1, "bucket", true))));
  }

  @Test
  void whereNothingIsEnoughThatIsSaid() {
    assertEquals(
        " Nothing in reach puts it right yet.", remedy(List.of(proposal(1, "swap", false))));
    assertEquals(" Nothing in reach puts it right yet.", remedy(List.of()));
  }
}
