package rickyard.report.pdf;

/** A printed document: its bytes and the number of its pages. */
public final class Pdf {
  private final byte[] bytes;
  private final int pages;

  Pdf(byte[] bytes, int pages) {
    this.bytes = bytes.clone();
    this.pages = pages;
  }

  public byte[] bytes() {
    return bytes.clone();
  }

  public int pages() {
    return pages;
  }
}
