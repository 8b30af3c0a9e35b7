package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Which samples of long lists are revisions of one another. */
class StrandsTest {
  private static Sample sample(String label, String batch, String labNo) {
    return new Sample(
        label,
        batch,
        labNo,
        "",
        Optional.empty(),
        OptionalInt.empty(),
        Reports.sugars("N2", 8, 1).readings(),
        List.of(),
        List.of());
  }

  private static Sample numbered(String label, String labNo) {
    return sample(label, "", labNo);
  }

  private static Sample named(String label) {
    return sample(label, "", "");
  }

  private static List<Held> list(String document, Sample... samples) {
    Received received = Reports.fin(document, "R-1", samples);
    List<Held> held = new ArrayList<>();
    for (int i = 0; i < samples.length; i++) {
      held.add(new Held(received, received.report(), i, samples[i]));
    }
    return held;
  }

  @SafeVarargs
  private static String strands(List<Held>... lists) {
    List<Held> series = new ArrayList<>();
    for (int i = lists.length - 1; i >= 0; i--) {
      series.addAll(lists[i]);
    }
    List<String> words = new ArrayList<>();
    for (List<Held> strand : Strands.of(series)) {
      words.add(
          String.join("=", strand.stream().map(h -> h.key.document() + h.key.index()).toList()));
    }
    return String.join(" ", words);
  }

  @Test
  void oneNumberOfTheLaboratoryIsOneSampleWhateverItsName() {
    assertEquals(
        "a0=b1 a1 b0",
        strands(
            list("a", numbered("North", "7"), numbered("South", "8")),
            list("b", numbered("East", "9"), numbered("West", " 7"))));
  }

  @Test
  void otherNumbersAreOtherSamplesWhateverTheirName() {
    assertEquals(
        "a0 a1 b0 b1",
        strands(
            list("a", numbered("North", "1"), numbered("South", "2")),
            list("b", numbered("North", "3"), numbered("South", "4"))));
  }

  @Test
  void oneNameIsOneSampleWhereNotBothHaveNumbers() {
    assertEquals(
        "a0=b1 a1 b0",
        strands(
            list("a", named("North"), numbered("South", "2")),
            list("b", numbered("East", "3"), numbered("north", "4"))));
  }

  @Test
  void oneNameWithAnotherBatchIsAnotherSample() {
    assertEquals(
        "a0 a1 b0 b1",
        strands(
            list("a", sample("Chop", "B7", ""), named("South")),
            list("b", sample("Chop", "B8", ""), named("East"))));
  }

  @Test
  void samplesWithoutNameAndNumberAreNobodysRevision() {
    assertEquals(
        "a0 a1 b0 b1", strands(list("a", named(""), named("")), list("b", named(""), named(""))));
  }

  @Test
  void aNameTwiceInOneListIsTwoSamplesUntilAnotherListHasItToo() {
    assertEquals(
        "a0 a1 b0 b1",
        strands(
            list("a", named("North"), named("North")), list("b", named("South"), named("East"))));
    assertEquals(
        "a0=a1=b0 b1",
        strands(
            list("a", named("North"), named("North")),
            list("b", numbered("North", "5"), named("East"))));
  }

  @Test
  void aNumberTwiceInOneListIsTwoSamplesUntilAnotherListHasItToo() {
    assertEquals(
        "a0 a1 b0 b1",
        strands(
            list("a", numbered("North", "5"), numbered("South", "5")),
            list("b", numbered("East", "6"), numbered("West", "7"))));
    assertEquals(
        "a0=a1=b0 b1",
        strands(
            list("a", numbered("North", "5"), numbered("South", "5")),
            list("b", numbered("East", "5"), numbered("West", "7"))));
  }

  @Test
  void sheetsOfOneSampleAreRevisionsMoreReadilyThanLists() {
    assertEquals("a0=b0", strands(list("a", named("")), list("b", named("North"))));
    assertEquals(
        "a0 b0 b1", strands(list("a", named("")), list("b", named("North"), named("South"))));
  }
}
