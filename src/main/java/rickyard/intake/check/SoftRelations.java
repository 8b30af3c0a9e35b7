package rickyard.intake.check;

import java.util.List;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;
import rickyard.core.forage.Span;
import rickyard.core.quantity.Basis;

/** Relations of experience: a break asks for a look, it does not hold a figure back. */
final class SoftRelations {
  private static final Span ADF_OF_NDF = new Span(0.5, 0.9);
  private static final Span CA_OF_P = new Span(0.8, 12);

  private SoftRelations() {}

  static void of(Figures figures, List<Check> into) {
    if (figures.commonBasis() != Basis.DRY_MATTER) {
      return;
    }
    quotient(figures, into, "ADF / NDF", AnalyteCode.ADF, AnalyteCode.NDF, ADF_OF_NDF);
    quotient(figures, into, "Ca / P", AnalyteCode.CA, AnalyteCode.P, CA_OF_P);
    Optional<Span> ash = figures.span(AnalyteCode.ASH);
    Optional<Span> iron = figures.span(AnalyteCode.FE);
    if (ash.isPresent() && iron.isPresent()) {
      boolean holds = ash.get().low() <= 11 || iron.get().high() >= 300;
      into.add(
          new Check(
              "high ash goes with high iron",
              Check.Kind.SOFT,
              holds,
              List.of(AnalyteCode.ASH, AnalyteCode.FE),
              SampleChecks.words(new Span(0, 11), ash.get())));
    }
  }

  private static void quotient(
      Figures figures,
      List<Check> into,
      String name,
      AnalyteCode top,
      AnalyteCode bottom,
      Span usual) {
    Optional<Span> a = figures.span(top);
    Optional<Span> b = figures.span(bottom);
    if (a.isPresent() && b.isPresent() && b.get().low() > 0) {
      Span found = a.get().over(b.get());
      into.add(
          new Check(
              name,
              Check.Kind.SOFT,
              found.meets(usual),
              List.of(top, bottom),
              SampleChecks.words(usual, found)));
    }
  }
}
