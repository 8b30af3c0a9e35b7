package rickyard.registers;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rickyard.core.forage.Answer;
import rickyard.core.forage.Decision;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.WeighedMeasure;

/** Rows of the registers that need no more than their cells and the keys of the others. */
final class RowParsers {
  static final List<String> MEASURES = List.of("bale", "flake", "net", "scoop");
  private static final List<String> DECISION_KINDS =
      List.of("told", "accepted", "override", "correction", "release");
  private static final List<String> SCOPES = List.of("report", "layout");
  private static final double HEAVIEST_STOCK_KG = 1e8;
  private static final double HEAVIEST_BALE_KG = 2000;

  private final LoadContext context;
  private final Findings findings;
  private final Keys keys;

  RowParsers(LoadContext context, Findings findings, Keys keys) {
    this.context = context;
    this.findings = findings;
    this.keys = keys;
  }

  Optional<Client> client(RegisterRow row) {
    Client client =
        new Client(
            row.key("client_id"),
            row.required("name"),
            row.text("email"),
            row.text("phone"),
            row.text("adviser"),
            row.word("units", List.of("kg", "lb")),
            language(row));
    return good(row, client);
  }

  Optional<Adviser> adviser(RegisterRow row) {
    Adviser adviser = new Adviser(row.key("adviser"), row.required("name"), row.text("phone"));
    return good(row, adviser);
  }

  /** What is no language costs a client nothing but its language: it is warned about. */
  private String language(RegisterRow row) {
    String language = row.text("language").toLowerCase(Locale.ROOT);
    if (language.isEmpty() || language.matches("[a-z]{2,3}")) {
      return language;
    }
    String expected = "two or three letters, for example en or de; English is used";
    findings.warn(row.problem("language", "not-a-language", expected, row.text("language")));
    return "";
  }

  Optional<Lot> lot(RegisterRow row) {
    String id = row.key("lot_id");
    String holder = row.required("holder");
    if (!holder.isEmpty() && !holder.equals("co-op")) {
      keys.client(row, "holder");
    }
    String material = row.required("material").toLowerCase(Locale.ROOT);
    Optional<LocalDate> harvested = row.pastDay("harvested_on", context.asOf());
    Optional<LocalDate> sampled = row.pastDay("sampled_on", context.asOf());
    notBefore(row, "sampled_on", sampled, "harvested_on", harvested);
    OptionalDouble legume = row.number("legume_pct", 0, 100, "0 to 100 %");
    OptionalDouble stockKg = row.mass("stock", true, HEAVIEST_STOCK_KG);
    OptionalDouble baleKg = row.mass("bale", false, HEAVIEST_BALE_KG);
    OptionalDouble price = row.notNegative("price_per_tonne");
    OptionalInt cores = row.whole("cores", 1, 1000);
    boolean forSale = row.yes("for_sale");
    warnOfMaterial(row, material);
    return good(
        row,
        new Lot(
            id,
            holder,
            material,
            legume,
            row.text("cutting"),
            harvested,
            stockKg,
            baleKg,
            price,
            forSale,
            cores,
            sampled,
            row.text("sampled_by"),
            row.text("field")));
  }

  private void warnOfMaterial(RegisterRow row, String material) {
    if (!context.materials().isEmpty()
        && !material.isEmpty()
        && !context.materials().contains(material)) {
      String nearest = Nearest.of(material, context.materials()).orElse("none");
      findings.warn(
          row.problem(
              "material",
              "unknown-material",
              "a known material (nearest: " + nearest + ")",
              material));
    }
  }

  Optional<Delivery> delivery(RegisterRow row) {
    String lotId = keys.lot(row, "lot_id");
    String clientId = keys.client(row, "client_id");
    OptionalDouble kg = row.mass("", false, HEAVIEST_STOCK_KG);
    if (row.text("delivered_on").isEmpty()) {
      row.wrong("delivered_on", "blank", "YYYY-MM-DD");
    }
    Optional<LocalDate> delivered = row.pastDay("delivered_on", context.asOf());
    Optional<LocalDate> opens = row.day("opens_on");
    Optional<LocalDate> opened = row.pastDay("opened_on", context.asOf());
    Optional<LocalDate> finished = row.pastDay("finished_on", context.asOf());
    notBefore(row, "opened_on", opened, "delivered_on", delivered);
    notBefore(row, "finished_on", finished, "opened_on", opened);
    notBefore(row, "finished_on", finished, "delivered_on", delivered);
    Optional<String> replaces = replaced(row, lotId);
    if (row.isBad()) {
      return Optional.empty();
    }
    return Optional.of(
        new Delivery(
            lotId, clientId, kg, delivered.orElseThrow(), replaces, opens, opened, finished));
  }

  private Optional<String> replaced(RegisterRow row, String lotId) {
    if (row.text("replaces").isEmpty()) {
      return Optional.empty();
    }
    String replaces = keys.lot(row, "replaces");
    if (replaces.equals(lotId)) {
      row.wrong("replaces", "replaces-itself", "another lot than the one delivered");
    }
    return Optional.of(replaces);
  }

  Optional<WeighedMeasure> measure(RegisterRow row) {
    String clientId = keys.client(row, "client_id");
    String item = keys.item(row, "item");
    String measure = row.requiredWord("measure", MEASURES);
    String column = row.massColumn("");
    if (row.text(column).isEmpty()) {
      row.wrong(column, "blank", "a weight above 0");
    }
    OptionalDouble kg = row.mass("", false, HEAVIEST_BALE_KG);
    Optional<LocalDate> weighed = row.pastDay("weighed_on", context.asOf());
    if (row.isBad()) {
      return Optional.empty();
    }
    return Optional.of(new WeighedMeasure(clientId, item, measure, kg.orElseThrow(), weighed));
  }

  /** An answer; a row whose answer is still blank is no answer yet, and no fault. */
  Optional<Answer> answer(RegisterRow row) {
    String id = row.key("question_id");
    if (row.text("answer").isEmpty()) {
      findings.warn(row.problem("answer", "blank", "an answer; the question stays open", ""));
      return Optional.empty();
    }
    String by = row.required("by");
    Optional<LocalDate> on = requiredDay(row, "on");
    String scope = row.word("scope", SCOPES);
    if (row.isBad()) {
      return Optional.empty();
    }
    warnOfFuture(row, "on", on.orElseThrow());
    return Optional.of(
        new Answer(
            id,
            row.text("answer"),
            by,
            on.get(),
            row.text("note"),
            scope.equals("layout") ? scope : ""));
  }

  Optional<Decision> decision(RegisterRow row) {
    Optional<LocalDate> date = requiredDay(row, "date");
    String about = row.key("about");
    String kind = row.requiredWord("kind", DECISION_KINDS);
    Optional<LocalDate> start = row.day("start_on");
    String by = row.required("by");
    if (row.isBad()) {
      return Optional.empty();
    }
    warnOfFuture(row, "date", date.orElseThrow());
    return Optional.of(
        new Decision(
            date.get(), about, kind, row.text("value"), start, by, row.text("why"), row.number()));
  }

  private static Optional<LocalDate> requiredDay(RegisterRow row, String column) {
    if (row.text(column).isEmpty()) {
      row.wrong(column, "blank", "YYYY-MM-DD");
    }
    return row.day(column);
  }

  private void warnOfFuture(RegisterRow row, String column, LocalDate day) {
    if (day.isAfter(context.asOf())) {
      findings.warn(
          row.problem(
              column, "in-the-future", "a day not after " + context.asOf(), row.text(column)));
    }
  }

  private static void notBefore(
      RegisterRow row,
      String column,
      Optional<LocalDate> later,
      String earlierColumn,
      Optional<LocalDate> earlier) {
    if (later.isPresent() && earlier.isPresent() && later.get().isBefore(earlier.get())) {
      row.wrong(column, "out-of-order", "a day not before " + earlierColumn);
    }
  }

  private static <T> Optional<T> good(RegisterRow row, T value) {
    return row.isBad() ? Optional.empty() : Optional.of(value);
  }
}
