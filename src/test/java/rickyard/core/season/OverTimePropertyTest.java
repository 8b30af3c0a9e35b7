package rickyard.core.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.LotTest;

/** What must hold of tests beside each other, whatever they say. */
class OverTimePropertyTest {
  private static final long SEED = 9_211_026L;
  private static final String[] LABS = {"Brook Vale", "Fellside", "Withy Moor"};

  private record Drawn(String lot, String lab, int day, double value, double u) {}

  private static List<Drawn> drawn(Random random) {
    List<Drawn> drawn = new ArrayList<>();
    for (int lot = 0; lot < 9; lot++) {
      double hay = 6 + 8 * random.nextDouble();
      for (int test = 0; test < 2 + random.nextInt(3); test++) {
        drawn.add(
            new Drawn(
                "L" + lot,
                LABS[random.nextInt(LABS.length)],
                random.nextInt(90),
                hay + random.nextGaussian(),
                0.4 + random.nextDouble()));
      }
    }
    return drawn;
  }

  private static Tests tests(List<Drawn> drawn, String shifted, double by) {
    Tests tests = new Tests();
    drawn.forEach(
        d -> {
          double value = d.lab().equals(shifted) ? d.value() + by : d.value();
          tests.add(d.lot(), d.lab(), d.day(), value, d.u());
        });
    return tests;
  }

  @Test
  void theOrderOfTheTestsChangesNotOneDigit() {
    Random random = new Random(SEED);
    for (int round = 0; round < 40; round++) {
      Tests tests = tests(drawn(random), "", 0);
      List<LotTest> other = new ArrayList<>(tests.all());
      Collections.shuffle(other, random);
      assertEquals(tests.look(), tests.look(other), "seed " + SEED + ", round " + round);
    }
  }

  @Test
  void whatIsAddedToALaboratoryIsAddedToItsDifferencesAndToNothingElse() {
    Random random = new Random(SEED);
    int compared = 0;
    for (int round = 0; round < 40; round++) {
      List<Drawn> drawn = drawn(random);
      double by = 3 * random.nextDouble();
      OverTime plain = tests(drawn, "", 0).look();
      OverTime shifted = tests(drawn, LABS[0], by).look();
      for (int i = 0; i < plain.laboratories().size(); i++) {
        LaboratoryPair before = plain.laboratories().get(i);
        LaboratoryPair after = shifted.laboratories().get(i);
        double expected = before.first().name().equals(LABS[0]) ? by : 0;
        if (before.difference().isPresent()) {
          PairedDifference old = before.difference().get();
          PairedDifference now = after.difference().orElseThrow();
          String where = "seed " + SEED + ", round " + round;
          assertEquals(old.mean() + expected, now.mean(), 1e-9, where);
          assertEquals(old.sd(), now.sd(), 1e-9, where);
          compared++;
        }
      }
      for (int i = 0; i < plain.again().size(); i++) {
        var old = plain.again().get(i).difference();
        var now = shifted.again().get(i).difference();
        old.ifPresent(d -> assertEquals(d.mean(), now.orElseThrow().mean(), 1e-9));
      }
    }
    assertEquals(true, compared > 20, "only " + compared + " differences compared");
  }

  @Test
  void whatIsAddedToEveryTestLeavesEveryCourseAsItIs() {
    Random random = new Random(SEED);
    for (int round = 0; round < 40; round++) {
      List<Drawn> drawn = drawn(random);
      List<Drawn> higher =
          drawn.stream()
              .map(d -> new Drawn(d.lot(), d.lab(), d.day(), d.value() + 2, d.u()))
              .toList();
      assertEquals(
          tests(drawn, "", 0).look().lots().stream().map(LotCourse::course).toList(),
          tests(higher, "", 0).look().lots().stream().map(LotCourse::course).toList(),
          "seed " + SEED + ", round " + round);
    }
  }
}
