package rickyard.report.json;

import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.Instantiatable;
import tools.jackson.core.util.MinimalPrettyPrinter;

/**
 * Each member of the whole begins a line, and so does each element of its tables; what lies deeper
 * stands on one line. A person finds a row, a comparison of two mornings shows the rows that
 * changed, and a season is not half blanks.
 */
final class RowLines extends MinimalPrettyPrinter implements Instantiatable<MinimalPrettyPrinter> {
  private static final long serialVersionUID = 1L;

  /** Elements of members of the whole lie this deep; they and what is in them stand on one line. */
  private static final int ONE_LINE = 3;

  private int depth;

  @Override
  public MinimalPrettyPrinter createInstance() {
    return new RowLines();
  }

  @Override
  public void writeStartObject(JsonGenerator json) {
    super.writeStartObject(json);
    depth++;
  }

  @Override
  public void beforeObjectEntries(JsonGenerator json) {
    line(json);
  }

  @Override
  public void writeObjectNameValueSeparator(JsonGenerator json) {
    json.writeRaw(depth < ONE_LINE ? ": " : ":");
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator json) {
    super.writeObjectEntrySeparator(json);
    line(json);
  }

  @Override
  public void writeEndObject(JsonGenerator json, int entries) {
    end(json, entries);
    super.writeEndObject(json, entries);
  }

  @Override
  public void writeStartArray(JsonGenerator json) {
    super.writeStartArray(json);
    depth++;
  }

  @Override
  public void beforeArrayValues(JsonGenerator json) {
    line(json);
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator json) {
    super.writeArrayValueSeparator(json);
    line(json);
  }

  @Override
  public void writeEndArray(JsonGenerator json, int values) {
    end(json, values);
    super.writeEndArray(json, values);
  }

  private void end(JsonGenerator json, int inside) {
    boolean onOneLine = depth >= ONE_LINE;
    depth--;
    if (inside > 0 && !onOneLine) {
      line(json);
    }
  }

  private void line(JsonGenerator json) {
    if (depth < ONE_LINE) {
      json.writeRaw("\n" + "  ".repeat(depth));
    }
  }
}
