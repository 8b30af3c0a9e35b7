package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import java.util.function.Supplier;
import rickyard.intake.grid.book.CompoundFile;
import rickyard.intake.grid.book.OpenWorkbook;
import rickyard.intake.grid.csv.TextTables;
import rickyard.intake.grid.ocr.Recogniser;
import rickyard.intake.grid.ocr.ScannedPages;
import rickyard.intake.grid.pdf.PdfPages;

/**
 * Opens any document: its content, never its name, decides how.
 *
 * <p>Text tables, workbooks, PDF and HTML become cells; mails and zips become parts; everything
 * else becomes a plain reason. Errors of the libraries stay inside: whatever the bytes are, there
 * is a result.
 */
public final class DocumentReader implements GridReader {
  private final ReadLimits limits;
  private final Optional<Recogniser> recogniser;
  private final ReadingProgress progress;

  /**
   * A reader that tells how far it is in a long document.
   *
   * @param recogniser what reads pictures; without one they are refused
   */
  public DocumentReader(
      ReadLimits limits, Optional<Recogniser> recogniser, ReadingProgress progress) {
    this.limits = requireNonNull(limits, "limits");
    this.recogniser = requireNonNull(recogniser, "recogniser");
    this.progress = requireNonNull(progress, "progress");
  }

  /** A reader that tells nobody how far it is. */
  public DocumentReader(ReadLimits limits, Optional<Recogniser> recogniser) {
    this(limits, recogniser, ReadingProgress.none());
  }

  /** A reader that reads no pictures. */
  public DocumentReader(ReadLimits limits) {
    this(limits, Optional.empty());
  }

  /** A reader with {@link ReadLimits#DEFAULT} that reads no pictures. */
  public DocumentReader() {
    this(ReadLimits.DEFAULT);
  }

  @Override
  public Opened open(byte[] bytes, String name) {
    requireNonNull(name, "name");
    if (bytes.length == 0) {
      return new Opened.Unreadable("other", "empty", "The file is empty; ask for it again.");
    }
    if (bytes.length > limits.bytes()) {
      return new Opened.Unreadable(
          "other",
          "too-large",
          "The file has more than " + limits.bytes() + " bytes, too large for a report.");
    }
    return within("other", () -> dispatch(bytes));
  }

  private Opened dispatch(byte[] bytes) {
    ContentKind kind = ContentKind.of(bytes);
    return within(kind.label(), () -> opened(kind, bytes));
  }

  private Opened opened(ContentKind kind, byte[] bytes) {
    return switch (kind) {
      case PDF -> pdf(bytes);
      case ZIP -> new ZipParts(limits).open(bytes);
      case MAIL -> new MailParts(limits).open(bytes);
      case WRAPPED_MAIL ->
          kind.refused(
              "unsupported-kind",
              "The attachments lie in a winmail.dat, which is not read; ask the sender to send them"
                  + " as plain files.");
      case HTML -> new HtmlTables(limits).open(bytes);
      case TEXT -> TextTables.read(bytes, limits);
      case IMAGE ->
          recogniser
              .map(r -> ScannedPages.image(bytes, r, limits))
              .orElseThrow(() -> noRecogniser("picture"));
      case COMPOUND -> CompoundFile.read(bytes, limits);
      case FLAT_WORKBOOK -> OpenWorkbook.read(new ByteArrayInputStream(bytes), limits);
      case WORKBOOK ->
          kind.refused(
              "unsupported-kind",
              "This form of workbook is not read; save it as .xlsx and put that in the inbox.");
      case DOCUMENT ->
          kind.refused(
              "unsupported-kind",
              "Word-processor documents are not read; save it as PDF and put that in the inbox.");
      case ARCHIVE ->
          kind.refused(
              "unsupported-kind",
              "Only zip archives are opened; unpack it and put the files in the inbox.");
      case OTHER ->
          kind.refused(
              "unsupported-kind",
              "This kind of file is not read; ask for the report as CSV or as PDF with text.");
    };
  }

  /** Text first; a PDF that holds none is a scan. */
  private Opened pdf(byte[] bytes) {
    try {
      return PdfPages.read(bytes, limits, progress);
    } catch (UnreadableException reason) {
      if (!reason.code().equals("no-text")) {
        throw reason;
      }
      return recogniser
          .map(r -> ScannedPages.pdf(bytes, r, limits))
          .orElseThrow(() -> noRecogniser("scan"));
    }
  }

  private static UnreadableException noRecogniser(String what) {
    return new UnreadableException(
        "no-text",
        "It is a "
            + what
            + ", and no OCR program is installed to read it: install tesseract, type the figures"
            + " in, or ask the laboratory for its file.");
  }

  /**
   * Runs one reading so that its errors become a reason. Errors of the whole machine (memory) go
   * up: only a new process helps against them. A stack that overflows is the document's fault.
   */
  private static Opened within(String kind, Supplier<Opened> reading) {
    try {
      return reading.get();
    } catch (UnreadableException reason) {
      return reason.of(kind);
    } catch (StackOverflowError tooDeep) {
      return new Opened.Unreadable(
          kind, "damaged", "The file is nested too deeply to be read; ask for it again.");
    } catch (VirtualMachineError machine) {
      throw machine;
    } catch (RuntimeException | Error broken) {
      return new Opened.Unreadable(
          kind, "damaged", "The file is damaged and cannot be read; ask for it again.");
    }
  }
}
