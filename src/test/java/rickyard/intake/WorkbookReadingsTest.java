package rickyard.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Doubt;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/** From a workbook's bytes to readings: what a formula made is asked, never taken. */
class WorkbookReadingsTest {
  private static final Intake INTAKE =
      new Intake(
          new DocumentReader(),
          new Interpreter(DictionaryTables.load(Optional.empty())),
          ReadLimits.DEFAULT);

  private static List<Sample> samples(Consumer<Workbook> fill) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "test", "1.0")) {
      fill.accept(workbook);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return read(out.toByteArray());
  }

  private static List<Sample> read(byte[] bytes) {
    ReadDocument document = INTAKE.read(bytes, "report.xlsx").documents().get(0);
    return document.report().orElseThrow(() -> new AssertionError(document.reason())).samples();
  }

  private static void head(Worksheet sheet, String lot) {
    sheet.value(0, 1, "Lot");
    sheet.value(0, 2, lot);
    sheet.value(1, 1, "Sampled");
    sheet.value(1, 2, LocalDate.of(2026, 3, 6));
    sheet.style(1, 2).format("dd/mm/yyyy").set();
    sheet.value(3, 1, "Analyte");
    sheet.value(3, 2, "Unit");
    sheet.value(3, 3, "Dry matter");
  }

  private static void row(Worksheet sheet, int row, String name, Object value) {
    sheet.value(row, 1, name);
    sheet.value(row, 2, "%");
    if (value instanceof Number number) {
      sheet.value(row, 3, number);
    } else if (value instanceof LocalDate day) {
      sheet.value(row, 3, day);
      sheet.style(row, 3).format("d.m").set();
    } else {
      sheet.value(row, 3, (String) value);
    }
  }

  private static Reading reading(Sample sample, String code) {
    return sample.readings().stream()
        .filter(r -> r.analyte().value().equals(code))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aCertificateWithADateCellAndABlankFirstColumnIsRead() {
    Sample sample =
        samples(
                book -> {
                  Worksheet sheet = book.newWorksheet("Results");
                  head(sheet, "GRD-9");
                  row(sheet, 4, "WSC", 7.456);
                  sheet.style(4, 3).format("0").set();
                  row(sheet, 5, "Starch", 0.68);
                })
            .get(0);
    assertEquals("GRD-9", sample.label());
    assertEquals(Optional.of(LocalDate.of(2026, 3, 6)), sample.sampledOn());
    assertEquals("7.456", reading(sample, "WSC").raw());
    assertTrue(reading(sample, "WSC").isSettled());
    assertEquals(7.456, reading(sample, "WSC").value().orElseThrow().best(), 1e-12);
    assertEquals(5, reading(sample, "WSC").place().row());
  }

  @Test
  void aSingleNumberWithThreeDecimalsIsNoThousand() {
    Sample sample =
        samples(
                book -> {
                  Worksheet sheet = book.newWorksheet("Results");
                  head(sheet, "GRD-9");
                  row(sheet, 4, "WSC", 7.456);
                })
            .get(0);
    assertTrue(reading(sample, "WSC").isSettled());
  }

  @Test
  void aFormulaInAResultIsAskedAndOneElsewhereCostsNothing() {
    Sample sample = read(withFormula()).get(0);
    Reading wsc = reading(sample, "WSC");
    assertEquals("formula-in-result", wsc.doubt());
    assertTrue(reading(sample, "STARCH").isSettled());
    assertEquals(1, sample.doubts().size());
    Doubt doubt = sample.doubts().get(0);
    assertEquals(
        "A formula stands in the cell of WSC, its stored result may be old: is it right?"
            + " (WSC \"7.4\")",
        doubt.question());
    assertEquals(List.of("as printed", "<number>", "leave out"), doubt.choices());
  }

  private static byte[] withFormula() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      HSSFSheet sheet = workbook.createSheet("Results");
      String[][] texts = {
        {"Lot", "GRD-9"}, {"Analyte", "Unit", "Dry matter"}, {"WSC", "%"}, {"Starch", "%"}
      };
      for (int row = 0; row < texts.length; row++) {
        sheet.createRow(row);
        for (int column = 0; column < texts[row].length; column++) {
          sheet.getRow(row).createCell(column).setCellValue(texts[row][column]);
        }
      }
      sheet.getRow(2).createCell(2).setCellFormula("3.7*2");
      sheet.getRow(3).createCell(2).setCellValue(0.68);
      sheet.createRow(8).createCell(6).setCellFormula("1+1");
      workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
      workbook.write(out);
      return out.toByteArray();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Test
  void aDayAnErrorOrAScaledNumberAmongResultsIsAsked() {
    Sample sample =
        samples(
                book -> {
                  Worksheet sheet = book.newWorksheet("Results");
                  head(sheet, "GRD-9");
                  row(sheet, 4, "WSC", LocalDate.of(2026, 4, 7));
                  row(sheet, 5, "Starch", 680);
                  sheet.style(5, 3).format("0.0,").set();
                  sheet.value(6, 1, "ADF");
                  sheet.value(6, 2, "%");
                  sheet.formula(6, 3, "1/0");
                  row(sheet, 7, "NDF", 60.9);
                })
            .get(0);
    assertEquals("date-in-result", reading(sample, "WSC").doubt());
    assertEquals("shown-otherwise", reading(sample, "STARCH").doubt());
    assertEquals("error-in-cell", reading(sample, "ADF").doubt());
    assertTrue(reading(sample, "NDF").isSettled());
  }

  @Test
  void aPercentCellMeansWhatItShows() {
    Sample sample =
        samples(
                book -> {
                  Worksheet sheet = book.newWorksheet("Results");
                  head(sheet, "GRD-9");
                  row(sheet, 4, "WSC", 0.0936);
                  sheet.style(4, 3).format("0.0%").set();
                })
            .get(0);
    assertEquals("9.36%", reading(sample, "WSC").raw());
    assertEquals(9.36, reading(sample, "WSC").value().orElseThrow().best(), 1e-12);
  }

  @Test
  void eachSheetIsASampleOfItsOwn() {
    List<Sample> samples =
        samples(
            book -> {
              for (int i = 1; i <= 3; i++) {
                Worksheet sheet = book.newWorksheet("Sheet " + i);
                head(sheet, "GRD-" + i);
                row(sheet, 4, "WSC", 7.25 + i);
              }
            });
    assertEquals(List.of("GRD-1", "GRD-2", "GRD-3"), samples.stream().map(Sample::label).toList());
    assertEquals(2, reading(samples.get(1), "WSC").place().page());
    assertEquals("9.25", reading(samples.get(1), "WSC").raw());
  }
}
