package rickyard.core.nutrition;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import rickyard.core.forage.Analysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Lot;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;
import rickyard.tables.NutritionTables;

/** Makes foodstuffs for tests; every value given counts as reported. */
final class Foods {
  static final FeedingStandards STANDARDS = NutritionTables.load().standards();
  static final Foodstuffs MAKER = new Foodstuffs(STANDARDS);

  private final Map<AnalyteCode, Measured> contents = new TreeMap<>();
  private final String id;
  private final String role;
  private Measured dryMatter = percent(90, 0, Basis.AS_FED);

  private Foods(String id, String role) {
    this.id = id;
    this.role = role;
  }

  static Foods of(String id, String role) {
    return new Foods(id, role);
  }

  static Evidence reported(String raw) {
    return new Evidence.Reported(new Place("00", 1, 1, "x"), raw);
  }

  private static Measured percent(double value, double u, Basis basis) {
    return Measured.of(Unit.PERCENT, basis, value, 0, u, reported("" + value));
  }

  Foods dm(double value) {
    return dm(value, 0);
  }

  Foods dm(double value, double u) {
    dryMatter = percent(value, u, Basis.AS_FED);
    return this;
  }

  Foods with(AnalyteCode code, double value, double u) {
    Unit unit = Nutrient.findByCode(code.value()).map(Nutrient::contentUnit).orElse(Unit.PERCENT);
    return with(code, Measured.of(unit, Basis.DRY_MATTER, value, 0, u, reported("" + value)));
  }

  Foods with(AnalyteCode code, Measured value) {
    contents.put(code, value);
    return this;
  }

  Analysis analysis() {
    return new Analysis(id, "", Optional.of(dryMatter), new TreeMap<>(contents));
  }

  Foodstuff lot() {
    return MAKER.ofLot(lot(id, role), analysis()).orElseThrow();
  }

  Foodstuff unanalysedLot() {
    return MAKER.ofUnanalysedLot(lot(id, role)).orElseThrow();
  }

  static Lot lot(String id, String material) {
    return new Lot(
        id,
        "c1",
        material,
        OptionalDouble.empty(),
        "1",
        Optional.<LocalDate>empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        OptionalInt.empty(),
        Optional.<LocalDate>empty(),
        "");
  }

  Feed label() {
    return new Feed(
        id,
        "b1",
        id,
        role,
        "pellets",
        dryMatter,
        contents,
        Map.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.<LocalDate>empty(),
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false);
  }

  Foodstuff feed() {
    return MAKER.ofFeed(label());
  }
}
