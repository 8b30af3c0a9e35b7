package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

import java.util.function.Supplier;
import rickyard.intake.grid.csv.TextTables;
import rickyard.intake.grid.pdf.PdfPages;

/**
 * Opens any document: its content, never its name, decides how.
 *
 * <p>Text tables, PDF and HTML become cells; mails and zips become parts; everything else becomes a
 * plain reason. Errors of the libraries stay inside: whatever the bytes are, there is a result.
 */
public final class DocumentReader implements GridReader {
  private final ReadLimits limits;
  private final ReadingProgress progress;

  public DocumentReader(ReadLimits limits) {
    this(limits, ReadingProgress.none());
  }

  /** A reader that tells how far it is in a long document. */
  public DocumentReader(ReadLimits limits, ReadingProgress progress) {
    this.limits = requireNonNull(limits, "limits");
    this.progress = requireNonNull(progress, "progress");
  }

  /** A reader with {@link ReadLimits#DEFAULT}. */
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
      case PDF -> PdfPages.read(bytes, limits, progress);
      case ZIP -> new ZipParts(limits).open(bytes);
      case MAIL -> new MailParts(limits).open(bytes);
      case HTML -> new HtmlTables(limits).open(bytes);
      case TEXT -> TextTables.read(bytes, limits);
      case IMAGE ->
          kind.refused("no-text", "The file is a picture; type the figures in or ask for a file.");
      case WORKBOOK ->
          kind.refused(
              "unsupported-kind",
              "Workbooks are not read yet; save each sheet as CSV and put that in the inbox.");
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
