package rickyard.registers;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import rickyard.core.nutrition.Extras;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.HorseStatus;
import rickyard.core.nutrition.HorseType;
import rickyard.core.nutrition.Level;
import rickyard.core.nutrition.WeightBy;

/** Rows of horses.csv as horses. */
final class HorseRows {
  private static final double HEAVIEST_KG = 1500;

  /** The levels that a status may have, the one that blank stands for first, if blank may be. */
  private static final Map<HorseStatus, List<Level>> LEVELS =
      Map.of(
          HorseStatus.MAINTENANCE, List.of(Level.AVERAGE, Level.LOW, Level.ELEVATED),
          HorseStatus.WORK, List.of(Level.LIGHT, Level.MODERATE, Level.HEAVY, Level.VERY_HEAVY),
          HorseStatus.PREGNANT, List.of(Level.NONE),
          HorseStatus.LACTATING, List.of(Level.NONE),
          HorseStatus.GROWING,
              List.of(Level.NONE, Level.LIGHT, Level.MODERATE, Level.HEAVY, Level.VERY_HEAVY),
          HorseStatus.STALLION, List.of(Level.BREEDING, Level.NON_BREEDING));

  private final LoadContext context;
  private final Findings findings;

  HorseRows(LoadContext context, Findings findings) {
    this.context = context;
    this.findings = findings;
  }

  Optional<Horse> read(RegisterRow row, Keys keys) {
    String id = row.key("horse_id");
    String clientId = keys.client(row, "client_id");
    String name = row.required("name");
    Optional<HorseType> type = required(row, "type", HorseType.values(), HorseType::code);
    Optional<HorseStatus> status = required(row, "status", HorseStatus.values(), HorseStatus::code);
    OptionalDouble bodyWeight = requiredWeight(row);
    Optional<YearMonth> birth = birthMonth(row);
    Optional<Level> level = status.flatMap(s -> level(row, s));
    OptionalInt month = row.whole("month", 1, 12);
    status.ifPresent(s -> checkMonth(row, s));
    OptionalDouble target = row.mass("target_weight", false, HEAVIEST_KG);
    OptionalDouble mature = row.mass("mature_weight", false, HEAVIEST_KG);
    status.filter(s -> s == HorseStatus.GROWING).ifPresent(s -> checkGrowing(row));
    SortedSet<String> conditions = conditions(row);
    OptionalDouble bodyCondition = row.number("body_condition", 1, 9, "a score from 1 to 9");
    OptionalInt meals = row.whole("meals_per_day", 1, 24);
    boolean vetPlan = row.yes("vet_plan");
    OptionalDouble grazing = row.number("grazing_hours_per_day", 0, 24, "hours from 0 to 24");
    boolean muzzle = row.yes("muzzle");
    Optional<Extras> extras = row.choice("extras", Extras.values(), Extras::code);
    Optional<WeightBy> weightBy = row.choice("weight_by", WeightBy.values(), WeightBy::code);
    Optional<LocalDate> weighedOn = row.pastDay("weighed_on", context.asOf());
    Optional<LocalDate> from = row.day("trip_from");
    Optional<LocalDate> to = row.day("trip_to");
    if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
      row.wrong("trip_to", "out-of-order", "a day not before trip_from");
    }
    if (row.isBad()) {
      return Optional.empty();
    }
    warnOfGuess(row, weightBy);
    double kg = bodyWeight.orElseThrow();
    boolean adult = status.orElseThrow() != HorseStatus.GROWING;
    return Optional.of(
        new Horse(
            id,
            clientId,
            name,
            type.orElseThrow(),
            birth,
            kg,
            weightBy.orElse(WeightBy.GUESS),
            weighedOn,
            target,
            mature.isEmpty() && adult ? OptionalDouble.of(kg) : mature,
            status.get(),
            level.orElseThrow(),
            month,
            bodyCondition,
            conditions,
            meals,
            vetPlan,
            grazing,
            muzzle,
            extras.orElse(Extras.UNKNOWN),
            row.text("herd"),
            from,
            to));
  }

  private static <T> Optional<T> required(
      RegisterRow row, String column, T[] choices, java.util.function.Function<T, String> code) {
    if (row.text(column).isEmpty()) {
      row.wrong(column, "blank", RegisterRow.oneOf(Arrays.stream(choices).map(code).toList()));
    }
    return row.choice(column, choices, code);
  }

  private static OptionalDouble requiredWeight(RegisterRow row) {
    String column = row.massColumn("body_weight");
    if (row.text(column).isEmpty()) {
      row.wrong(column, "blank", "a weight above 0");
    }
    return row.mass("body_weight", false, HEAVIEST_KG);
  }

  private Optional<YearMonth> birthMonth(RegisterRow row) {
    Optional<YearMonth> birth = row.month("birth_month");
    YearMonth now = YearMonth.from(context.asOf());
    if (birth.isPresent() && birth.get().isAfter(now)) {
      row.wrong("birth_month", "in-the-future", "a month not after " + now);
    } else if (birth.isPresent() && birth.get().isBefore(now.minusYears(70))) {
      row.wrong("birth_month", "out-of-range", "a month in the last 70 years");
    }
    return birth;
  }

  private static Optional<Level> level(RegisterRow row, HorseStatus status) {
    List<Level> legal = LEVELS.getOrDefault(status, List.of(Level.NONE));
    Level first = legal.get(0);
    boolean blankIsLegal = first == Level.NONE || first == Level.AVERAGE;
    String found = row.text("level").toLowerCase(Locale.ROOT);
    if (found.isEmpty() && blankIsLegal) {
      return Optional.of(first);
    }
    Optional<Level> level =
        legal.stream().filter(l -> l != Level.NONE && l.code().equals(found)).findFirst();
    if (level.isEmpty()) {
      String words = RegisterRow.oneOf(legal.stream().map(Level::code).toList());
      String expected = legal.equals(List.of(Level.NONE)) ? "a blank cell" : words;
      row.wrong("level", "level-for-status", expected + " for status " + status.code());
    }
    return level;
  }

  private static void checkMonth(RegisterRow row, HorseStatus status) {
    boolean counts = status == HorseStatus.PREGNANT || status == HorseStatus.LACTATING;
    boolean blank = row.text("month").isEmpty();
    if (counts && blank) {
      row.wrong("month", "blank", "the month of status " + status.code() + ", from 1 to 12");
    } else if (!counts && !blank) {
      row.wrong("month", "month-for-status", "a blank cell for status " + status.code());
    }
  }

  private static void checkGrowing(RegisterRow row) {
    if (row.text("birth_month").isEmpty()) {
      row.wrong("birth_month", "blank", "YYYY-MM for a growing horse");
    }
    String mature = row.massColumn("mature_weight");
    if (row.text(mature).isEmpty()) {
      row.wrong(mature, "blank", "the mature weight of a growing horse");
    }
  }

  private SortedSet<String> conditions(RegisterRow row) {
    SortedSet<String> found = new TreeSet<>();
    String cell = row.text("conditions").toLowerCase(Locale.ROOT);
    for (String part : cell.split(";", -1)) {
      String word = part.strip();
      if (!word.isEmpty() && !(word.equals("none") && cell.equals("none"))) {
        found.add(word);
      }
    }
    SortedSet<String> unknown = new TreeSet<>(found);
    unknown.removeAll(context.conditions());
    if (!unknown.isEmpty()) {
      String nearest = Nearest.of(unknown.first(), context.conditions()).orElse("none");
      row.wrong(
          "conditions",
          "unknown-condition",
          "only "
              + String.join(", ", context.conditions())
              + " (nearest to "
              + unknown.first()
              + ": "
              + nearest
              + ")");
    }
    return found;
  }

  private void warnOfGuess(RegisterRow row, Optional<WeightBy> weightBy) {
    if (weightBy.isEmpty()) {
      findings.warn(
          row.problem("weight_by", "blank", "scale, tape or guess; taken as a guess", ""));
    }
  }
}
