package rickyard.morning;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseQuestion;
import rickyard.core.advice.coop.Fall;
import rickyard.core.forage.LayoutBook;
import rickyard.ledger.JournalEntry;
import rickyard.ledger.Ledger;
import rickyard.ledger.LedgerException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a morning ended with, as the next one compares with it.
 *
 * @param diets the diet of each horse as it was judged
 * @param lots for each lot the word of each limit
 * @param reports for each lot the documents that its analysis in force came from, sorted and joined
 * @param layouts the layouts of reports that were read without a question left open
 * @param asked what was asked about each horse, where anything was; empty in a journal of an
 *     earlier version, which did not keep it
 * @param falls verdicts of lots that fell and stand worse since, by lot and limit
 */
record Memory(
    SortedMap<String, DietSummary> diets,
    SortedMap<String, SortedMap<String, String>> lots,
    SortedMap<String, String> reports,
    LayoutBook layouts,
    Optional<SortedMap<String, List<HorseQuestion>>> asked,
    SortedMap<String, SortedMap<String, Fall>> falls) {

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY).build();

  Memory {
    diets = copy(diets);
    lots = copy(lots);
    reports = copy(reports);
    // A journal of an earlier version remembers no layouts.
    layouts = Objects.requireNonNullElseGet(layouts, LayoutBook::empty);
    asked = Objects.requireNonNullElseGet(asked, Optional::empty);
    // Nor does it keep what fell.
    falls = copy(Objects.requireNonNullElseGet(falls, TreeMap::new));
  }

  private static <T> SortedMap<String, T> copy(Map<String, T> map) {
    return Collections.unmodifiableSortedMap(new TreeMap<>(map));
  }

  static Memory empty() {
    return new Memory(
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeMap<>(),
        LayoutBook.empty(),
        Optional.of(new TreeMap<>()),
        new TreeMap<>());
  }

  /** What the morning before this one ended with; nothing on a first morning. */
  static Memory before(Ledger ledger, int number) {
    return ledger.journal().find(number - 1).map(Memory::of).orElseGet(Memory::empty);
  }

  private static Memory of(JournalEntry entry) {
    try {
      return JSON.readValue(entry.state(), Memory.class);
    } catch (JacksonException e) {
      throw new LedgerException(
          "The journal of morning " + entry.number() + " holds a state that cannot be read.", e);
    }
  }

  String toJson() {
    try {
      return JSON.writeValueAsString(this);
    } catch (JacksonException e) {
      throw new LedgerException("The state of the morning cannot be written.", e);
    }
  }
}
