package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Samples are told apart by what names them, however many there are. */
class SamplesTest {
  private final Samples samples = new Samples();

  @Test
  void theSameNamesAreTheSameSampleAndAnyOtherNameIsAnother() {
    SampleDraft first = samples.withFields(Map.of("lot", "A-1", "lab_no", "7"));

    assertSame(first, samples.withFields(Map.of("lab_no", "7", "lot", "A-1")));
    assertSame(first, samples.withFields(Map.of("lab_no", "7")));
    assertNotSame(first, samples.withFields(Map.of("lot", "A-1", "lab_no", "8")));
    assertNotSame(first, samples.withFields(Map.of("lot", "7")));
  }

  @Test
  void ofSeveralWithANameTheFirstOfTheListIsMeant() {
    SampleDraft first = samples.withFields(Map.of("lot", "A-1", "lab_no", "7"));
    samples.withFields(Map.of("lot", "A-1", "lab_no", "8"));

    assertSame(first, samples.withFields(Map.of("lot", "A-1")));
  }

  @Test
  void aRowOfAListCompletesOneSampleAndTwoRowsWithOneNameCompleteNone() {
    SampleDraft one = samples.withFields(Map.of("lab_no", "7"));
    SampleDraft two = samples.withFields(Map.of("lab_no", "8"));
    Described list = new Described();
    list.add(Map.of("lab_no", "7", "material", "grass-hay"));
    list.add(Map.of("lab_no", "8", "material", "straw"));
    list.add(Map.of("sample", "8", "material", "haylage"));

    list.complete(one);
    list.complete(two);

    assertEquals("grass-hay", one.field("material"));
    assertEquals("", two.field("material"));
  }

  /** Searching them one by one took minutes here. */
  @Test
  @Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void aSeasonOfSamplesIsFoundByName() {
    for (int round = 0; round < 2; round++) {
      for (int sample = 0; sample < 200_000; sample++) {
        samples.withFields(Map.of("lot", "A-" + sample, "lab_no", "" + sample));
      }
    }

    assertEquals(
        199_999, samples.withFields(Map.of("lab_no", "199999", "lot", "A-199999")).place());
  }
}
