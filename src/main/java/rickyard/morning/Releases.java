package rickyard.morning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.forage.Decision;
import rickyard.post.Release;
import rickyard.registers.Office;
import rickyard.report.letter.Letters;

/** The rows of decisions.csv by which people release letters. */
final class Releases {
  /** The register they stand in. */
  static final String REGISTER = "decisions.csv";

  private static final String KIND = "release";

  private Releases() {}

  /** Numbers of the rows that are releases and nothing else. */
  static Set<Integer> rows(Office office, LocalDate asOf) {
    return decisions(office, asOf).map(Decision::row).collect(Collectors.toSet());
  }

  /** What was released, in the order of the register; a row nobody put a name to is none. */
  static List<Release> of(Office office, LocalDate asOf) {
    return decisions(office, asOf)
        .filter(d -> !d.by().equalsIgnoreCase(Letters.NOBODY))
        .map(d -> Release.of(d.about(), d.value(), d.by()))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Stream<Decision> decisions(Office office, LocalDate asOf) {
    return office.decisions().stream()
        .filter(d -> d.kind().equals(KIND) && !d.date().isAfter(asOf));
  }
}
