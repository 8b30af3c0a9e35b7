package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.mail.BodyPart;
import jakarta.mail.Header;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import rickyard.core.advice.HorseAdvice;
import rickyard.report.csv.CsvOut;
import rickyard.report.letter.Letters;
import rickyard.report.sheet.Sheets;
import rickyard.report.text.Cut;
import rickyard.report.text.Harmless;
import rickyard.report.view.MorningView;

/**
 * Names that want to be something else, on sheets, in letters and in alerts: 1500 in each build,
 * ten thousand with {@code -Drickyard.strings=10000}, as the profile hostile does.
 */
class PaperHostileInputTest {
  private static final long SEED = 20261126L;
  private static final int STRINGS = Integer.getInteger("rickyard.strings", 1_500);
  private static final int PRINTED = 300;
  private static final String FILE =
      "letters\\.csv|(sheets|letters|alerts)/[a-z0-9+=_-]{1,100}\\.(html|pdf|eml)";
  private static final Set<String> HEADERS =
      Set.of("Date", "To", "Message-ID", "Subject", "MIME-Version", "Content-Type", "X-Unsent");

  @Test
  void sheetsLettersAndAlertsKeepTheTextAndTakeNothingElse() throws Exception {
    Random random = new Random(SEED);
    int used = 0;
    for (int round = 0; used < STRINGS; round++) {
      List<String> given = new ArrayList<>();
      MorningView view = withoutProposals(view(random, given));
      used += given.size();
      check(view, "seed " + SEED + ", round " + round);
    }
  }

  @Test
  void whatIsPrintedShowsTheNamesOnOnePage() throws Exception {
    Random random = new Random(SEED);
    int used = 0;
    for (int round = 0; used < PRINTED; round++) {
      List<String> given = new ArrayList<>();
      MorningView view = view(random, given);
      used += given.size();
      String about = "seed " + SEED + ", round " + round;
      SortedMap<String, byte[]> files = Outputs.of(view, Set.of("sheets", "pdf"));
      for (HorseAdvice horse : view.horses()) {
        byte[] pdf = files.get(Sheets.path(horse.horse()) + ".pdf");
        if (pdf != null) {
          try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(1, document.getNumberOfPages(), about);
            String name = view.horseFacts().get(horse.horse()).name();
            holds(
                new PDFTextStripper().getText(document), Cut.name(name, horse.horse(), 60), about);
          }
        }
      }
      try (PDDocument document = Loader.loadPDF(files.get("summary.pdf"))) {
        assertTrue(document.getNumberOfPages() > 1, about);
      }
    }
  }

  private static MorningView view(Random random, List<String> given) {
    Map<String, String> names = new HashMap<>();
    return SampleView.of(
        12,
        4,
        text ->
            names.computeIfAbsent(
                text,
                t -> {
                  String name = HostileNames.next(random, given.size());
                  given.add(name);
                  return name;
                }));
  }

  private static void check(MorningView view, String about) throws Exception {
    SortedMap<String, byte[]> files = Outputs.of(view, Set.of("sheets", "letters"));
    files.keySet().forEach(path -> assertTrue(path.matches(FILE), about + " " + path));
    for (HorseAdvice horse : view.horses()) {
      String html = new String(files.get(Sheets.path(horse.horse()) + ".html"), UTF_8);
      Document page = Jsoup.parse(html);
      String name = view.horseFacts().get(horse.horse()).name();
      assertEquals(Cut.name(name, horse.horse(), 60), page.select("h1").first().wholeText(), about);
      nothingElse(page, about);
      nothingSteers(html, about);
    }
    Set<String> drafts = new TreeSet<>();
    for (String path : files.keySet()) {
      if (path.endsWith(".eml")) {
        drafts.add(path);
        draft(files.get(path), path, about);
      }
    }
    for (String client : Letters.clients(view)) {
      assertTrue(drafts.remove(Letters.path(client)), about);
    }
    assertTrue(drafts.stream().allMatch(d -> d.startsWith("alerts/")), about);
    releases(view, new String(files.get("letters.csv"), UTF_8), about);
  }

  /** The table of letters names each client, and each row of it releases for that client. */
  private static void releases(MorningView view, String csv, String about) throws Exception {
    List<String> clients = new ArrayList<>();
    for (CSVRecord row : CSVFormat.RFC4180.parse(new StringReader(csv)).getRecords()) {
      if (row.getRecordNumber() > 1) {
        String client = CsvOut.unguarded(row.get(1));
        clients.add(client);
        List<CSVRecord> pasted =
            CSVFormat.DEFAULT.parse(new StringReader(CsvOut.unguarded(row.get(4)))).getRecords();
        assertEquals(1, pasted.size(), about);
        assertEquals(Harmless.line(client), pasted.get(0).get(1), about);
        assertEquals("release", pasted.get(0).get(2), about);
        assertEquals(row.get(3), pasted.get(0).get(3), about);
      }
    }
    assertEquals(Letters.clients(view).stream().map(Harmless::text).toList(), clients, about);
  }

  private static void draft(byte[] bytes, String path, String about) throws Exception {
    MimeMessage message =
        new MimeMessage(Session.getInstance(new Properties()), new ByteArrayInputStream(bytes));
    List<String> headers = new ArrayList<>();
    for (Header header : Collections.list(message.getAllHeaders())) {
      headers.add(header.getName());
    }
    assertTrue(HEADERS.containsAll(headers), about + " " + path + " " + headers);
    assertEquals(headers.size(), new TreeSet<>(headers).size(), about + " " + headers);
    assertTrue(message.getAllRecipients() == null || message.getAllRecipients().length == 1, about);
    nothingSteers(message.getSubject(), about);
    assertFalse(message.getSubject().contains("\n"), about);
    MimeMultipart all = (MimeMultipart) message.getContent();
    boolean isAlert = path.startsWith("alerts/");
    MimeMultipart texts = isAlert ? all : (MimeMultipart) all.getBodyPart(0).getContent();
    assertEquals(2, texts.getCount(), about);
    nothingSteers((String) texts.getBodyPart(0).getContent(), about);
    nothingElse(Jsoup.parse((String) texts.getBodyPart(1).getContent()), about);
    for (int i = 1; !isAlert && i < all.getCount(); i++) {
      BodyPart part = all.getBodyPart(i);
      assertTrue(part.getFileName().matches("[a-z0-9+=_-]+\\.(html|pdf)"), part.getFileName());
    }
    Message other = new DefaultMessageBuilder().parseMessage(new ByteArrayInputStream(bytes));
    assertEquals(message.getSubject(), other.getSubject(), about);
    assertEquals(headers.size(), other.getHeader().getFields().size(), about);
    assertEquals(all.getCount(), ((Multipart) other.getBody()).getCount(), about);
  }

  private static void nothingElse(Document page, String about) {
    assertTrue(
        page.select("script,img,svg,a,iframe,object,form,input,base,[onload],[onerror]").isEmpty(),
        about);
    assertEquals(1, page.select("title").size(), about);
  }

  private static void nothingSteers(String text, String about) {
    assertTrue(
        text.codePoints()
            .noneMatch(c -> c == 0 || c == 0x1b || c == 0x85 || c == 0x202e || c == 0x2066),
        about);
  }

  /** Plain letters and digits of a name, in order; a font may lack its other characters. */
  private static void holds(String text, String name, String about) {
    String bare = name.replaceAll("[^A-Za-z0-9]", "");
    assertTrue(text.replaceAll("[^A-Za-z0-9]", "").contains(bare), about + " " + name);
  }

  private static MorningView withoutProposals(MorningView view) {
    List<HorseAdvice> horses =
        view.horses().stream()
            .map(
                h ->
                    new HorseAdvice(
                        h.horse(),
                        h.client(),
                        h.groups(),
                        h.priority(),
                        h.reason(),
                        h.say(),
                        null,
                        h.after(),
                        h.changes(),
                        h.problems(),
                        List.of(),
                        List.of(),
                        h.vetFirst(),
                        h.affected(),
                        h.questions(),
                        null))
            .toList();
    return view.withHorses(horses);
  }
}
