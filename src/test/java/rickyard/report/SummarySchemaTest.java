package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rickyard.docs.PublishedSchema;
import rickyard.report.view.MorningView;

/** summary.json is what its published schema says. */
class SummarySchemaTest {

  private static String json(MorningView view) {
    return new String(
        requireNonNull(Outputs.of(view, Set.of(Outputs.DATA)).get("summary.json")), UTF_8);
  }

  @Test
  void morningsOfEverySizeAndHostileNamesAreValid() {
    assertEquals(List.of(), PublishedSchema.faults(json(SampleView.empty())));
    Random random = new Random(3);
    for (int round = 0; round < 6; round++) {
      int horses = 1 + random.nextInt(24);
      int at = round;
      MorningView view =
          SampleView.of(
              horses,
              1 + random.nextInt(12),
              t -> at % 2 == 0 ? t : HostileNames.next(random, horses));
      assertEquals(List.of(), PublishedSchema.faults(json(view)), "seed 3, round " + round);
    }
  }

  @Test
  void aWordThatIsNoneAMissingMemberAndANumberAsTextAreFaults() {
    String good = json(SampleView.of(4, 3));
    assertFalse(
        PublishedSchema.publishedFaults(good.replace("\"call-now\"", "\"call-soon\"")).isEmpty());
    assertFalse(
        PublishedSchema.publishedFaults(good.replace("\"p_over\"", "\"p_under\"")).isEmpty());
    assertFalse(
        PublishedSchema.publishedFaults(
                good.replaceFirst("\"files\"\\s*:\\s*(\\d+)", "\"files\": \"$1\""))
            .isEmpty());
  }

  @Test
  void aMemberThatComesLaterBreaksNobodysReaderButOurTest() {
    String more = json(SampleView.of(1, 1)).replaceFirst("\\{", "{ \"later\" : 1,");
    assertEquals(List.of(), PublishedSchema.publishedFaults(more));
    assertEquals(1, PublishedSchema.faults(more).size());
  }
}
