package rickyard.intake.interpret;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;
import rickyard.core.forage.Doubt;
import rickyard.core.forage.Remembered;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Measured;
import rickyard.intake.check.Checked;
import rickyard.intake.check.Decisive;
import rickyard.intake.check.Figures;
import rickyard.intake.check.Print;
import rickyard.intake.check.SampleChecks;

/**
 * Turns a draft into a sample: one figure for each analyte, open names settled, relations tried.
 */
final class SampleWriter {
  /** The field of a sample that a column of standings fills. */
  static final String STANDING = "standing";

  private static final String UNUSUAL = "outside-usual-range";

  /** Straw holds so little of all but fibre that the low ends meant for hay would always ask. */
  private static final double OF_STRAW = 0.25;

  private static final Pattern STRAW =
      Pattern.compile("(?i)\\b(?:straw|\\p{L}*stroh|paille|paja|\\p{L}*stro)\\b");
  private final Said said;
  private final Dates.Order order;
  private final PageHints hints;
  private final boolean scanned;
  private final Remembered<Check, Check> checks = Remembered.same();
  private final Remembered<Optional<LocalDate>, Optional<LocalDate>> days = Remembered.same();
  private final List<Untaken> untaken = new ArrayList<>();

  /**
   * What the document says beside its figures.
   *
   * @param front what it says of itself
   * @param statements what its sentences say of the figures
   * @param methods how they were obtained
   */
  record Said(Dictionary dictionary, Front front, Statements statements, Methods methods) {}

  /**
   * A writer of the samples of one document.
   *
   * @param hints what the tables know of its layout
   * @param scanned whether a program read it from a picture: then every figure waits for a person
   */
  SampleWriter(Said said, Dates.Order order, PageHints hints, boolean scanned) {
    this.said = said;
    this.order = order;
    this.hints = hints;
    this.scanned = scanned;
  }

  List<Untaken> untaken() {
    return List.copyOf(untaken);
  }

  Sample write(SampleDraft draft) {
    List<Finding> taken = draft.findings().stream().filter(this::isTaken).toList();
    Settled settled = Settled.of(hints.fill(Proofs.apply(taken)));
    List<Resolved> named =
        new OpenNames(
                said.dictionary(),
                said.statements(),
                settled.chosen().stream().map(hints::marked).toList(),
                hints)
            .settle();
    Checked checked =
        SampleChecks.of(
            figures(named, settled),
            prints(named),
            draft.field("material"),
            said.dictionary().usual());
    boolean straw = isStraw(draft);
    List<Resolved> last =
        withPage(named.stream().map(r -> held(r, checked, settled, straw)).toList(), checked)
            .stream()
            .map(this::unconfirmed)
            .toList();
    List<Doubt> doubts = new ArrayList<>(Groups.of(last));
    if (scanned) {
      doubts.add(0, ScanDoubts.of(draft, said.front(), last));
    }
    Optional<LocalDate> sampledOn =
        Doubts.date(draft.field("sampled"), order, "day of sampling", doubts);
    return new Sample(
        label(draft),
        draft.field("batch"),
        draft.field("lab_no").isEmpty() && !draft.field("lot").isEmpty()
            ? draft.field("sample")
            : draft.field("lab_no"),
        draft.field("material").isEmpty() ? draft.field("description") : draft.field("material"),
        days.of(sampledOn),
        cores(draft.field("cores")),
        last.stream().map(r -> r.toReading(said.methods().of(r.code().value()))).toList(),
        doubts,
        checked.checks().stream().map(checks::of).toList(),
        said.front().own(draft.field(STANDING)));
  }

  /** What the sample is called; a description is its name only where it has no other. */
  private static String label(SampleDraft draft) {
    return Stream.of("lot", "sample", "description")
        .map(draft::field)
        .filter(f -> !f.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static Figures figures(List<Resolved> named, Settled settled) {
    SortedMap<AnalyteCode, Measured> values = new TreeMap<>();
    SortedMap<AnalyteCode, Measured> asFed = new TreeMap<>();
    named.stream()
        .filter(r -> r.trouble().isEmpty())
        .forEach(r -> r.value().ifPresent(v -> values.put(r.code(), v)));
    settled
        .asFed()
        .forEach(
            (code, twin) -> {
              if (twin.trouble().isEmpty()) {
                twin.value().ifPresent(v -> asFed.put(code, v));
              }
            });
    return new Figures(values, asFed);
  }

  /** A figure that a relation touches, or that is far from usual, waits for a person. */
  private static Resolved held(Resolved resolved, Checked checked, Settled settled, boolean straw) {
    if (!resolved.trouble().isEmpty()) {
      return resolved;
    }
    Optional<String> touched = Optional.ofNullable(checked.touched().get(resolved.code()));
    if (touched.isPresent()) {
      return resolved.withTrouble(touched.get());
    }
    AnalyteRule rule = resolved.finding().label().rule();
    boolean unusual =
        resolved
            .value()
            .filter(
                v -> {
                  double share =
                      Settled.isWater(resolved.code())
                          ? 1
                          : settled.share(v) * (straw ? OF_STRAW : 1);
                  return v.upper() < rule.usualLow() * share || v.lower() > rule.usualHigh();
                })
            .isPresent();
    boolean tiny = resolved.value().filter(v -> v.lower() < v.upper()).isPresent();
    return unusual && !tiny ? resolved.withTrouble(UNUSUAL) : resolved;
  }

  /** Where the page is wrong in several places, what decides waits too. */
  private static List<Resolved> withPage(List<Resolved> readings, Checked checked) {
    long unusual = readings.stream().filter(r -> r.trouble().equals(UNUSUAL)).count();
    SortedMap<AnalyteCode, String> held =
        Decisive.held(readings.stream().map(Resolved::code).toList(), checked, unusual);
    return readings.stream()
        .map(
            r ->
                r.trouble().isEmpty() && held.containsKey(r.code())
                    ? r.withTrouble(held.getOrDefault(r.code(), ""))
                    : r)
        .toList();
  }

  private static SortedMap<AnalyteCode, Print> prints(List<Resolved> named) {
    SortedMap<AnalyteCode, Print> prints = new TreeMap<>();
    for (Resolved resolved : named) {
      Figure figure = resolved.finding().figure();
      if (resolved.trouble().isEmpty()
          && figure.form() == Figure.Form.NUMBER
          && !resolved.finding().units().isEmpty()) {
        int decimals = Math.max(0, figure.half().scale() - 1);
        prints.put(resolved.code(), new Print(resolved.finding().units().get(0).what(), decimals));
      }
    }
    return prints;
  }

  private static boolean isStraw(SampleDraft draft) {
    return STRAW.matcher(draft.field("material") + " " + draft.field("description")).find();
  }

  private Resolved unconfirmed(Resolved resolved) {
    return scanned && resolved.trouble().isEmpty()
        ? resolved.withTrouble(ScanDoubts.FIGURE)
        : resolved;
  }

  private boolean isTaken(Finding finding) {
    String why = "";
    if (finding.label().ratio()) {
      why = "share";
    } else if (finding.label().rule().use() == AnalyteRule.Use.LEAVE) {
      why = "not-used";
    } else if (isMineralNotFound(finding)) {
      why = "not-detected";
    }
    if (!why.isEmpty()) {
      untaken.add(new Untaken(finding.place(), finding.code() + " " + finding.raw(), why));
    }
    return why.isEmpty();
  }

  /** Without a limit of detection it is a mineral that was not reported; no limit asks for it. */
  private static boolean isMineralNotFound(Finding finding) {
    Figure.Form form = finding.figure().form();
    boolean notFound = form == Figure.Form.NOT_DETECTED || form == Figure.Form.TRACE;
    return notFound
        && finding.limit().filter(Figure::hasNumber).isEmpty()
        && Methods.isMineral(finding.code())
        && !finding.code().equals("K");
  }

  private static OptionalInt cores(String text) {
    String digits = text.replaceAll("^[^0-9]*([0-9]{1,3})(?![0-9]).*$", "$1");
    return digits.matches("[0-9]{1,3}")
        ? OptionalInt.of(Integer.parseInt(digits))
        : OptionalInt.empty();
  }
}
