package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.report.pdf.PdfWriter;
import rickyard.report.text.BrokenTemplateException;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;
import rickyard.report.view.PaperFacts;
import rickyard.report.view.PaperSize;
import rickyard.report.view.Serving;

class PaperTest {
  private static final Set<String> ALL = Set.of("sheets", "letters", "pdf");

  /** An amount on a scale; mg/kg of dry matter is none. */
  private static final Pattern AMOUNT = Pattern.compile("\\d (kg|lb|oz|g)\\b(?! of)");

  private final MorningView view = SampleView.of(12, 4);

  private SortedMap<String, byte[]> files(PaperFacts facts, Set<String> families) {
    SortedMap<String, byte[]> bytes = new TreeMap<>();
    Outputs.files(view, CoOpView.none(), facts, families)
        .forEach((path, file) -> bytes.put(path, SampleView.bytes(file)));
    return bytes;
  }

  private static PaperFacts facts(Map<String, String> languages, Map<String, String> templates) {
    TreeMap<String, SortedMap<String, Serving>> servings = new TreeMap<>();
    servings.put("H1", new TreeMap<>(Map.of("L1", new Serving(3, "soaked", true))));
    return new PaperFacts(
        new TreeMap<>(languages),
        servings,
        new TreeMap<>(),
        new TreeMap<>(templates),
        PaperSize.A4);
  }

  private String sheet(SortedMap<String, byte[]> files, String horse) {
    return Jsoup.parse(new String(files.get("sheets/" + horse + ".html"), UTF_8)).body().text();
  }

  private static String horse(HorseAdvice horse) {
    return "+" + horse.horse().toLowerCase(Locale.ROOT);
  }

  @Test
  void aHorseWithAcuteLaminitisGetsTheVetFirstAndNoAmounts() throws Exception {
    SortedMap<String, byte[]> files = files(PaperFacts.none(), ALL);
    HorseAdvice acute = view.horses().stream().filter(HorseAdvice::vetFirst).findFirst().get();
    String sheet = sheet(files, horse(acute));
    assertTrue(sheet.contains("VET FIRST"), sheet);
    assertFalse(AMOUNT.matcher(sheet).find(), sheet);
    assertFalse(files.containsKey("sheets/" + horse(acute) + ".pdf"));
    String letter =
        plain(files.get("letters/+" + acute.client().toLowerCase(Locale.ROOT) + ".eml"));
    String name = view.horseFacts().get(acute.horse()).name();
    String part = letter.substring(letter.indexOf("== " + name + " =="));
    int next = part.indexOf("\n== ", 4);
    assertFalse(AMOUNT.matcher(next < 0 ? part : part.substring(0, next)).find(), part);
  }

  @Test
  void aDietThatCannotBeJudgedIsTreatedAsNotCleared() {
    SortedMap<String, byte[]> files = files(PaperFacts.none(), ALL);
    HorseAdvice asked =
        view.horses().stream().filter(h -> h.priority() == Priority.ASK).findFirst().get();
    String sheet = sheet(files, horse(asked));
    assertTrue(sheet.contains("NOT CLEARED"), sheet);
    assertTrue(sheet.contains("Treat it as not cleared"), sheet);
    assertTrue(sheet.contains("rations.csv, row 12: the net of hay was never weighed"), sheet);
    assertFalse(AMOUNT.matcher(sheet).find(), sheet);
  }

  @Test
  void aChangedRationIsPrintedOnOnePageInKilogramsAndPounds() throws Exception {
    SortedMap<String, byte[]> files = files(facts(Map.of(), Map.of()), ALL);
    byte[] pdf = files.get("sheets/+h1.pdf");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertEquals(1, document.getNumberOfPages());
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("NEW RATION"), text);
      assertTrue(Pattern.compile("\\d kg").matcher(text).find(), text);
      assertTrue(Pattern.compile("\\d lb").matcher(text).find(), text);
      assertTrue(text.replaceAll("\\s+", " ").contains("call your veterinarian now"), text);
      everyFontIsEmbedded(document);
    }
  }

  private static void everyFontIsEmbedded(PDDocument document) throws Exception {
    int fonts = 0;
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
        fonts++;
      }
    }
    assertTrue(fonts > 0);
  }

  @Test
  void thePrintedSummaryHasNumberedPagesAndNoForeignFont() throws Exception {
    byte[] pdf = files(PaperFacts.none(), Set.of("pdf")).get("summary.pdf");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int pages = document.getNumberOfPages();
      String text = new PDFTextStripper().getText(document);
      for (int page = 1; page <= pages; page++) {
        assertTrue(text.contains(page + " / " + pages), "page " + page);
      }
      for (String sign : List.of("≤", "≥", "−", "±", "Φ")) {
        assertTrue(text.contains(sign), sign);
      }
      assertFalse(text.contains("\uFFFD"));
      everyFontIsEmbedded(document);
    }
  }

  @Test
  void everySheetIsOnePageOnEitherPaper() {
    for (PaperSize size : PaperSize.values()) {
      PaperFacts facts =
          new PaperFacts(new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), size);
      files(facts, Set.of("sheets"))
          .forEach(
              (path, bytes) -> {
                if (path.endsWith(".html")) {
                  String html = new String(bytes, UTF_8);
                  assertEquals(1, PdfWriter.of(html, view.asOf()).pages(), size + " " + path);
                }
              });
    }
  }

  @Test
  void paperIsTheSameBytesWhateverTheMachine() {
    SortedMap<String, byte[]> here = files(PaperFacts.none(), ALL);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      SortedMap<String, byte[]> there = files(PaperFacts.none(), ALL);
      assertEquals(here.keySet(), there.keySet());
      here.forEach((path, bytes) -> assertArrayEquals(bytes, there.get(path), path));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void aClientIsWrittenToInItsLanguage() throws Exception {
    SortedMap<String, byte[]> files = files(facts(Map.of("C1", "de"), Map.of()), ALL);
    String letter = plain(files.get("letters/+c1.eml"));
    assertTrue(letter.startsWith("Guten Tag "), letter);
    assertTrue(letter.contains("rufen Sie sofort Ihre Tierärztin"), letter);
    assertTrue(Pattern.compile("\\d,\\d+ kg").matcher(letter).find(), letter);
    assertFalse(letter.contains("vet"), letter);
    assertTrue(plain(files.get("letters/+c2.eml")).startsWith("Dear "));
  }

  @Test
  void aDraftIsUnsentDatedByTheMorningAndCarriesTheSheets() throws Exception {
    SortedMap<String, byte[]> files = files(PaperFacts.none(), ALL);
    MimeMessage letter = message(files.get("letters/+c1.eml"));
    assertEquals("1", letter.getHeader("X-Unsent")[0]);
    assertEquals("Tue, 24 Nov 2026 12:00:00 +0000", letter.getHeader("Date")[0]);
    assertEquals("Ada Thornbeck <c0@valley.example>", letter.getHeader("To")[0]);
    MimeMultipart parts = (MimeMultipart) letter.getContent();
    String first = parts.getBodyPart(1).getFileName();
    assertArrayEquals(
        files.get("sheets/" + first), parts.getBodyPart(1).getInputStream().readAllBytes());
  }

  @Test
  void onlyClientsWithSomethingToBeToldGetALetter() {
    SortedMap<String, byte[]> files = files(PaperFacts.none(), ALL);
    Set<String> told =
        new java.util.TreeSet<>(
            view.horses().stream()
                .filter(h -> h.priority().compareTo(Priority.NOTE) <= 0)
                .map(h -> "letters/+" + h.client().toLowerCase(Locale.ROOT) + ".eml")
                .toList());
    assertEquals(told, new java.util.TreeSet<>(files.subMap("letters/", "letters0").keySet()));
    SortedMap<String, byte[]> quiet = new TreeMap<>();
    List<HorseAdvice> horses =
        view.horses().stream().filter(h -> h.priority() == Priority.NONE).toList();
    quiet.putAll(Outputs.of(view.withHorses(horses), ALL));
    assertTrue(
        quiet.keySet().stream().noneMatch(p -> p.endsWith(".eml")), quiet.keySet().toString());
  }

  @Test
  void anAlertGivesTheCallsInOrderWithNumbersAndSentences() throws Exception {
    SortedMap<String, byte[]> files = files(PaperFacts.none(), Set.of("letters"));
    String alert = plain(files.get("alerts/+r=002e=0020a+dler.eml"));
    int last = -1;
    for (HorseAdvice horse : view.horses()) {
      if (horse.priority() == Priority.CALL_NOW) {
        int at = alert.indexOf("Call now: " + view.horseFacts().get(horse.horse()).name());
        assertTrue(at > last, alert);
        last = at;
      }
    }
    assertTrue(alert.indexOf("Call today") > 0, alert);
    assertTrue(alert.contains("0555 010 23"), alert);
    assertTrue(alert.contains("Please do not open the new stack L2"), alert);
  }

  @Test
  void anOfficeTemplateTakesThePlaceOfTheBuiltInOne() {
    SortedMap<String, byte[]> files =
        files(
            facts(Map.of(), Map.of("sheet/horse.html", "<p th:text=\"${p.horse()}\">x</p>")),
            Set.of("sheets"));
    assertEquals("Bramble", sheet(files, "+h1"));
  }

  @Test
  void aBrokenTemplateNamesFileAndLine() {
    PaperFacts broken =
        facts(
            Map.of(),
            Map.of("letter/letter.html", "<html>\n<body>\n<p th:text=\"${l.subjekt()}\"></p>\n"));
    BrokenTemplateException failure =
        assertThrows(BrokenTemplateException.class, () -> files(broken, ALL));
    assertTrue(
        failure.getMessage().startsWith("config/templates/letter/letter.html, line 3: "),
        failure.getMessage());
    assertTrue(failure.getMessage().contains("l.subjekt()"), failure.getMessage());
  }

  @Test
  void aTemplateWithATagThatNeverEndsNamesFileAndLine() {
    PaperFacts broken =
        facts(Map.of(), Map.of("letter/letter.txt", "a\n[# th:if=\"${true}\"]\nb\n"));
    BrokenTemplateException failure =
        assertThrows(BrokenTemplateException.class, () -> files(broken, ALL));
    assertTrue(
        failure.getMessage().startsWith("config/templates/letter/letter.txt"),
        failure.getMessage());
  }

  private static MimeMessage message(byte[] bytes) throws Exception {
    return new MimeMessage(Session.getInstance(new Properties()), new ByteArrayInputStream(bytes));
  }

  private static String plain(byte[] bytes) throws Exception {
    MimeMultipart parts = (MimeMultipart) message(bytes).getContent();
    Object first = parts.getBodyPart(0).getContent();
    return (String)
        (first instanceof MimeMultipart texts ? texts.getBodyPart(0).getContent() : first);
  }
}
