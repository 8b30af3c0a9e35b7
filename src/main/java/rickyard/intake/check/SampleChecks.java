package rickyard.intake.check;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;
import rickyard.core.forage.Check.Kind;
import rickyard.core.forage.Identities;
import rickyard.core.forage.Span;
import rickyard.core.quantity.Basis;

/**
 * Tries the relations of a sample. A broken exact relation or order touches the lines in it; where
 * the ratio of as fed to dry matter tells which line is wrong, only that line.
 */
public final class SampleChecks {
  static final String BROKEN = "identity-broken";
  private static final String ORDER = "order-broken";
  private static final Span HAY_DRY_MATTER = new Span(30, 97);

  private final Figures figures;
  private final List<Check> checks = new ArrayList<>();
  private final NavigableMap<AnalyteCode, String> touched = new TreeMap<>();

  private SampleChecks(Figures figures) {
    this.figures = figures;
  }

  /**
   * Tries every relation for which the figures are there.
   *
   * @param prints how each figure is printed
   * @param material what the report calls the sample; may be empty
   * @param usual what is usual in which material
   */
  public static Checked of(
      Figures figures, SortedMap<AnalyteCode, Print> prints, String material, List<Usual> usual) {
    return of(figures)
        .plus(OtherBasis.of(figures))
        .plus(
            OddPrint.of(
                prints, figures, UnlikeMaterial.highest(AnalyteCode.STARCH, material, usual)))
        .plus(UnlikeMaterial.of(figures, material, usual));
  }

  private static Checked of(Figures figures) {
    SampleChecks run = new SampleChecks(figures);
    RatioTest ratios = RatioTest.of(figures);
    run.checks.addAll(ratios.checks());
    run.touched.putAll(ratios.touched());
    run.water(ratios);
    run.exact();
    run.orders();
    SoftRelations.of(figures, run.checks);
    return new Checked(run.checks, run.touched);
  }

  private void water(RatioTest ratios) {
    Optional<Span> moisture = figures.span(AnalyteCode.MOISTURE);
    Optional<Span> dry = figures.span(AnalyteCode.DM);
    if (moisture.isPresent() && dry.isPresent()) {
      Span expected = Identities.dryMatter(moisture.get());
      boolean holds = expected.meets(dry.get());
      note(
          "moisture + DM = 100",
          Kind.EXACT,
          holds,
          expected,
          dry.get(),
          AnalyteCode.MOISTURE,
          AnalyteCode.DM);
      if (!holds) {
        boolean dryIsRight = ratios.confirms();
        touch(BROKEN, AnalyteCode.MOISTURE);
        if (!dryIsRight) {
          touch(BROKEN, AnalyteCode.DM);
        }
      }
    }
    figures
        .dryMatter()
        .ifPresent(
            found -> {
              boolean holds =
                  HAY_DRY_MATTER.low() <= found.high() && found.low() <= HAY_DRY_MATTER.high();
              note(
                  "dry matter 30 to 97 %",
                  Kind.ORDER, holds, HAY_DRY_MATTER, found, AnalyteCode.DM, AnalyteCode.MOISTURE);
              if (!holds) {
                touch(ORDER, AnalyteCode.DM, AnalyteCode.MOISTURE);
              }
            });
  }

  private void exact() {
    all(AnalyteCode.WSC, AnalyteCode.STARCH)
        .ifPresent(
            s ->
                compare(
                    "NSC = WSC + starch",
                    Identities.nonStructural(s.get(0), s.get(1)),
                    0,
                    AnalyteCode.NSC_WSC,
                    AnalyteCode.WSC,
                    AnalyteCode.STARCH));
    all(AnalyteCode.ESC, AnalyteCode.STARCH)
        .ifPresent(
            s ->
                compare(
                    "NSC = ESC + starch",
                    Identities.nonStructural(s.get(0), s.get(1)),
                    0,
                    AnalyteCode.NSC_ESC,
                    AnalyteCode.ESC,
                    AnalyteCode.STARCH));
    all(AnalyteCode.NDF, AnalyteCode.ADF)
        .ifPresent(
            s ->
                compare(
                    "hemicellulose = NDF - ADF",
                    Identities.hemicellulose(s.get(0), s.get(1)),
                    0,
                    Codes.HEMICELLULOSE,
                    AnalyteCode.NDF,
                    AnalyteCode.ADF));
    all(AnalyteCode.CA, AnalyteCode.P)
        .ifPresent(
            s ->
                compare(
                    "Ca:P = Ca / P",
                    Identities.calciumToPhosphorus(s.get(0), s.get(1)),
                    0,
                    AnalyteCode.CA_P,
                    AnalyteCode.CA,
                    AnalyteCode.P));
    all(AnalyteCode.NO3_N)
        .ifPresent(
            s ->
                compare(
                    "NO3 = 4.43 NO3-N",
                    Identities.nitrate(s.get(0)),
                    0,
                    AnalyteCode.NO3,
                    AnalyteCode.NO3_N));
    all(AnalyteCode.WSC, AnalyteCode.ESC)
        .ifPresent(
            s ->
                compare(
                    "fructan = WSC - ESC",
                    s.get(0).minus(s.get(1)),
                    0,
                    Codes.FRUCTAN,
                    AnalyteCode.WSC,
                    AnalyteCode.ESC));
    if (figures.commonBasis() == Basis.DRY_MATTER) {
      all(AnalyteCode.ADF, AnalyteCode.NDF)
          .ifPresent(
              s ->
                  compare(
                      "RFV = (88.9 - 0.779 ADF) (120 / NDF) / 1.29",
                      Identities.relativeFeedValue(s.get(0), s.get(1)),
                      Identities.RFV_MARGIN,
                      AnalyteCode.RFV,
                      AnalyteCode.ADF,
                      AnalyteCode.NDF));
    }
    nonFibre();
  }

  /** NFC may or may not add back the protein bound to NDF; either form, within 1, will do. */
  private void nonFibre() {
    Optional<List<Span>> parts =
        all(AnalyteCode.CP, AnalyteCode.NDF, AnalyteCode.EE, AnalyteCode.ASH);
    Optional<Span> total = total();
    Optional<Span> printed = figures.span(AnalyteCode.NFC);
    if (parts.isEmpty() || total.isEmpty() || printed.isEmpty()) {
      return;
    }
    List<Span> s = parts.get();
    Span plain = Identities.nonFibre(total.get(), s.get(0), s.get(1), s.get(2), s.get(3));
    Optional<Span> addedBack = figures.span(AnalyteCode.NDICP).map(plain::plus);
    boolean other = addedBack.filter(a -> a.widened(1).meets(printed.get())).isPresent();
    Span expected = other && !plain.widened(1).meets(printed.get()) ? addedBack.get() : plain;
    compare(
        "NFC = 100 - CP - NDF - EE - ash",
        expected,
        1,
        AnalyteCode.NFC,
        AnalyteCode.CP,
        AnalyteCode.NDF,
        AnalyteCode.EE,
        AnalyteCode.ASH);
  }

  private void orders() {
    order("ESC <= WSC", AnalyteCode.ESC, AnalyteCode.WSC, 0.5);
    order("lignin < ADF", AnalyteCode.LIGNIN, AnalyteCode.ADF, 0);
    order("ADF < NDF", AnalyteCode.ADF, AnalyteCode.NDF, 0);
    order("ADICP <= CP", AnalyteCode.ADICP, AnalyteCode.CP, 0);
    order("ADICP <= NDICP", AnalyteCode.ADICP, AnalyteCode.NDICP, 0.2);
    order("starch <= NFC", AnalyteCode.STARCH, AnalyteCode.NFC, 3);
    sum("WSC + starch <= NFC", 3, AnalyteCode.NFC, AnalyteCode.WSC, AnalyteCode.STARCH);
    minerals();
    total()
        .ifPresent(
            total ->
                all(AnalyteCode.CP, AnalyteCode.NDF, AnalyteCode.EE, AnalyteCode.ASH)
                    .ifPresent(
                        parts ->
                            limit(
                                "CP + NDF + EE + ash <= 101",
                                parts,
                                total.widened(1),
                                AnalyteCode.CP,
                                AnalyteCode.NDF,
                                AnalyteCode.EE,
                                AnalyteCode.ASH)));
  }

  /** What all parts add up to; unknown where the water itself is in doubt. */
  private Optional<Span> total() {
    boolean doubtful =
        touched.containsKey(AnalyteCode.DM) || touched.containsKey(AnalyteCode.MOISTURE);
    return doubtful && figures.commonBasis() != Basis.DRY_MATTER
        ? Optional.empty()
        : figures.total();
  }

  private void minerals() {
    List<Span> spans = new ArrayList<>();
    List<AnalyteCode> codes = new ArrayList<>();
    for (AnalyteCode code :
        List.of(
            AnalyteCode.K,
            AnalyteCode.CA,
            AnalyteCode.P,
            AnalyteCode.MG,
            AnalyteCode.NA,
            AnalyteCode.CL,
            AnalyteCode.S)) {
      figures
          .span(code)
          .ifPresent(
              span -> {
                spans.add(span);
                codes.add(code);
              });
    }
    Optional<Span> ash = figures.span(AnalyteCode.ASH);
    if (ash.isPresent() && spans.size() >= 2) {
      codes.add(AnalyteCode.ASH);
      limit(
          "K + Ca + P + Mg + Na + Cl + S <= ash",
          spans,
          ash.get().widened(2),
          codes.toArray(new AnalyteCode[0]));
    }
  }

  private void order(String name, AnalyteCode small, AnalyteCode large, double margin) {
    sum(name, margin, large, small);
  }

  private void sum(String name, double margin, AnalyteCode large, AnalyteCode... small) {
    Optional<Span> top = figures.span(large);
    Optional<List<Span>> parts = all(small);
    if (top.isPresent() && parts.isPresent()) {
      List<AnalyteCode> codes = new ArrayList<>(List.of(small));
      codes.add(large);
      limit(name, parts.get(), top.get().widened(margin), codes.toArray(new AnalyteCode[0]));
    }
  }

  private void limit(String name, List<Span> parts, Span top, AnalyteCode... codes) {
    Span sum = parts.stream().reduce(Span.exactly(0), Span::plus);
    boolean holds = sum.low() <= top.high() + 1e-9;
    note(name, Kind.ORDER, holds, top, sum, codes);
    if (!holds) {
      touch(ORDER, codes);
    }
  }

  private void compare(
      String name, Span expected, double margin, AnalyteCode printed, AnalyteCode... parts) {
    Optional<Span> found = figures.span(printed);
    if (found.isEmpty()) {
      return;
    }
    boolean holds = expected.widened(margin).meets(found.get());
    List<AnalyteCode> codes = new ArrayList<>();
    codes.add(printed);
    codes.addAll(List.of(parts));
    AnalyteCode[] all = codes.toArray(new AnalyteCode[0]);
    note(name, Kind.EXACT, holds, expected, found.get(), all);
    boolean known = codes.stream().anyMatch(touched::containsKey);
    if (!holds && !known) {
      touch(BROKEN, all);
    }
  }

  private void touch(String why, AnalyteCode... codes) {
    for (AnalyteCode code : codes) {
      if (figures.values().containsKey(code)) {
        touched.putIfAbsent(code, why);
      }
    }
  }

  private Optional<List<Span>> all(AnalyteCode... codes) {
    List<Span> spans = new ArrayList<>();
    for (AnalyteCode code : codes) {
      figures.span(code).ifPresent(spans::add);
    }
    return spans.size() == codes.length ? Optional.of(spans) : Optional.empty();
  }

  private void note(
      String name, Kind kind, boolean holds, Span expected, Span found, AnalyteCode... codes) {
    checks.add(new Check(name, kind, holds, List.of(codes), words(expected, found)));
  }

  static String words(Span expected, Span found) {
    return "expected "
        + SignificantDigits.of(expected.low())
        + " to "
        + SignificantDigits.of(expected.high())
        + ", printed "
        + SignificantDigits.of(found.low())
        + " to "
        + SignificantDigits.of(found.high());
  }
}
