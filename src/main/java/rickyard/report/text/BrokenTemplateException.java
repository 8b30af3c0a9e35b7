package rickyard.report.text;

/**
 * A template or a file of texts of the office that cannot be used; the message names file, line and
 * what is wrong. Nothing is published.
 */
public final class BrokenTemplateException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public BrokenTemplateException(String file, int line, String what) {
    super(sentence(file, line, what));
  }

  public BrokenTemplateException(String file, int line, String what, Throwable cause) {
    super(sentence(file, line, what), cause);
  }

  private static String sentence(String file, int line, String what) {
    return "config/templates/"
        + Harmless.line(file)
        + (line > 0 ? ", line " + line : "")
        + ": "
        + Harmless.line(what)
        + "; put it right or take the file away, the last outputs stay";
  }
}
