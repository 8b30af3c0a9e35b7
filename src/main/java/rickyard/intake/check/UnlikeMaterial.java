package rickyard.intake.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;
import rickyard.core.forage.Span;
import rickyard.core.quantity.Basis;

/**
 * Figures that do not look like the material that the report names: another sample's, on another
 * basis, or in another line. The figure waits, and the carbohydrates with it.
 */
final class UnlikeMaterial {
  static final String CODE = "unlike-material";

  private UnlikeMaterial() {}

  /** A material named by no word of the table, or by words of two, is not tried. */
  static Checked of(Figures figures, String material, List<Usual> table) {
    List<Check> checks = new ArrayList<>();
    SortedMap<AnalyteCode, String> touched = new TreeMap<>();
    Optional<String> named = named(material, table);
    for (Usual usual : table) {
      Optional<Span> found = found(figures, usual.analyte());
      if (named.isEmpty() || !named.get().equals(usual.material()) || found.isEmpty()) {
        continue;
      }
      Span range = new Span(usual.low(), usual.high());
      boolean holds = range.meets(found.get());
      List<AnalyteCode> codes =
          holds ? List.of(usual.analyte()) : withCarbohydrates(figures, usual);
      checks.add(
          new Check(
              "usual in " + usual.material(),
              Check.Kind.ORDER,
              holds,
              codes,
              SampleChecks.words(range, found.get())));
      if (!holds) {
        codes.forEach(c -> touched.put(c, CODE));
      }
    }
    return new Checked(checks, touched);
  }

  /** The largest usual figure of an analyte in a material that the table knows. */
  static OptionalDouble highest(AnalyteCode code, String material, List<Usual> table) {
    Optional<String> named = named(material, table);
    return table.stream()
        .filter(u -> named.filter(u.material()::equals).isPresent() && u.analyte().equals(code))
        .mapToDouble(Usual::high)
        .findFirst();
  }

  private static Optional<Span> found(Figures figures, AnalyteCode code) {
    if (code.equals(AnalyteCode.DM)) {
      return figures.dryMatter();
    }
    return figures.commonBasis() == Basis.DRY_MATTER ? figures.span(code) : Optional.empty();
  }

  private static List<AnalyteCode> withCarbohydrates(Figures figures, Usual usual) {
    SortedSet<AnalyteCode> codes = new TreeSet<>(Decisive.in(figures.values().keySet()));
    codes.add(usual.analyte());
    if (usual.analyte().equals(AnalyteCode.DM)) {
      codes.add(AnalyteCode.MOISTURE);
    }
    return List.copyOf(codes);
  }

  private static Optional<String> named(String material, List<Usual> table) {
    if (material.isEmpty()) {
      return Optional.empty();
    }
    Set<String> words =
        Arrays.stream(material.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1))
            .collect(Collectors.toSet());
    Set<String> named =
        table.stream()
            .filter(u -> u.words().stream().anyMatch(words::contains))
            .map(Usual::material)
            .collect(Collectors.toSet());
    return named.size() == 1 ? named.stream().findFirst() : Optional.empty();
  }
}
