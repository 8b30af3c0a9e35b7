package rickyard.core.nutrition;

/** The horses that rows of {@code reference/requirement-checks.csv} speak of. */
final class CheckedHorses {
  private CheckedHorses() {}

  static Horses of(CheckRow row, FeedingStandards standards) {
    Horses made = Horses.adult(row.currentKg()).mature(row.matureKg());
    return switch (row.group()) {
      case "maintenance" -> made.status(HorseStatus.MAINTENANCE, maintenance(row.detail()));
      case "work" -> made.status(HorseStatus.WORK, work(row.detail()));
      case "stallion" ->
          made.status(
              HorseStatus.STALLION,
              row.detail().equals("breeding") ? Level.BREEDING : Level.NON_BREEDING);
      case "gestation" ->
          made.status(HorseStatus.PREGNANT, Level.NONE)
              .month(row.detail().equals("<5") ? 4 : Integer.parseInt(row.detail()));
      case "lactation" ->
          made.status(HorseStatus.LACTATING, Level.NONE).month(Integer.parseInt(row.detail()));
      default -> growing(row, standards);
    };
  }

  static int age(CheckRow row) {
    return Integer.parseInt(row.detail().substring(0, row.detail().indexOf(' ')));
  }

  /** Young horses weigh what the curve says: the rows print that weight rounded. */
  private static Horses growing(CheckRow row, FeedingStandards standards) {
    int age = age(row);
    double kg = Growth.weightKg(row.matureKg(), age, standards.requirements());
    int comma = row.detail().indexOf(',');
    Level level =
        comma < 0 ? Level.NONE : work(row.detail().substring(comma + 2).replace(" exercise", ""));
    return Horses.adult(kg).mature(row.matureKg()).aged(age).status(HorseStatus.GROWING, level);
  }

  private static Level maintenance(String detail) {
    return detail.startsWith("minimum")
        ? Level.LOW
        : detail.startsWith("elevated") ? Level.ELEVATED : Level.AVERAGE;
  }

  private static Level work(String detail) {
    return switch (detail) {
      case "light" -> Level.LIGHT;
      case "moderate" -> Level.MODERATE;
      case "heavy" -> Level.HEAVY;
      case "very heavy" -> Level.VERY_HEAVY;
      default -> throw new IllegalArgumentException(detail);
    };
  }

  /** The horse of 500 kg that a row of needs per kg speaks of. */
  static Horses stage(String detail) {
    Horses made = Horses.adult(500).mature(500);
    return switch (detail) {
      case "maintenance minimum" -> made.status(HorseStatus.MAINTENANCE, Level.LOW);
      case "maintenance average", "maintenance" -> made;
      case "maintenance elevated" -> made.status(HorseStatus.MAINTENANCE, Level.ELEVATED);
      case "light work" -> made.status(HorseStatus.WORK, Level.LIGHT);
      case "moderate work" -> made.status(HorseStatus.WORK, Level.MODERATE);
      case "heavy work" -> made.status(HorseStatus.WORK, Level.HEAVY);
      case "work, upper end of printed range" -> made.status(HorseStatus.WORK, Level.VERY_HEAVY);
      case "lactation", "pregnant and lactating" ->
          made.status(HorseStatus.LACTATING, Level.NONE).month(1);
      default -> throw new IllegalArgumentException(detail);
    };
  }
}
