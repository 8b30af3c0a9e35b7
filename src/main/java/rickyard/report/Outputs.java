package rickyard.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.report.csv.CsvOut;
import rickyard.report.csv.MorningTables;
import rickyard.report.csv.Table;
import rickyard.report.json.SummaryJson;
import rickyard.report.page.SummaryPage;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;

/** The files of a morning, as bytes: the same view gives the same bytes, whatever the machine. */
public final class Outputs {
  /** Family of the CSV files and summary.json. */
  public static final String DATA = "data";

  /** Family of summary.html. */
  public static final String PAGE = "page";

  private Outputs() {}

  /**
   * The files of the families asked for; families of other writers are left to them.
   *
   * @param families any of {@link #DATA}, {@link #PAGE}
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

  /** The files of the families asked for, each made when it is written. */
  public static SortedMap<String, OutputFile> files(
      MorningView view, CoOpView coOp, Set<String> families) {
    MorningView shown = VetFirst.withheld(view);
    SortedMap<String, OutputFile> files = new TreeMap<>();
    if (families.contains(DATA)) {
      for (Table table : MorningTables.of(shown, coOp)) {
        files.put(table.file(), out -> CsvOut.write(table, out));
      }
      files.put("summary.json", out -> SummaryJson.write(shown, coOp, Cautions.all(), out));
    }
    if (families.contains(PAGE)) {
      files.put("summary.html", OutputFile.of(SummaryPage.bytes(shown, coOp, Cautions.all())));
    }
    return Collections.unmodifiableSortedMap(files);
  }
}
