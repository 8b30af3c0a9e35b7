package rickyard.report.view;

/** The paper that an office prints on. */
public enum PaperSize {
  A4("A4", "210mm 297mm"),
  LETTER("letter", "215.9mm 279.4mm");

  private final String code;
  private final String css;

  PaperSize(String code, String css) {
    this.code = code;
    this.css = css;
  }

  public String code() {
    return code;
  }

  /** Width and height as a page's style says them. */
  public String css() {
    return css;
  }
}
