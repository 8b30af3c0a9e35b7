package rickyard.report.letter;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.report.OutputFile;
import rickyard.report.csv.CsvOut;
import rickyard.report.pdf.PdfWriter;
import rickyard.report.sheet.HorsePaper;
import rickyard.report.sheet.HorsePapers;
import rickyard.report.sheet.Sheets;
import rickyard.report.template.Templates;
import rickyard.report.text.Cut;
import rickyard.report.text.FileName;
import rickyard.report.text.Phrases;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.MorningView;

/** A draft for each client who has something to be told, with the sheets of the horses it names. */
public final class Letters {
  /** Folder of the drafts to clients. */
  public static final String FOLDER = "letters/";

  /** What stands for the name of who releases a letter until somebody writes it. */
  public static final String NOBODY = "YOUR NAME";

  private static final Set<Priority> TOLD =
      EnumSet.of(Priority.CALL_NOW, Priority.CALL_TODAY, Priority.ASK, Priority.NOTE);
  private static final int LONGEST_NAME = 60;
  private static final int NAMED_IN_SUBJECT = 3;

  /**
   * Of so many horses every sheet is attached as paper; beyond, those whose ration stands as pages.
   */
  private static final int MOST_PRINTED = 100;

  private final boolean isPrinted;
  private final MorningView view;
  private final Templates templates;
  private final HorsePapers papers;
  private final SortedMap<String, Sheets.Sheet> sheets;

  public Letters(
      MorningView view,
      Templates templates,
      HorsePapers papers,
      SortedMap<String, Sheets.Sheet> sheets) {
    this.view = view;
    this.templates = templates;
    this.papers = papers;
    this.sheets = sheets;
    this.isPrinted = byClient(view).values().stream().mapToInt(List::size).sum() <= MOST_PRINTED;
  }

  /** The path of a client's draft. */
  public static String path(String client) {
    return FOLDER + FileName.of(client) + ".eml";
  }

  /** The clients who have something to be told. */
  public static Set<String> clients(MorningView view) {
    return new java.util.TreeSet<>(byClient(view).keySet());
  }

  /** All drafts by path, and what to write to release one; files are made when written. */
  public SortedMap<String, OutputFile> files() {
    SortedMap<String, OutputFile> files = new TreeMap<>();
    List<ReleaseRow> rows = new ArrayList<>();
    byClient(view)
        .forEach(
            (client, horses) -> {
              Draft draft = draft(client, horses);
              files.put(path(client), out -> Eml.write(draft, out));
              rows.add(ReleaseRow.of(client, draft));
            });
    files.put(ReleaseRow.FILE, out -> CsvOut.write(ReleaseRow.table(rows), out));
    return files;
  }

  private static SortedMap<String, List<HorseAdvice>> byClient(MorningView view) {
    SortedMap<String, List<HorseAdvice>> clients = new TreeMap<>();
    for (HorseAdvice horse : view.horses()) {
      if (TOLD.contains(horse.priority())) {
        clients.computeIfAbsent(horse.client(), c -> new ArrayList<>()).add(horse);
      }
    }
    return clients;
  }

  private Draft draft(String client, List<HorseAdvice> horses) {
    Phrases texts = papers.texts(client);
    List<HorsePaper> told = horses.stream().map(papers::of).toList();
    LetterPage page = page(client, told, texts);
    Map<String, Object> values = Map.of("l", page, "t", texts);
    Optional<ClientFacts> facts = Optional.ofNullable(view.clientFacts().get(client));
    return new Draft(
        Address.of(facts.map(ClientFacts::email).orElse("")),
        told.get(0).client(),
        page.subject(),
        crlf(templates.fill("letter/letter.txt", values)),
        crlf(templates.fill("letter/letter.html", values)),
        horses.stream().map(HorseAdvice::horse).distinct().map(this::attachment).toList(),
        view.asOf());
  }

  /** Mail knows one end of a line. */
  static String crlf(String text) {
    return text.replace("\r\n", "\n").replace('\r', '\n').replace("\n", "\r\n");
  }

  /** Whoever the client knows signs, for the office. */
  private static String from(@Nullable ClientFacts client, Phrases texts) {
    String adviser = client == null ? "" : Cut.line(client.adviserName(), LONGEST_NAME);
    String office = texts.text("office.name");
    return adviser.isEmpty()
        ? office
        : texts.say("letter.from", "adviser", adviser, "office", office);
  }

  private LetterPage page(String client, List<HorsePaper> told, Phrases texts) {
    HorsePaper first = told.get(0);
    return new LetterPage(
        texts.say("letter.subject", "horses", names(told, texts)),
        texts.say("letter.greeting", "client", first.client()),
        texts.say("letter.intro", "day", texts.day(view.asOf())),
        told.stream().map(p -> LetterHorse.of(p, texts)).toList(),
        List.of(texts.text("vet.words")),
        first.ring(),
        texts.text("letter.close"),
        from(view.clientFacts().get(client), texts),
        texts.text("letter.caution"));
  }

  private static String names(List<HorsePaper> told, Phrases texts) {
    List<String> names = told.stream().map(p -> Cut.line(p.horse(), LONGEST_NAME)).toList();
    if (names.size() <= NAMED_IN_SUBJECT) {
      return String.join(", ", names);
    }
    return texts.say(
        "letter.more",
        "horses",
        String.join(", ", names.subList(0, NAMED_IN_SUBJECT)),
        "number",
        String.valueOf(names.size() - NAMED_IN_SUBJECT));
  }

  private Attachment attachment(String horse) {
    Sheets.Sheet sheet = Optional.ofNullable(sheets.get(horse)).orElseThrow();
    return sheet
        .pdf()
        .or(() -> isPrinted ? Optional.of(PdfWriter.of(sheet.html(), view.asOf())) : sheet.pdf())
        .map(pdf -> new Attachment(FileName.of(horse) + ".pdf", "application/pdf", pdf::bytes))
        .orElseGet(
            () ->
                new Attachment(
                    FileName.of(horse) + ".html",
                    "text/html; charset=UTF-8",
                    () -> sheet.html().getBytes(StandardCharsets.UTF_8)));
  }
}
