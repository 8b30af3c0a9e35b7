package rickyard.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.PortionLine;
import rickyard.core.advice.TripLine;
import rickyard.core.advice.TripPlan;
import rickyard.report.view.Serving;

/** What a horse in the steps of a trip is fed today, and on the days that follow. */
final class TripRows {
  private final TripPlan trip;
  private final HorseAdvice horse;
  private final Map<String, Serving> servings;

  private TripRows(TripPlan trip, HorseAdvice horse, Map<String, Serving> servings) {
    this.trip = trip;
    this.horse = horse;
    this.servings = servings;
  }

  /** The rows of a horse whose ration stands and whose plan has a step today; empty for others. */
  static Optional<TripRows> of(
      HorseAdvice horse, Course course, LocalDate today, Map<String, Serving> servings) {
    boolean stands = course == Course.KEEP || course == Course.BORDERLINE;
    return Optional.ofNullable(horse.trip())
        .filter(t -> stands && !t.on(today).isEmpty())
        .map(t -> new TripRows(t, horse, servings));
  }

  String from() {
    return trip.from().toString();
  }

  String to() {
    return trip.to().toString();
  }

  /** What is fed on a day. */
  List<Given> on(LocalDate day) {
    return Given.sorted(trip.on(day).stream().map(this::given));
  }

  private Given given(TripLine line) {
    boolean isForage = Given.isForage(line.item(), line.role(), servings);
    return new Given(
        line.item(),
        line.batch(),
        line.name(),
        line.role(),
        isForage,
        home(line.item()),
        line.kg(),
        Given.serving(line.item(), isForage, servings));
  }

  private double home(String item) {
    @Nullable DietSummary after = horse.after();
    return after == null
        ? 0
        : after.portions().stream()
            .filter(p -> p.item().equals(item))
            .mapToDouble(PortionLine::kg)
            .sum();
  }

  /** Items whose amount moves on any day of the plan. */
  List<Given> moving() {
    Map<String, TripLine> moving = new LinkedHashMap<>();
    for (TripLine line : trip.lines()) {
      if (trip.lines().stream()
          .anyMatch(l -> l.item().equals(line.item()) && l.kg() != line.kg())) {
        moving.putIfAbsent(line.item(), line);
      }
    }
    return moving.values().stream().map(this::given).toList();
  }

  /** The days from today on, equal neighbours together. */
  List<HorsePaper.Step> steps(Voice voice) {
    List<Given> moving = moving();
    SortedMap<LocalDate, List<Double>> days = new TreeMap<>();
    for (TripLine line : trip.lines()) {
      days.computeIfAbsent(line.day(), day -> moving.stream().map(g -> kg(day, g)).toList());
    }
    List<HorsePaper.Step> steps = new ArrayList<>();
    @Nullable LocalDate from = null;
    @Nullable LocalDate last = null;
    for (LocalDate day : days.keySet()) {
      if (from == null || last == null || !Objects.equals(days.get(from), days.get(day))) {
        if (from != null && last != null) {
          steps.add(step(from, last, days, voice));
        }
        from = day;
      }
      last = day;
    }
    if (from != null && last != null) {
      steps.add(step(from, last, days, voice));
    }
    return steps;
  }

  private double kg(LocalDate day, Given item) {
    return trip.on(day).stream()
        .filter(l -> l.item().equals(item.item()))
        .mapToDouble(TripLine::kg)
        .sum();
  }

  private static HorsePaper.Step step(
      LocalDate from, LocalDate last, SortedMap<LocalDate, List<Double>> days, Voice voice) {
    String first = voice.day(from.toString());
    String named =
        from.equals(last)
            ? first
            : voice.texts().say("trip.days", "from", first, "to", voice.day(last.toString()));
    Stream<Double> amounts = days.getOrDefault(from, List.of()).stream();
    return new HorsePaper.Step(named, amounts.map(kg -> FeedRows.amount(kg, voice)).toList());
  }
}
