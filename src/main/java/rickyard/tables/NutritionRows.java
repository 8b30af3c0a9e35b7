package rickyard.tables;

import java.util.List;
import java.util.Optional;
import rickyard.core.nutrition.FeedRole;
import rickyard.core.nutrition.HighValue;
import rickyard.core.nutrition.HorseType;
import rickyard.core.nutrition.IntakeRule;
import rickyard.core.nutrition.KindRule;
import rickyard.core.nutrition.Settings.Setting;
import rickyard.core.nutrition.Tolerance;
import rickyard.core.nutrition.TypicalValue;
import rickyard.tables.NutritionTables.Row;

/** Turns rows of the nutrition tables into the values of the core. */
final class NutritionRows {
  private NutritionRows() {}

  static Optional<TypicalValue> typical(Row row) {
    boolean ofProtein = row.text("unit").equals("% CP");
    if (List.of("WSC", "ESC", "STARCH", "NSC_WSC", "NSC_ESC", "NO3_N", "NO3")
        .contains(row.text("analyte"))) {
      row.cells().problem("analyte", "never-typical", "an analyte that no limit is set for");
    }
    return Optional.of(
        new TypicalValue(
            row.text("material"),
            row.analyte(),
            row.number("mean"),
            row.number("u"),
            ofProtein,
            row.source()));
  }

  static Optional<FeedRole> role(Row row) {
    boolean zero = row.oneOf("silence", List.of("unknown", "zero")).equals("zero");
    return Optional.of(
        new FeedRole(row.text("role"), row.yes("forage"), row.yes("straw"), zero, row.source()));
  }

  static Optional<HighValue> high(Row row) {
    row.oneOf("unit", List.of("%"));
    return Optional.of(
        new HighValue(row.text("role"), row.analyte(), row.number("value"), row.source()));
  }

  static Optional<Tolerance> tolerance(Row row) {
    String per =
        row.oneOf("per", List.of("% DM", "mg/kg DM", "IU/kg DM", "Mcal/kg DM", "IU/kg BW"));
    return Optional.of(
        new Tolerance(
            row.analyte(),
            row.number("max"),
            per.endsWith("BW"),
            row.yes("alarm"),
            row.source(),
            row.others()));
  }

  static Optional<IntakeRule> intake(Row row) {
    String type = row.text("type");
    for (HorseType known : HorseType.values()) {
      if (known.code().equals(type)) {
        return Optional.of(
            new IntakeRule(
                known,
                row.oneOf("state", List.of("any", "protected")).equals("protected"),
                row.optional("warn_below_pct_bw"),
                row.number("vet_below_pct_bw"),
                row.number("refuse_below_pct_bw"),
                row.number("max_pct_bw"),
                row.number("adlib_pct_bw"),
                row.number("adlib_u_pct"),
                row.number("straw_usual_pct"),
                row.number("straw_hard_pct"),
                row.source()));
      }
    }
    row.cells().problem("type", "unknown-word", "horse, pony, miniature or donkey");
    return Optional.empty();
  }

  static Optional<KindRule> kind(Row row) {
    row.oneOf("kind", List.of("batch", "typical"));
    return Optional.of(
        new KindRule(
            row.text("kind"),
            row.text("analyte"),
            row.optional("u"),
            row.optional("u_rel_pct"),
            row.source()));
  }

  static Optional<Setting> setting(Row row) {
    String text = row.cells().required("value");
    double number = text.matches("-?[0-9]+(\\.[0-9]+)?") ? Double.parseDouble(text) : Double.NaN;
    return Optional.of(new Setting(row.text("name"), text, number, row.source(), row.others()));
  }
}
