package rickyard.report.json;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.NoteLine;
import rickyard.core.advice.PortionLine;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;
import rickyard.report.csv.Field;
import rickyard.report.csv.MorningTables;
import rickyard.report.csv.Table;
import rickyard.report.text.Harmless;
import rickyard.report.view.CoOpView;
import rickyard.report.view.Counts;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.TableRowUsed;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * summary.json: every output table as an array of objects with the table's column names, and what
 * the page says beyond them, each object on a line of its own. Numbers as in the CSV files; an
 * unknown number is null. Members keep their order; new ones are added at the end.
 */
public final class SummaryJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .defaultPrettyPrinter(new RowLines())
          .build();

  private SummaryJson() {}

  /** The file's bytes, UTF-8, ended by a line feed. */
  public static byte[] bytes(MorningView view, CoOpView coOp, List<String> cautions) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      write(view, coOp, cautions, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** Writes it row by row: as a whole the tables of a season would fill the memory. */
  public static void write(MorningView view, CoOpView coOp, List<String> cautions, OutputStream out)
      throws IOException {
    try (JsonGenerator json = MAPPER.createGenerator(out)) {
      json.writeStartObject();
      json.writeStringProperty("as_of", view.asOf().toString());
      json.writeStringProperty("units", Harmless.text(view.units()));
      json.writeBooleanProperty("first_morning", view.firstMorning());
      json.writeStringProperty("decision_rule", Harmless.text(view.decisionRule()));
      words(json, "cautions", cautions);
      json.writeName("counts");
      json.writeTree(node(counts -> counts(counts, view.counts())));
      words(json, "problems", view.problems());
      words(json, "warnings", view.warnings());
      words(json, "changes", view.changes());
      for (Table table : MorningTables.of(view, coOp)) {
        rows(json, table);
      }
      objects(json, "horse_details", view.horses(), (node, horse) -> horse(node, horse, view));
      objects(json, "lot_assumptions", view.lots(), SummaryJson::assumptions);
      objects(json, "tables", view.tables(), SummaryJson::table);
      json.writeEndObject();
    }
    out.write('\n');
  }

  private static ObjectNode node(Consumer<ObjectNode> fill) {
    ObjectNode node = MAPPER.createObjectNode();
    fill.accept(node);
    return node;
  }

  private static <T> void objects(
      JsonGenerator json, String name, List<T> all, BiConsumer<ObjectNode, T> fill) {
    json.writeArrayPropertyStart(name);
    for (T each : all) {
      json.writeTree(node(node -> fill.accept(node, each)));
    }
    json.writeEndArray();
  }

  private static void words(JsonGenerator json, String name, List<String> words) {
    json.writeArrayPropertyStart(name);
    words.forEach(word -> json.writeString(Harmless.text(word)));
    json.writeEndArray();
  }

  private static void assumptions(ObjectNode node, LotRow lot) {
    node.put("lot", Harmless.text(lot.lot()));
    words(node.putArray("assumptions"), lot.assumptions());
  }

  private static String member(Table table) {
    return table.file().replace(".csv", "").replace('-', '_');
  }

  private static void rows(JsonGenerator json, Table table) {
    json.writeArrayPropertyStart(member(table));
    List<String> columns = table.columns();
    for (List<Field> row : table.rows()) {
      json.writeStartObject();
      for (int i = 0; i < columns.size(); i++) {
        json.writeName(columns.get(i));
        write(json, row.get(i));
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void write(JsonGenerator json, Field field) {
    if (field instanceof Field.Text text) {
      json.writeString(text.text());
    } else if (field instanceof Field.Figure figure && figure.number().isPresent()) {
      json.writeNumber(figure.number().get());
    } else {
      json.writeNull();
    }
  }

  private static void put(ObjectNode node, String name, Field field) {
    node.set(
        name,
        field.fold(
            text -> MAPPER.getNodeFactory().stringNode(text),
            number ->
                number.isPresent()
                    ? MAPPER.getNodeFactory().numberNode(number.get())
                    : MAPPER.getNodeFactory().nullNode()));
  }

  private static void number(ObjectNode node, String name, @Nullable Double number) {
    put(node, name, Field.number(number));
  }

  private static void text(ObjectNode node, String name, String text) {
    put(node, name, Field.text(text));
  }

  private static void words(ArrayNode out, List<String> words) {
    words.forEach(word -> out.add(Harmless.text(word)));
  }

  private static void counts(ObjectNode node, Counts counts) {
    node.put("files", counts.files());
    node.put("parts", counts.parts());
    node.put("accepted", counts.accepted());
    node.put("question", counts.question());
    node.put("duplicate", counts.duplicate());
    node.put("superseded", counts.superseded());
    node.put("refused", counts.refused());
    node.put("known", counts.known());
    node.put("samples", counts.samples());
    node.put("lots", counts.lots());
    node.put("horses", counts.horses());
    node.put("letters", counts.letters());
  }

  private static void table(ObjectNode node, TableRowUsed table) {
    text(node, "name", table.name());
    text(node, "version", table.version());
    text(node, "sha256", table.sha256());
    node.put("office_changed", table.officeChanged());
  }

  private static void horse(ObjectNode node, HorseAdvice horse, MorningView view) {
    text(node, "horse", horse.horse());
    HorseFacts facts = view.horseFacts().get(horse.horse());
    if (facts != null) {
      facts(node, facts, horse.vetFirst());
    }
    node.put("vet_first", horse.vetFirst());
    node.put("affected", horse.affected());
    text(node, "say", horse.say());
    words(node.putArray("changes"), horse.changes());
    words(node.putArray("problems"), horse.problems());
    diet(node, "before", horse.before(), horse.vetFirst());
    diet(node, "after", horse.after(), horse.vetFirst());
    ArrayNode proposals = node.putArray("proposals");
    horse.proposals().forEach(proposal -> proposal(proposals.addObject(), proposal));
    words(node.putArray("open_questions"), horse.questions().stream().map(q -> q.id()).toList());
  }

  /** Without a vet plan nothing is written from which a ration could be weighed out. */
  private static void facts(ObjectNode node, HorseFacts facts, boolean vetFirst) {
    text(node, "name", facts.name());
    text(node, "type", facts.type());
    text(node, "status", facts.status());
    number(node, "body_weight_kg", vetFirst ? null : Double.valueOf(facts.bodyWeightKg()));
    text(node, "weight_by", facts.weightBy());
    number(node, "body_condition", facts.bodyCondition());
    text(node, "conditions", facts.conditions());
  }

  private static void diet(
      ObjectNode parent, String name, @Nullable DietSummary diet, boolean vetFirst) {
    if (diet == null) {
      parent.putNull(name);
      return;
    }
    ObjectNode node = parent.putObject(name);
    text(node, "verdict", diet.verdict());
    number(node, "as_fed_kg", vetFirst ? null : Double.valueOf(diet.asFedKg()));
    number(node, "dm_kg", vetFirst ? null : Double.valueOf(diet.dmKg()));
    number(node, "dm_pct_bw", Double.valueOf(diet.dmPercentBw()));
    number(node, "nsc_wsc_pct_dm", diet.nscWscPercent());
    number(node, "nsc_wsc_u", diet.nscWscU());
    number(node, "nsc_esc_pct_dm", diet.nscEscPercent());
    number(node, "nsc_g_per_day", diet.nscGrams());
    ArrayNode portions = node.putArray("portions");
    diet.portions().forEach(portion -> portion(portions.addObject(), portion, vetFirst));
    ArrayNode limits = node.putArray("limits");
    diet.limits().forEach(limit -> limit(limits.addObject(), limit));
    ArrayNode notes = node.putArray("notes");
    diet.notes().forEach(note -> note(notes.addObject(), note));
  }

  private static void portion(ObjectNode node, PortionLine portion, boolean vetFirst) {
    text(node, "item", portion.item());
    text(node, "batch", portion.batch());
    text(node, "name", portion.name());
    text(node, "role", portion.role());
    node.put("as_forage", portion.asForage());
    number(node, "kg", vetFirst ? null : Double.valueOf(portion.kg()));
    number(node, "dm_kg", vetFirst ? null : Double.valueOf(portion.dmKg()));
    number(node, "nsc_wsc_pct_dm", portion.nscPercent());
    number(node, "nsc_wsc_u", portion.nscU());
    text(node, "prepared", portion.prepared());
  }

  private static void limit(ObjectNode node, LimitLine limit) {
    text(node, "limit_id", limit.limitId());
    text(node, "group", limit.group());
    text(node, "subject", limit.subject());
    text(node, "quantity", limit.quantity());
    number(node, "limit", Double.valueOf(limit.limit()));
    text(node, "unit", limit.unit());
    number(node, "value", limit.value());
    number(node, "low", limit.low());
    number(node, "high", limit.high());
    number(node, "u", limit.u());
    number(node, "p_over", limit.pOver());
    text(node, "verdict", limit.verdict());
    text(node, "severity", limit.severity());
    text(node, "reason", limit.reason());
  }

  private static void note(ObjectNode node, NoteLine note) {
    text(node, "code", note.code());
    text(node, "words", note.words());
  }

  private static void proposal(ObjectNode node, Proposal proposal) {
    node.put("rank", proposal.rank());
    text(node, "kind", proposal.kind());
    node.put("enough", proposal.enough());
    text(node, "why", proposal.why());
    ArrayNode items = node.putArray("items");
    proposal.items().forEach(item -> item(items.addObject(), item));
    diet(node, "diet", proposal.diet(), false);
  }

  private static void item(ObjectNode node, ProposalItem item) {
    text(node, "item", item.item());
    text(node, "batch", item.batch());
    text(node, "name", item.name());
    text(node, "role", item.role());
    number(node, "now_kg", Double.valueOf(item.nowKg()));
    number(node, "then_kg", Double.valueOf(item.thenKg()));
    number(node, "units_per_month", item.unitsPerMonth());
    number(node, "cost_per_day", item.costPerDay());
    number(node, "days_of_stock", item.daysOfStock());
  }
}
