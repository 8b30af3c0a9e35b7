package rickyard.report.page;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.PortionLine;
import rickyard.report.text.Harmless;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.MorningView;

/**
 * What a person types to find an entry besides what its head says: reports and files of a lot, the
 * horses that are fed it, what a horse is fed. Each once.
 */
final class FindWords {
  /** No report or file holds it. */
  private static final String BETWEEN = " | ";

  private final Map<String, Set<String>> reports = new LinkedHashMap<>();
  private final Map<String, Set<String>> fed = new LinkedHashMap<>();

  FindWords(MorningView view) {
    for (AnalysisRow row : view.analyses()) {
      Set<String> words = reports.computeIfAbsent(row.lot(), l -> new LinkedHashSet<>());
      Stream.of(row.reportNo(), row.file(), row.part(), row.batch())
          .map(Harmless::line)
          .filter(word -> !word.isBlank())
          .forEach(words::add);
    }
    for (HorseAdvice horse : view.horses()) {
      items(horse)
          .map(PortionLine::item)
          .forEach(
              item ->
                  fed.computeIfAbsent(item, i -> new LinkedHashSet<>())
                      .add(Names.horse(view, horse.horse())));
    }
  }

  /** What a lot is found by. */
  String lot(String lot) {
    Set<String> words = new LinkedHashSet<>(reports.getOrDefault(lot, Set.of()));
    words.addAll(fed.getOrDefault(lot, Set.of()));
    return String.join(BETWEEN, words);
  }

  boolean isFed(String lot) {
    return fed.containsKey(lot);
  }

  /** What a horse is found by: all that it is or was fed. */
  static String horse(HorseAdvice horse) {
    return of(Stream.of(horse));
  }

  /** What a call is found by. */
  static String of(Stream<HorseAdvice> horses) {
    Set<String> words = new LinkedHashSet<>();
    horses
        .flatMap(FindWords::items)
        .flatMap(portion -> Stream.of(portion.item(), portion.name(), portion.batch()))
        .map(Harmless::line)
        .filter(word -> !word.isBlank())
        .forEach(words::add);
    return String.join(BETWEEN, words);
  }

  /** All that a horse is or was fed. */
  static Stream<PortionLine> items(HorseAdvice horse) {
    return Stream.concat(items(horse.after()), items(horse.before()));
  }

  private static Stream<PortionLine> items(@Nullable DietSummary diet) {
    return diet == null ? Stream.of() : diet.portions().stream();
  }
}
