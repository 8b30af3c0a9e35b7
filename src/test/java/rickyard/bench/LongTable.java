package rickyard.bench;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Tables of a season's length, the same for the same seed. */
public final class LongTable {
  /** One analyte of the table: its name, its unit on dry matter, its decimals and its range. */
  private record Column(String name, String unit, int decimals, double low, double high) {}

  private static final List<Column> COLUMNS =
      List.of(
          new Column("Dry matter", "%", 1, 86, 92),
          new Column("Crude protein", "% DM", 1, 7, 14),
          new Column("ADF", "% DM", 1, 28, 38),
          new Column("NDF", "% DM", 1, 48, 62),
          new Column("WSC", "% DM", 1, 8, 16),
          new Column("ESC", "% DM", 1, 4, 8),
          new Column("Starch", "% DM", 1, 0.6, 2.8),
          new Column("Calcium", "% DM", 2, 0.3, 0.6),
          new Column("Phosphorus", "% DM", 2, 0.18, 0.32),
          new Column("Magnesium", "% DM", 2, 0.12, 0.24),
          new Column("Potassium", "% DM", 2, 1.2, 2.4),
          new Column("Iron", "mg/kg DM", 0, 80, 240));

  /** Analytes of one sample. */
  public static final int ANALYTES = COLUMNS.size();

  private LongTable() {}

  /** A row for each sample, a column for each analyte. */
  public static byte[] wide(int rows, long seed) {
    StringBuilder text = new StringBuilder("Lot,Sampled");
    COLUMNS.forEach(c -> text.append(',').append(c.name).append(" (").append(c.unit).append(')'));
    for (int row = 0; row < rows; row++) {
      text.append('\n').append(sample(row));
      for (Column column : COLUMNS) {
        text.append(',').append(figure(column, row, seed));
      }
    }
    return bytes(text);
  }

  /** A row for each figure, the rows of one sample together. */
  public static byte[] byFigure(int rows, long seed) {
    StringBuilder text = new StringBuilder("Lot,Sampled,Analyte,Result,Unit,Basis");
    for (int row = 0; row < rows; row++) {
      figure(text, row / ANALYTES, COLUMNS.get(row % ANALYTES), seed);
    }
    return bytes(text);
  }

  /** A row for each figure, sorted by analyte: first the dry matter of all samples. */
  public static byte[] byAnalyte(int rows, long seed) {
    StringBuilder text = new StringBuilder("Lot,Sampled,Analyte,Result,Unit,Basis");
    int samples = (rows + ANALYTES - 1) / ANALYTES;
    for (int row = 0; row < rows; row++) {
      figure(text, row % samples, COLUMNS.get(row / samples), seed);
    }
    return bytes(text);
  }

  private static void figure(StringBuilder text, int sample, Column column, long seed) {
    boolean asFed = column.name.equals("Dry matter");
    text.append('\n')
        .append(sample(sample))
        .append(',')
        .append(column.name)
        .append(',')
        .append(figure(column, sample, seed))
        .append(',')
        .append(column.unit.replace(" DM", ""))
        .append(asFed ? ",as fed" : ",dry matter");
  }

  private static String sample(int number) {
    return String.format(Locale.ROOT, "L-%06d,2026-02-%02d", number, number % 28 + 1);
  }

  /** The same for the same sample and analyte, in whatever order the rows stand. */
  private static String figure(Column column, int sample, long seed) {
    Random random = new Random(seed + 31L * sample + 1_000_003L * column.name.hashCode());
    double value = column.low + random.nextDouble() * (column.high - column.low);
    return String.format(Locale.ROOT, "%." + column.decimals + "f", value);
  }

  private static byte[] bytes(StringBuilder text) {
    return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }
}
