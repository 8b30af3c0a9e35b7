package rickyard.mutants;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;

/** Draws sites of a report; lines that decide come up more often than others. */
final class Draw {
  private static final Set<String> DECISIVE =
      Set.of("WSC", "STARCH", "DM", "MOISTURE", "ESC", "NSC_WSC", "NO3_N");

  private Draw() {}

  static Optional<Site> site(GoodReport report, Random random, Predicate<Site> wanted) {
    List<Site> all = report.sites().stream().filter(wanted).toList();
    List<Site> decisive = all.stream().filter(s -> DECISIVE.contains(s.code())).toList();
    List<Site> from = decisive.isEmpty() || random.nextInt(4) == 0 ? all : decisive;
    return from.isEmpty() ? Optional.empty() : Optional.of(from.get(random.nextInt(from.size())));
  }

  static Optional<Site> any(GoodReport report, Random random) {
    return site(report, random, s -> true);
  }

  /** The site of another analyte in the same sample. */
  static Optional<Site> beside(GoodReport report, Site site, String code) {
    return report.sites().stream()
        .filter(s -> s.sample() == site.sample() && s.code().equals(code))
        .findFirst();
  }
}
