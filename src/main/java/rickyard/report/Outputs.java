package rickyard.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.report.book.SummaryBook;
import rickyard.report.calendar.FollowUpCalendar;
import rickyard.report.csv.CsvOut;
import rickyard.report.csv.MorningTables;
import rickyard.report.csv.Table;
import rickyard.report.json.SummaryJson;
import rickyard.report.letter.Letters;
import rickyard.report.page.SummaryPage;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;
import rickyard.report.view.PaperFacts;

/** The files of a morning, as bytes: the same view gives the same bytes, whatever the machine. */
public final class Outputs {
  /** Family of the CSV files and summary.json. */
  public static final String DATA = "data";

  /** Family of summary.html. */
  public static final String PAGE = "page";

  /** Family of the sheets for the stable door. */
  public static final String SHEETS = "sheets";

  /** Family of the drafts: letters to clients, alerts to advisers. */
  public static final String LETTERS = "letters";

  /** Family of summary.pdf. */
  public static final String PDF = "pdf";

  /** Family of follow-ups.ics. */
  public static final String CALENDAR = "calendar";

  /** Family of summary.xlsx. */
  public static final String XLSX = "xlsx";

  /** All families, as a morning writes them unless it is told otherwise. */
  public static final List<String> ALL = List.of(DATA, PAGE, PDF, SHEETS, LETTERS, CALENDAR, XLSX);

  private Outputs() {}

  /**
   * The files of the families asked for; families of other writers are left to them.
   *
   * @param families any of {@link #DATA}, {@link #PAGE}, {@link #SHEETS}, {@link #LETTERS}, {@link
   *     #PDF}, {@link #CALENDAR}, {@link #XLSX}
   * @return bytes by path relative to the output folder
   */
  public static SortedMap<String, byte[]> of(MorningView view, Set<String> families) {
    return of(view, CoOpView.none(), families);
  }

  /** The same with what a co-op shares out. */
  public static SortedMap<String, byte[]> of(
      MorningView view, CoOpView coOp, Set<String> families) {
    SortedMap<String, byte[]> bytes = new TreeMap<>();
    files(view, coOp, families).forEach((path, file) -> bytes.put(path, bytes(file)));
    return Collections.unmodifiableSortedMap(bytes);
  }

  private static byte[] bytes(OutputFile file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      file.write(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** The files of the families asked for, without what only paper needs. */
  public static SortedMap<String, OutputFile> files(
      MorningView view, CoOpView coOp, Set<String> families) {
    return files(view, coOp, PaperFacts.none(), families);
  }

  /**
   * The files of the families asked for; large ones are made when they are written.
   *
   * @throws rickyard.report.text.BrokenTemplateException if a template of the office cannot be used
   */
  public static SortedMap<String, OutputFile> files(
      MorningView view, CoOpView coOp, PaperFacts paper, Set<String> families) {
    MorningView plain = counted(VetFirst.withheld(view), families);
    MorningView shown = plain.withPapers(PaperOutputs.links(plain, paper, families));
    SortedMap<String, OutputFile> files = new TreeMap<>();
    if (families.contains(DATA)) {
      for (Table table : MorningTables.of(shown, coOp)) {
        files.put(table.file(), out -> CsvOut.write(table, out));
      }
      files.put("summary.json", out -> SummaryJson.write(shown, coOp, Cautions.all(), out));
    }
    if (families.contains(CALENDAR)) {
      files.put("follow-ups.ics", out -> FollowUpCalendar.write(shown, out));
    }
    if (families.contains(XLSX)) {
      files.put("summary.xlsx", out -> SummaryBook.write(shown, out));
    }
    if (families.contains(PAGE)) {
      files.put("summary.html", out -> SummaryPage.write(shown, coOp, Cautions.all(), out));
    }
    files.putAll(PaperOutputs.files(shown, coOp, paper, families));
    return Collections.unmodifiableSortedMap(files);
  }

  /** The view with the letters that are drafted counted in. */
  public static MorningView counted(MorningView view, Set<String> families) {
    int letters = families.contains(LETTERS) ? Letters.clients(view).size() : 0;
    return view.counts().letters() == letters ? view : view.withLetters(letters);
  }
}
