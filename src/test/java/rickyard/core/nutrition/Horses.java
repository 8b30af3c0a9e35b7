package rickyard.core.nutrition;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;

/** Makes horses for tests: what a test does not say is as harmless as possible. */
final class Horses {
  static final LocalDate DAY = LocalDate.of(2026, 11, 2);

  private HorseType type = HorseType.HORSE;
  private double kg = 500;
  private WeightBy by = WeightBy.SCALE;
  private OptionalDouble mature = OptionalDouble.empty();
  private HorseStatus status = HorseStatus.MAINTENANCE;
  private Level level = Level.NONE;
  private OptionalInt month = OptionalInt.empty();
  private Optional<YearMonth> born = Optional.empty();
  private OptionalDouble condition = OptionalDouble.empty();
  private SortedSet<String> conditions = new TreeSet<>();
  private OptionalInt meals = OptionalInt.of(2);
  private boolean vetPlan;
  private OptionalDouble grazing = OptionalDouble.of(0);
  private boolean muzzle;
  private Extras extras = Extras.NONE;
  private String herd = "";

  static Horses adult(double kg) {
    Horses made = new Horses();
    made.kg = kg;
    return made;
  }

  Horses type(HorseType value) {
    type = value;
    return this;
  }

  Horses weighedBy(WeightBy value) {
    by = value;
    return this;
  }

  Horses mature(double value) {
    mature = OptionalDouble.of(value);
    return this;
  }

  Horses status(HorseStatus value, Level degree) {
    status = value;
    level = degree;
    return this;
  }

  Horses month(int value) {
    month = OptionalInt.of(value);
    return this;
  }

  /** Born so many completed months before {@link #DAY}. */
  Horses aged(int months) {
    born = Optional.of(YearMonth.from(DAY).minusMonths(months));
    return this;
  }

  Horses condition(double score) {
    condition = OptionalDouble.of(score);
    return this;
  }

  Horses with(String code) {
    conditions.add(code);
    return this;
  }

  Horses meals(OptionalInt value) {
    meals = value;
    return this;
  }

  Horses vetPlan() {
    vetPlan = true;
    return this;
  }

  Horses grazing(OptionalDouble hours) {
    grazing = hours;
    return this;
  }

  Horses muzzled() {
    muzzle = true;
    return this;
  }

  Horses extras(Extras value) {
    extras = value;
    return this;
  }

  Horses herd(String value) {
    herd = value;
    return this;
  }

  Horse build() {
    return new Horse(
        "h1",
        "c1",
        "Bramble",
        type,
        born,
        kg,
        by,
        Optional.empty(),
        OptionalDouble.empty(),
        mature,
        status,
        level,
        month,
        condition,
        conditions,
        meals,
        vetPlan,
        grazing,
        muzzle,
        extras,
        herd,
        Optional.empty(),
        Optional.empty());
  }
}
