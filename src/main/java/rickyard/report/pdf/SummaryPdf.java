package rickyard.report.pdf;

import java.util.List;
import java.util.Map;
import rickyard.report.page.CoOpPages;
import rickyard.report.page.Summary;
import rickyard.report.template.Templates;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;
import rickyard.report.view.PaperFacts;

/** summary.pdf: the morning's working paper to print, of the same view as the page. */
public final class SummaryPdf {
  private SummaryPdf() {}

  /** Its bytes. */
  public static byte[] bytes(
      MorningView view,
      CoOpView coOp,
      List<String> cautions,
      PaperFacts facts,
      Templates templates) {
    String html =
        templates.fill(
            "print/summary.html",
            Map.of(
                "s",
                Summary.of(view, cautions),
                "coop",
                CoOpPages.of(view, coOp),
                "style",
                templates.text("print/print.css"),
                "paper",
                facts.size()));
    return PdfWriter.of(html, view.asOf()).bytes();
  }
}
