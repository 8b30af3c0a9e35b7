package rickyard.registers;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rickyard.core.forage.Answer;
import rickyard.tables.FormulaGuard;
import rickyard.tables.TableProblem;
import rickyard.tables.UnusableTablesException;

/**
 * The text of {@code answers.csv} with answers written into it. Everything that was there stays as
 * it is, byte for byte: order of columns, delimiter, byte order mark, line ends, columns that the
 * program does not know, rows of other questions. A row of the same question is filled in anew.
 */
public final class AnswerSheet {
  private static final String HEADER = "question_id,answer,by,on,note\n";
  private static final String MARK = "\uFEFF";

  private final boolean marked;
  private final String text;
  private final char delimiter;
  private final List<String> header;
  private final String lineEnd;

  private AnswerSheet(boolean marked, String text, char delimiter, List<String> header) {
    this.marked = marked;
    this.text = text;
    this.delimiter = delimiter;
    this.header = List.copyOf(header);
    this.lineEnd = text.contains("\r\n") ? "\r\n" : text.contains("\n") ? "\n" : "\r\n";
  }

  /**
   * Reads the register; one that is not there is a sheet with a header.
   *
   * @throws UnusableTablesException if it cannot be read or is no register of answers
   */
  public static AnswerSheet read(Path file) {
    byte[] bytes;
    try {
      bytes =
          Files.exists(file) ? Files.readAllBytes(file) : HEADER.getBytes(StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw unusable("unreadable", "a file that can be read", "one that cannot");
    }
    return of(bytes);
  }

  /**
   * A sheet of these bytes.
   *
   * @throws UnusableTablesException if they are no register of answers
   */
  public static AnswerSheet of(byte[] bytes) {
    requireNonNull(bytes, "bytes");
    Findings findings = new Findings();
    Optional<String> text = RegisterText.decode(Register.ANSWERS.fileName(), bytes, findings);
    RegisterReader reader = new RegisterReader(Register.ANSWERS, name -> false, findings);
    Optional<RegisterTable> table = text.flatMap(reader::read);
    if (table.isEmpty() || !findings.fatal().isEmpty()) {
      throw new UnusableTablesException(findings.fatal());
    }
    boolean marked = bytes.length >= 3 && (bytes[0] & 0xff) == 0xef && (bytes[1] & 0xff) == 0xbb;
    String content = text.orElseThrow();
    return new AnswerSheet(marked, content, reader.delimiter(content), table.get().header());
  }

  private static UnusableTablesException unusable(String code, String expected, String found) {
    return new UnusableTablesException(
        List.of(new TableProblem(Register.ANSWERS.fileName(), 0, "", code, expected, found)));
  }

  /** Whether notes have a column to stand in. */
  public boolean hasNotes() {
    return header.contains("note");
  }

  /**
   * The bytes with these answers in them.
   *
   * @param answers one for each question; every text on one line
   */
  public byte[] with(List<Answer> answers) {
    Map<String, Answer> left = new LinkedHashMap<>();
    answers.forEach(a -> left.put(a.questionId(), a));
    StringBuilder out = new StringBuilder(marked ? MARK : "");
    List<CSVRecord> records = records();
    int id = header.indexOf("question_id");
    for (int i = 0; i < records.size(); i++) {
      CSVRecord row = records.get(i);
      int start = (int) row.getCharacterPosition();
      int end =
          i + 1 < records.size() ? (int) records.get(i + 1).getCharacterPosition() : text.length();
      String raw = text.substring(i == 0 ? 0 : start, end);
      Answer answer = id < row.size() ? left.remove(FormulaGuard.strip(row.get(id).strip())) : null;
      out.append(answer == null ? raw : line(answer, row) + ending(raw));
    }
    if (!left.isEmpty() && out.length() > 0 && "\r\n".indexOf(out.charAt(out.length() - 1)) < 0) {
      out.append(lineEnd);
    }
    left.values().forEach(a -> out.append(line(a, null)).append(lineEnd));
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private List<CSVRecord> records() {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw unusable("not-csv", "a CSV table with paired quotes", "a quote left open");
    }
  }

  private String line(Answer answer, @org.jspecify.annotations.Nullable CSVRecord old) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < header.size(); i++) {
      String kept = old != null && i < old.size() ? old.get(i) : "";
      cells.add(
          quoted(
              switch (header.get(i).toLowerCase(Locale.ROOT)) {
                case "question_id" -> FormulaGuard.protect(answer.questionId());
                case "answer" -> FormulaGuard.protect(answer.answer());
                case "by" -> FormulaGuard.protect(answer.by());
                case "on" -> answer.on().toString();
                case "note" -> answer.note().isEmpty() ? kept : FormulaGuard.protect(answer.note());
                default -> kept;
              }));
    }
    return String.join(String.valueOf(delimiter), cells);
  }

  private String quoted(String cell) {
    boolean plain =
        cell.indexOf(delimiter) < 0
            && cell.chars().noneMatch(c -> c == '"' || c == '\r' || c == '\n')
            && cell.equals(cell.strip());
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  private static String ending(String raw) {
    int end = raw.length();
    while (end > 0 && "\r\n".indexOf(raw.charAt(end - 1)) >= 0) {
      end--;
    }
    return raw.substring(end);
  }
}
