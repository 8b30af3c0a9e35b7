package rickyard.mutants;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Measured;
import rickyard.intake.interpret.AnalyteRule;

/**
 * Why an altered report that clears a lot could as well be an honest one: judged by what is printed
 * on it alone, not by what the program's checks made of it. Whatever fits none of these is a false
 * clear.
 */
enum NoEvidence {
  ONE_LINE(
      "one line alone is changed, to a figure that is usual for it and printed like the rest; the"
          + " page holds no second column with the true figure and no sum that the line is part of"),
  ONE_NITRATE("the page gives nitrate once, in one form; no size tells NO3 from NO3-N"),
  ONE_CARBOHYDRATE(
      "the page gives one of WSC and ESC only, and no sum or fructan that would tell which"),
  ONE_COLUMN(
      "the page has one column of figures and prints neither NFC nor RFV, which would tell the"
          + " basis; every figure is usual on either basis"),
  TWO_SAMPLES(
      "figures of two samples are exchanged, each usual in the material of its new place, and no"
          + " line that stayed is part of a sum on the page with one that was exchanged"),
  MINERAL_LINES(
      "minerals or nitrate alone stand in one another's lines, each a figure that is usual there and"
          + " printed like the rest; the page holds no second column with the true figures and no"
          + " ratio that they are part of"),
  OTHER_LOT("the label on the page is, letter for letter, another lot's of the register"),
  ROUNDING(
      "the figure that clears is right within the rounding of the page; a printed sum and the sum"
          + " of its printed parts lie on two sides of a guard band");

  private static final Set<String> MINERALS =
      Set.of(
          "CA", "P", "MG", "K", "NA", "CL", "S", "FE", "ZN", "CU", "MN", "MO", "SE", "I", "CO",
          "NO3", "NO3_N");
  private static final Set<String> SUMS =
      Set.of("NSC_WSC", "NSC_ESC", "NFC", "RFV", "CA_P", "FRUCTAN", "HEMICELLULOSE");

  private final String words;

  NoEvidence(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  static Optional<NoEvidence> of(
      Kind kind,
      GoodReport good,
      Report altered,
      Inquest inquest,
      SortedMap<AnalyteCode, AnalyteRule> rules) {
    if (inquest.isRounding()) {
      return Optional.of(ROUNDING);
    }
    return switch (kind) {
      case LOT_LETTER -> one(inquest.isOtherLot(), OTHER_LOT);
      case NITRATE -> one(isOneNitrate(altered), ONE_NITRATE);
      case ESC_AS_WSC -> one(isOneCarbohydrate(good, altered), ONE_CARBOHYDRATE);
      case BASIS_WORD -> one(isOneColumn(good, altered, rules), ONE_COLUMN);
      case SAMPLES -> one(isTwoSamples(good, altered), TWO_SAMPLES);
      case SHIFTED ->
          one(isOneLine(good, altered, rules), ONE_LINE)
              .or(() -> one(areMineralLines(good, altered, rules), MINERAL_LINES));
      default -> one(isOneLine(good, altered, rules), ONE_LINE);
    };
  }

  private static Optional<NoEvidence> one(boolean holds, NoEvidence why) {
    return holds ? Optional.of(why) : Optional.empty();
  }

  private static SortedMap<String, Reading> readings(Sample sample) {
    SortedMap<String, Reading> readings = new TreeMap<>();
    sample.readings().forEach(r -> readings.put(r.analyte().value(), r));
    return readings;
  }

  private static boolean isOneNitrate(Report altered) {
    return altered.samples().stream()
        .map(NoEvidence::readings)
        .noneMatch(r -> r.containsKey("NO3") && r.containsKey("NO3_N"));
  }

  /** In each sample whose WSC is another figure now. */
  private static boolean isOneCarbohydrate(GoodReport good, Report altered) {
    for (int i = 0; i < altered.samples().size(); i++) {
      Sample after = altered.samples().get(i);
      SortedMap<String, Reading> now = readings(after);
      boolean other = changed(good.report().samples().get(i), after).contains("WSC");
      if (other && Stream.of("ESC", "NSC_WSC", "NSC_ESC", "FRUCTAN").anyMatch(now::containsKey)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isOneColumn(
      GoodReport good, Report altered, SortedMap<AnalyteCode, AnalyteRule> rules) {
    boolean single = good.sites().stream().allMatch(s -> s.twin().isEmpty());
    return single
        && altered.samples().stream()
            .map(NoEvidence::readings)
            .noneMatch(r -> r.containsKey("NFC") || r.containsKey("RFV"))
        && altered.samples().stream()
            .flatMap(s -> s.readings().stream())
            .allMatch(r -> isUsual(r, rules));
  }

  private static boolean isUsual(Reading reading, SortedMap<AnalyteCode, AnalyteRule> rules) {
    AnalyteRule rule = rules.get(reading.analyte());
    Optional<Measured> value = reading.value();
    return rule != null
        && value.isPresent()
        && value.get().upper() >= rule.usualLow()
        && value.get().lower() <= rule.usualHigh();
  }

  private static boolean isTwoSamples(GoodReport good, Report altered) {
    if (good.report().samples().size() != altered.samples().size()) {
      return false;
    }
    for (int i = 0; i < altered.samples().size(); i++) {
      Sample after = altered.samples().get(i);
      SortedSet<String> changed = changed(good.report().samples().get(i), after);
      SortedSet<String> sums = new TreeSet<>(readings(after).keySet());
      sums.retainAll(SUMS);
      if (!changed.isEmpty() && !(changed.containsAll(sums) && UsualTable.fits(after))) {
        return false;
      }
    }
    return true;
  }

  /** Analytes whose figure is another one now, or of which one report has none. */
  private static SortedSet<String> changed(Sample good, Sample altered) {
    SortedMap<String, Reading> before = readings(good);
    SortedMap<String, Reading> after = readings(altered);
    SortedSet<String> codes = new TreeSet<>(before.keySet());
    codes.addAll(after.keySet());
    codes.removeIf(
        c ->
            before.containsKey(c)
                && after.containsKey(c)
                && best(before.get(c)).equals(best(after.get(c))));
    return codes;
  }

  private static Optional<Double> best(Reading reading) {
    return reading.value().map(Measured::best);
  }

  private static boolean isOneLine(
      GoodReport good, Report altered, SortedMap<AnalyteCode, AnalyteRule> rules) {
    return isUnseen(good, altered, rules) && changedLines(good, altered).size() == 1;
  }

  private static boolean areMineralLines(
      GoodReport good, Report altered, SortedMap<AnalyteCode, AnalyteRule> rules) {
    return isUnseen(good, altered, rules) && MINERALS.containsAll(changedLines(good, altered));
  }

  private static List<String> changedLines(GoodReport good, Report altered) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < altered.samples().size(); i++) {
      lines.addAll(changed(good.report().samples().get(i), altered.samples().get(i)));
    }
    return lines;
  }

  /** Every changed figure is usual, printed alike, in no sum and without its true twin. */
  private static boolean isUnseen(
      GoodReport good, Report altered, SortedMap<AnalyteCode, AnalyteRule> rules) {
    if (good.report().samples().size() != altered.samples().size()) {
      return false;
    }
    boolean unseen = true;
    for (int i = 0; i < altered.samples().size(); i++) {
      Sample before = good.report().samples().get(i);
      Sample after = altered.samples().get(i);
      SortedSet<String> changed = changed(before, after);
      for (String code : changed) {
        Reading was = readings(before).get(code);
        Reading is = readings(after).get(code);
        unseen &=
            was != null
                && is != null
                && isUsual(is, rules)
                && isPrintedAlike(code, was, is, readings(after))
                && !isInASum(code, readings(after).keySet())
                && hasNoTrueTwin(good, i, code, altered);
      }
    }
    return unseen;
  }

  /** The unit is the same, and its like on the page have as many decimals, if there are any. */
  private static boolean isPrintedAlike(
      String code, Reading was, Reading is, SortedMap<String, Reading> page) {
    List<String> like =
        switch (code) {
          case "NO3_N" -> List.of("FE", "ZN", "CU", "MN");
          default -> List.of("WSC", "ESC", "STARCH", "NSC_WSC");
        };
    List<Integer> decimals =
        like.stream()
            .filter(c -> !c.equals(code) && page.containsKey(c))
            .map(c -> decimals(page.get(c).raw()))
            .toList();
    return was.rawUnit().equals(is.rawUnit())
        && (decimals.isEmpty() || decimals.stream().anyMatch(d -> d >= decimals(is.raw())));
  }

  private static int decimals(String raw) {
    String number = raw.replaceAll("^[^0-9]*([0-9]+[.,]?[0-9]*).*$", "$1");
    return Math.max(0, number.length() - 1 - Math.max(number.indexOf('.'), number.indexOf(',')))
        * (number.contains(".") || number.contains(",") ? 1 : 0);
  }

  private static boolean isInASum(String code, Set<String> present) {
    List<String> sums =
        switch (code) {
          case "WSC" -> List.of("NSC_WSC", "FRUCTAN");
          case "ESC" -> List.of("NSC_ESC", "FRUCTAN");
          case "STARCH" -> List.of("NSC_WSC", "NSC_ESC");
          case "NO3_N" -> List.of("NO3");
          case "DM" -> List.of("MOISTURE");
          case "MOISTURE" -> List.of("DM");
          default -> List.of();
        };
    return sums.stream().anyMatch(present::contains);
  }

  /** No second column, or its figure was changed alike. */
  private static boolean hasNoTrueTwin(GoodReport good, int sample, String code, Report altered) {
    Optional<Site> site =
        good.sites().stream()
            .filter(s -> s.sample() == sample && s.code().equals(code))
            .findFirst();
    boolean twin = site.flatMap(Site::twin).isPresent();
    boolean ratioHolds =
        altered.samples().get(sample).checks().stream()
            .filter(c -> c.identity().startsWith("as fed / dry matter"))
            .filter(c -> c.analytes().contains(new AnalyteCode(code)))
            .allMatch(c -> c.holds());
    return site.isPresent() && (!twin || ratioHolds);
  }
}
