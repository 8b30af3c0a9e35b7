package rickyard.report.sheet;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.HorseAdvice;
import rickyard.report.pdf.Pdf;
import rickyard.report.pdf.PdfWriter;
import rickyard.report.template.Templates;
import rickyard.report.text.FileName;
import rickyard.report.view.MorningView;
import rickyard.report.view.PaperFacts;

/** The sheets of a morning: a page for every horse, a PDF where its ration changes. */
public final class Sheets {
  /** Folder of the sheets. */
  public static final String FOLDER = "sheets/";

  private final MorningView view;
  private final PaperFacts facts;
  private final Templates templates;
  private final HorsePapers papers;

  public Sheets(MorningView view, PaperFacts facts, Templates templates, HorsePapers papers) {
    this.view = view;
    this.facts = facts;
    this.templates = templates;
    this.papers = papers;
  }

  /**
   * A sheet.
   *
   * @param html the page
   * @param pdf the same printed; empty where the ration stands
   */
  public record Sheet(String html, Optional<Pdf> pdf) {}

  /** Every sheet by horse. */
  public SortedMap<String, Sheet> byHorse() {
    SortedMap<String, Sheet> sheets = new TreeMap<>();
    view.horses().forEach(h -> sheets.putIfAbsent(h.horse(), of(h)));
    return sheets;
  }

  /** The path of a horse's sheet without its ending. */
  public static String path(String horse) {
    return FOLDER + FileName.of(horse);
  }

  private Sheet of(HorseAdvice horse) {
    HorsePaper paper = papers.of(horse);
    boolean isPrinted = papers.isChanged(horse);
    if (!isPrinted && !PaperRoom.isTight(paper)) {
      return new Sheet(html(horse, paper), Optional.empty());
    }
    while (true) {
      String html = html(horse, paper);
      Pdf pdf = PdfWriter.of(html, view.asOf());
      if (pdf.pages() == 1 || paper.size() == HorsePaper.MOST) {
        return new Sheet(html, isPrinted ? Optional.of(pdf) : Optional.empty());
      }
      paper = paper.withSize(paper.size() + 1);
    }
  }

  private String html(HorseAdvice horse, HorsePaper paper) {
    return templates.fill(
        "sheet/horse.html",
        Map.of(
            "p",
            paper,
            "t",
            papers.texts(horse.client()),
            "style",
            templates.text("sheet/sheet.css"),
            "paper",
            facts.size()));
  }
}
