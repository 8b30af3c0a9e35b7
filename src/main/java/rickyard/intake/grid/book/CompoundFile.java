package rickyard.intake.grid.book;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Set;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.util.IOUtils;
import org.apache.poi.util.RecordFormatException;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.UnreadableException;

/** The box of old office programs: an old workbook (.xls) is read, everything else named. */
public final class CompoundFile {
  /** The library keeps the whole workbook as objects, many times its size. */
  private static final int LARGEST = 8 << 20;

  static {
    // No record of an honest workbook comes near this; a lying length must not take the memory.
    IOUtils.setByteArrayMaxOverride(LARGEST);
  }

  private CompoundFile() {}

  /** Reads the workbook in the box. */
  public static Opened read(byte[] bytes, ReadLimits limits) {
    if (bytes.length > LARGEST) {
      throw new UnreadableException(
          "too-large", "The file is too large for a report; save it as .xlsx or CSV.");
    }
    try (POIFSFileSystem box = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
      Set<String> names = box.getRoot().getEntryNames();
      if (names.contains("Workbook") || names.contains("WORKBOOK")) {
        return workbook(box, limits);
      }
      return refused(names);
    } catch (EncryptedDocumentException locked) {
      return Book.encrypted().of(Book.KIND);
    } catch (OldExcelFormatException old) {
      return tooOld();
    } catch (IOException | RecordFormatException | IllegalStateException broken) {
      return new Opened.Unreadable(
          "other", "damaged", "The file is damaged and cannot be read; ask for it again.");
    }
  }

  private static Opened workbook(POIFSFileSystem box, ReadLimits limits) throws IOException {
    try (HSSFWorkbook workbook = new HSSFWorkbook(box, false)) {
      return new OldWorkbook(workbook, new Book(limits)).read();
    } catch (UnreadableException reason) {
      return reason.of(Book.KIND);
    }
  }

  private static Opened refused(Set<String> names) {
    if (names.contains("EncryptedPackage")) {
      return Book.encrypted().of(Book.KIND);
    }
    if (names.contains("Book") || names.contains("BOOK")) {
      return tooOld();
    }
    if (names.contains("__properties_version1.0")) {
      return new Opened.Unreadable(
          "mail",
          "unsupported-kind",
          "Mails saved as .msg are not read; save it as .eml, or put its attachments in.");
    }
    return new Opened.Unreadable(
        "document",
        "unsupported-kind",
        "Office documents are not read; save it as PDF and put that in the inbox.");
  }

  private static Opened tooOld() {
    return new Opened.Unreadable(
        Book.KIND,
        "unsupported-kind",
        "The workbook is of a kind older than 1997; save it as .xlsx and put that in the inbox.");
  }
}
