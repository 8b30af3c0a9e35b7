package rickyard.core.forage;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.quantity.Evidence;

/** Which analytes of a sample wait for a person, and why: they and what hangs on them stay out. */
final class Withheld {
  /** Sugars hang on dry matter: with it in doubt, their column may be the wrong one. */
  private static final List<AnalyteCode> HANG_ON_DRY_MATTER =
      List.of(
          AnalyteCode.WSC,
          AnalyteCode.ESC,
          AnalyteCode.STARCH,
          AnalyteCode.NSC_WSC,
          AnalyteCode.NSC_ESC);

  private static final String LEFT_OUT = "left out by a person";

  private final SortedMap<AnalyteCode, String> reasons = new TreeMap<>();

  Withheld(Sample sample) {
    sample.doubts().forEach(d -> byDoubt(sample, d));
    sample.readings().stream().filter(r -> !r.isSettled()).forEach(r -> byReading(sample, r));
    sample.checks().forEach(c -> byCheck(sample, c));
    if (holdsWater()) {
      for (AnalyteCode code : HANG_ON_DRY_MATTER) {
        reasons.putIfAbsent(code, "dry matter is in doubt");
      }
    }
  }

  /** A doubt about an analyte with no reading that carries its code holds the whole analyte. */
  private void byDoubt(Sample sample, Doubt doubt) {
    for (String analyte : doubt.analytes()) {
      AnalyteCode code = new AnalyteCode(analyte);
      boolean carried =
          sample.readings().stream()
              .anyMatch(r -> r.analyte().equals(code) && r.doubt().equals(doubt.code()));
      if (!carried) {
        reasons.putIfAbsent(code, "waits for an answer: " + doubt.code());
      }
    }
  }

  /** A reading in doubt holds its analyte unless another reading of it is settled. */
  private void byReading(Sample sample, Reading reading) {
    boolean otherwise =
        sample.readings().stream()
            .anyMatch(r -> r.analyte().equals(reading.analyte()) && r.isSettled());
    if (!otherwise) {
      reasons.putIfAbsent(
          reading.analyte(),
          reading.doubt().equals("left-out")
              ? LEFT_OUT
              : "waits for an answer: " + reading.doubt());
    }
  }

  /** A broken relation holds its analytes until a person has answered for every doubt in it. */
  private void byCheck(Sample sample, Check check) {
    if (check.holds() || check.kind() == Check.Kind.SOFT || isAnsweredFor(sample, check)) {
      return;
    }
    for (AnalyteCode code : check.analytes()) {
      reasons.putIfAbsent(code, "the figures contradict each other: " + check.words());
    }
  }

  private static boolean isAnsweredFor(Sample sample, Check check) {
    List<Reading> touched =
        sample.readings().stream().filter(r -> check.analytes().contains(r.analyte())).toList();
    boolean open = touched.stream().anyMatch(r -> !r.isSettled() && !r.doubt().equals("left-out"));
    return !open && touched.stream().anyMatch(r -> isAnswered(r) || r.doubt().equals("left-out"));
  }

  private static boolean isAnswered(Reading reading) {
    return reading.value().map(v -> v.evidence() instanceof Evidence.Answered).orElse(false);
  }

  /**
   * Whether dry matter is in doubt: it or moisture is, unless a person left one of them out and the
   * other stands.
   */
  boolean holdsWater() {
    String dry = reasons.getOrDefault(AnalyteCode.DM, "");
    String wet = reasons.getOrDefault(AnalyteCode.MOISTURE, "");
    boolean oneLeftOut =
        (dry.equals(LEFT_OUT) && wet.isEmpty()) || (wet.equals(LEFT_OUT) && dry.isEmpty());
    return !(dry.isEmpty() && wet.isEmpty()) && !oneLeftOut;
  }

  boolean holds(AnalyteCode code) {
    return reasons.containsKey(code);
  }

  Map<AnalyteCode, String> reasons() {
    return Collections.unmodifiableSortedMap(reasons);
  }
}
