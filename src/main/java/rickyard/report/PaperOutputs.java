package rickyard.report;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.HorseAdvice;
import rickyard.report.letter.Alerts;
import rickyard.report.letter.Letters;
import rickyard.report.pdf.SummaryPdf;
import rickyard.report.sheet.HorsePapers;
import rickyard.report.sheet.Sheets;
import rickyard.report.template.Templates;
import rickyard.report.text.Languages;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;
import rickyard.report.view.PaperFacts;
import rickyard.report.view.PaperLinks;

/**
 * The files made from templates: sheets, letters, alerts, the printed summary. All are made before
 * any is written, so that a broken template stops the morning while its last outputs stand.
 */
final class PaperOutputs {
  private PaperOutputs() {}

  static SortedMap<String, OutputFile> files(
      MorningView view, CoOpView coOp, PaperFacts facts, Set<String> families) {
    SortedMap<String, OutputFile> files = new TreeMap<>();
    Templates templates = new Templates(facts.templates());
    if (families.contains(Outputs.SHEETS) || families.contains(Outputs.LETTERS)) {
      Languages languages = new Languages(facts.templates());
      HorsePapers papers = new HorsePapers(view, facts, languages);
      SortedMap<String, Sheets.Sheet> sheets = new Sheets(view, facts, templates, papers).byHorse();
      if (families.contains(Outputs.SHEETS)) {
        sheets.forEach((horse, sheet) -> add(files, horse, sheet));
      }
      if (families.contains(Outputs.LETTERS)) {
        files.putAll(new Letters(view, templates, papers, sheets).files());
        files.putAll(new Alerts(view, facts, templates, languages).files());
      }
    }
    if (families.contains(Outputs.PDF)) {
      files.put(
          "summary.pdf",
          OutputFile.of(SummaryPdf.bytes(view, coOp, Cautions.all(), facts, templates)));
    }
    return files;
  }

  /** Where the sheets and letters lie that {@link #files} makes. */
  static PaperLinks links(MorningView view, PaperFacts facts, Set<String> families) {
    SortedMap<String, String> sheets = new TreeMap<>();
    if (families.contains(Outputs.SHEETS)) {
      HorsePapers papers = new HorsePapers(view, facts, new Languages(facts.templates()));
      for (HorseAdvice horse : view.horses()) {
        String ending = papers.isChanged(horse) ? ".pdf" : ".html";
        sheets.putIfAbsent(horse.horse(), Sheets.path(horse.horse()) + ending);
      }
    }
    SortedMap<String, String> letters = new TreeMap<>();
    if (families.contains(Outputs.LETTERS)) {
      Letters.clients(view).forEach(client -> letters.put(client, Letters.path(client)));
    }
    return new PaperLinks(sheets, letters);
  }

  private static void add(SortedMap<String, OutputFile> files, String horse, Sheets.Sheet sheet) {
    String path = Sheets.path(horse);
    files.put(path + ".html", out -> out.write(sheet.html().getBytes(StandardCharsets.UTF_8)));
    sheet.pdf().ifPresent(pdf -> files.put(path + ".pdf", out -> out.write(pdf.bytes())));
  }
}
