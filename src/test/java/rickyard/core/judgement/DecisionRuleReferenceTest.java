package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Holds the decision rule against calculated oracles; the rows name their sources. */
class DecisionRuleReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/decision-probability.csv", useHeadersInDisplayName = true)
  void givesTheChanceOfBeingOver(
      double y, double u, double limit, double p, double tolerance, String source, String locator) {
    Finding found =
        DecisionRule.find(Limits.percent(y, u), Limits.nsc(limit, OptionalDouble.of(0.05)));

    assertEquals(p, found.chanceWrong().orElseThrow(), tolerance, () -> source + ", " + locator);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/decision-words.csv", useHeadersInDisplayName = true)
  void givesTheWord(
      double y, double u, double limit, String risk, String word, String source, String locator) {
    OptionalDouble accepted =
        risk == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(risk));

    Finding found = DecisionRule.find(Limits.percent(y, u), Limits.nsc(limit, accepted));

    assertEquals(word, found.word().code(), () -> source + ", " + locator);
  }

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/blend-share.csv", useHeadersInDisplayName = true)
  void clearsABlendFromTheCalculatedShareOn(
      double a, double ua, double b, double ub, double limit, double z, double share, double tol) {
    OptionalDouble risk =
        z == 0 ? OptionalDouble.empty() : OptionalDouble.of(rickyard.core.quantity.Normal.cdf(-z));

    double found = 0;
    for (double step = 0.1; step > 1e-7; step /= 10) {
      while (!clears(a, ua, b, ub, found + step, limit, risk)) {
        found += step;
      }
    }

    assertEquals(share, found, tol + 1e-6);
  }

  private static boolean clears(
      double a, double ua, double b, double ub, double p, double limit, OptionalDouble risk) {
    var first = Limits.percent((1 - p) * a, (1 - p) * ua);
    var mix = first.plus(Limits.percent(p * b, p * ub), 0, Limits.SAID);
    return DecisionRule.find(mix, Limits.nsc(limit, risk)).word() == Word.CLEARS;
  }
}
