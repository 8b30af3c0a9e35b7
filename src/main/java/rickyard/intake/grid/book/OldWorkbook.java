package rickyard.intake.grid.book;

import java.util.Optional;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import rickyard.intake.grid.Cell.Nature;
import rickyard.intake.grid.Opened;

/** Reads an old binary workbook (.xls); no formula is computed, no link followed. */
final class OldWorkbook {
  private final HSSFWorkbook workbook;
  private final Book book;
  private final Formats formats;

  OldWorkbook(HSSFWorkbook workbook, Book book) {
    this.workbook = workbook;
    this.book = book;
    this.formats = new Formats(workbook.getInternalWorkbook().isUsing1904DateWindowing());
  }

  Opened read() {
    for (int at = 0; at < workbook.getNumberOfSheets(); at++) {
      if (workbook.isSheetHidden(at) || workbook.isSheetVeryHidden(at)) {
        book.hides();
      } else {
        read(workbook.getSheetAt(at), workbook.getSheetName(at));
      }
    }
    return book.opened();
  }

  private void read(HSSFSheet from, String name) {
    Sheet sheet = book.sheet();
    for (Row row : from) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.BLANK) {
          continue;
        }
        if (row.getZeroHeight() || from.isColumnHidden(cell.getColumnIndex())) {
          book.hides();
        } else {
          take(sheet, (HSSFCell) cell);
        }
      }
    }
    for (CellRangeAddress range : from.getMergedRegions()) {
      sheet.merged(
          new Sheet.Merged(
              range.getFirstRow(),
              range.getFirstColumn(),
              range.getLastRow() - range.getFirstRow() + 1,
              range.getLastColumn() - range.getFirstColumn() + 1));
    }
    book.add(sheet, name);
  }

  private void take(Sheet sheet, HSSFCell cell) {
    boolean formula = cell.getCellType() == CellType.FORMULA;
    CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
    Optional<Shown> shown =
        switch (type) {
          case NUMERIC -> number(cell);
          case STRING -> Optional.of(printed(cell.getRichStringCellValue().getString()));
          case BOOLEAN -> Optional.of(printed(cell.getBooleanCellValue() ? "TRUE" : "FALSE"));
          case ERROR ->
              Optional.of(
                  new Shown(
                      FormulaError.forInt(cell.getErrorCellValue()).getString(), Nature.FAILED));
          default -> Optional.empty();
        };
    shown
        .map(s -> formula ? new Shown(s.text(), s.nature().computed()) : s)
        .ifPresent(s -> sheet.cell(cell.getRowIndex(), cell.getColumnIndex(), s));
  }

  private static Shown printed(String text) {
    return new Shown(text, Nature.PRINTED);
  }

  private Optional<Shown> number(HSSFCell cell) {
    var style = cell.getCellStyle();
    return formats.shown(
        Plain.number(cell.getNumericCellValue()),
        style.getDataFormat(),
        style.getDataFormatString());
  }
}
