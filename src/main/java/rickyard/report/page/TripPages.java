package rickyard.report.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.TripLine;
import rickyard.core.advice.TripPlan;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Words;

/** What a horse is fed before, on and after a trip; days that are alike stand in one line. */
public final class TripPages {
  private static final String NOTHING = "–";

  /** Days with the same amounts. */
  public record Span(String days, String phase, List<String> amounts) {}

  /** The plan of one trip. */
  public record Trip(String heading, List<String> words, List<String> items, List<Span> spans) {}

  private TripPages() {}

  static Optional<Trip> of(HorseAdvice horse, Mass mass) {
    @Nullable TripPlan trip = horse.trip();
    return trip == null ? Optional.empty() : Optional.of(page(trip, mass));
  }

  private static Trip page(TripPlan trip, Mass mass) {
    Set<String> items = new LinkedHashSet<>();
    trip.lines().forEach(l -> items.add(l.item()));
    return new Trip(
        "Trip from " + trip.from() + " to " + trip.to(),
        trip.words().stream().map(Harmless::sentence).toList(),
        items.stream().map(Harmless::line).toList(),
        spans(trip, items, mass));
  }

  private record Day(LocalDate day, String phase, List<String> amounts) {
    boolean isAlike(Day other) {
      return phase.equals(other.phase) && amounts.equals(other.amounts);
    }
  }

  private static List<Span> spans(TripPlan trip, Set<String> items, Mass mass) {
    List<Span> spans = new ArrayList<>();
    List<Day> days = days(trip, items, mass);
    int first = 0;
    for (int i = 1; i <= days.size(); i++) {
      if (i == days.size() || !days.get(i).isAlike(days.get(first))) {
        Day from = days.get(first);
        LocalDate last = days.get(i - 1).day();
        String span = from.day().equals(last) ? "" + last : from.day() + " to " + last;
        spans.add(new Span(span, Words.of("trip", from.phase()), from.amounts()));
        first = i;
      }
    }
    return spans;
  }

  private static List<Day> days(TripPlan trip, Set<String> items, Mass mass) {
    Map<LocalDate, Map<String, Double>> kg = new TreeMap<>();
    Map<LocalDate, String> phases = new TreeMap<>();
    for (TripLine line : trip.lines()) {
      phases.put(line.day(), line.phase());
      kg.computeIfAbsent(line.day(), d -> new LinkedHashMap<>())
          .merge(line.item(), line.kg(), Double::sum);
    }
    List<Day> days = new ArrayList<>();
    kg.forEach(
        (day, amounts) ->
            days.add(new Day(day, phases.getOrDefault(day, ""), amounts(items, amounts, mass))));
    return days;
  }

  private static List<String> amounts(Set<String> items, Map<String, Double> kg, Mass mass) {
    return items.stream()
        .map(i -> kg.containsKey(i) ? mass.digits(kg.getOrDefault(i, 0.0)) : NOTHING)
        .toList();
  }
}
