package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Sample;
import rickyard.core.forage.SettledSample;
import rickyard.report.csv.CsvOut;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;
import rickyard.report.view.QuestionRow;

/**
 * Rows ready to paste into registers: lots that no register knows, filled in as far as their
 * reports say, one blank answer for each open question, and the best proposals as decisions.
 */
final class Drafts {
  private static final List<String> LOTS =
      Arrays.asList(
          ("lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
                  + "price_per_tonne,for_sale,cores,sampled_on,sampled_by,field")
              .split(",", -1));

  private final SettledMorning morning;
  private final Inputs inputs;

  Drafts(SettledMorning morning, Inputs inputs) {
    this.morning = morning;
    this.inputs = inputs;
  }

  /** The files by path below the output folder. */
  SortedMap<String, byte[]> files(List<QuestionRow> questions, List<HorseAdvice> horses) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("drafts/lots.csv", CsvOut.bytes(lots()));
    files.put("drafts/answers.csv", CsvOut.bytes(answers(questions)));
    files.put("drafts/decisions.csv", CsvOut.bytes(AcceptanceDrafts.table(inputs.asOf(), horses)));
    return files;
  }

  private Table lots() {
    List<String> header = header();
    List<List<Field>> rows = new ArrayList<>();
    for (InForce entry : morning.settled().inForce()) {
      if (entry.provisional()) {
        Map<String, String> cells = lot(entry);
        rows.add(header.stream().map(c -> Field.text(cells.getOrDefault(c, ""))).toList());
      }
    }
    return new Table("drafts/lots.csv", header, rows);
  }

  /** The columns of the office's own register, or all that a register of lots may have. */
  private List<String> header() {
    return inputs.registers().office().files().stream()
        .filter(f -> f.name().equals("lots.csv"))
        .map(f -> f.text().lines().findFirst().orElse(""))
        .map(line -> Arrays.asList(line.strip().split("[,;\t]", -1)))
        .filter(columns -> columns.contains("lot_id"))
        .findFirst()
        .orElse(LOTS);
  }

  private Map<String, String> lot(InForce entry) {
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put("lot_id", entry.subject());
    // Nobody's until a person says whose: the co-op's, and not for sale, so no horse is given it.
    cells.put("holder", "co-op");
    cells.put("for_sale", "no");
    List<Sample> samples =
        morning.settled().samplesOf(entry).stream().map(SettledSample::sample).toList();
    samples.stream()
        .map(Sample::material)
        .filter(m -> !m.isBlank())
        .findFirst()
        .ifPresent(m -> cells.put("material", inputs.tables().sampleKinds().material(m)));
    samples.stream()
        .map(Sample::cores)
        .filter(java.util.OptionalInt::isPresent)
        .findFirst()
        .ifPresent(c -> cells.put("cores", Integer.toString(c.getAsInt())));
    samples.stream()
        .map(Sample::sampledOn)
        .flatMap(Optional::stream)
        .max(LocalDate::compareTo)
        .ifPresent(d -> cells.put("sampled_on", d.toString()));
    return cells;
  }

  private static Table answers(List<QuestionRow> questions) {
    List<List<Field>> rows = new ArrayList<>();
    for (QuestionRow q : questions) {
      rows.add(
          List.of(
              Field.text(q.questionId()),
              Field.text(""),
              Field.text(""),
              Field.text(""),
              Field.text("")));
    }
    return new Table(
        "drafts/answers.csv", List.of("question_id", "answer", "by", "on", "note"), rows);
  }
}
