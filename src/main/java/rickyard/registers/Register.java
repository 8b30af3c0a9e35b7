package rickyard.registers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The registers that an office may keep, with the columns of each.
 *
 * <p>A column that a row cannot be read safely without must be in the header; one that was added
 * later or says nothing when blank may be absent. In the lists below {@code !} marks the former,
 * {@code ?} one whose absence is not even worth a warning, {@code #} a column of numbers, and
 * {@code a|b} two spellings of one quantity of which a file has one.
 */
public enum Register {
  CLIENTS("clients.csv", "client_id! name! email phone adviser units language?"),
  ADVISERS("advisers.csv", "adviser! name! phone?"),
  HORSES(
      "horses.csv",
      "horse_id! client_id! name! type! birth_month! body_weight_kg|body_weight_lb!# weight_by!"
          + " weighed_on target_weight_kg|target_weight_lb# mature_weight_kg|mature_weight_lb#"
          + " status! level! month!# body_condition!# conditions! meals_per_day# vet_plan!"
          + " grazing_hours_per_day# muzzle extras herd trip_from trip_to"),
  LOTS(
      "lots.csv",
      "lot_id! holder! material! legume_pct# cutting harvested_on stock_kg|stock_lb!#"
          + " bale_kg|bale_lb# price_per_tonne# for_sale cores# sampled_on sampled_by field?"),
  DELIVERIES(
      "deliveries.csv",
      "lot_id! client_id! kg|lb!# delivered_on! replaces! opens_on! opened_on! finished_on!"),
  FEEDS(
      "feeds.csv",
      "feed_id! name! role! form! batch! dm_pct!# bag_kg|bag_lb# price_per_bag# bagged_on"
          + " shelf_life_months# full_rate_pct_bw_low# full_rate_pct_bw_high#"
          + " dose_kg_per_day_low# dose_kg_per_day_high# complete"),
  RATIONS("rations.csv", "horse_id! item! batch! amount!# unit! fed! meals!# prepared! since!"),
  MEASURES("measures.csv", "client_id! item! measure! kg|lb!# weighed_on"),
  ANSWERS("answers.csv", "question_id! answer! by! on! note scope?"),
  DECISIONS("decisions.csv", "date! about! kind! value! start_on! by! why!");

  private final String fileName;
  private final String columns;

  Register(String fileName, String columns) {
    this.fileName = fileName;
    this.columns = columns;
  }

  public String fileName() {
    return fileName;
  }

  List<Column> columns() {
    return Arrays.stream(columns.split(" ", -1)).map(Column::of).toList();
  }

  /** All names that a column of this register may have. */
  List<String> columnNames() {
    List<String> names = new ArrayList<>();
    columns().forEach(column -> names.addAll(column.names()));
    return List.copyOf(names);
  }

  static Optional<Register> findByFileName(String fileName) {
    return Arrays.stream(values()).filter(r -> r.fileName.equals(fileName)).findFirst();
  }

  static List<String> fileNames() {
    return Arrays.stream(values()).map(Register::fileName).toList();
  }

  /**
   * One column.
   *
   * @param names its spellings, of which a file has one
   * @param required whether the header must have it
   * @param number whether its cells are numbers
   * @param silent whether nothing is said where it is absent
   */
  record Column(List<String> names, boolean required, boolean number, boolean silent) {
    Column {
      names = List.copyOf(names);
    }

    static Column of(String spec) {
      String bare = spec.replace("!", "").replace("#", "").replace("?", "");
      return new Column(
          Arrays.asList(bare.split("\\|", -1)),
          spec.contains("!"),
          spec.contains("#"),
          spec.contains("?"));
    }

    String expected() {
      return "a column " + String.join(" or ", names);
    }
  }
}
