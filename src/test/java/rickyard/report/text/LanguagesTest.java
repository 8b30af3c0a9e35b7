package rickyard.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LanguagesTest {

  @Test
  void germanSaysEverythingThatEnglishSaysToAClient() {
    Map<String, String> english = Languages.builtIn("en");
    Map<String, String> german = Languages.builtIn("de");
    TreeSet<String> wanted = new TreeSet<>(english.keySet());
    wanted.removeIf(key -> key.startsWith("alert."));
    assertEquals(wanted, new TreeSet<>(german.keySet()));
    german.forEach((key, words) -> assertEquals(filled(english.get(key)), filled(words), key));
  }

  private static Set<String> filled(String words) {
    return Phrases.FILLED
        .matcher(words)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void daysAndNumbersAreWrittenAsTheLanguageWritesThem() {
    Languages languages = new Languages(new TreeMap<>());
    LocalDate day = LocalDate.of(2026, 3, 16);
    assertEquals("16 March 2026", languages.of("en").day(day));
    assertEquals("16. März 2026", languages.of("de").day(day));
    assertEquals("7,5 kg", languages.of("de").numbers("7.5 kg"));
    assertEquals("en", languages.of("fr").language());
  }

  @Test
  void whatIsFilledInIsNotLookedAtAgain() {
    Phrases texts = new Phrases("en", Map.of("a", "{horse} and {client}"));
    assertEquals("{client} and $1", texts.say("a", "horse", "{client}", "client", "$1"));
  }

  @Test
  void anOfficeChangesAWordAndAddsALanguage() {
    TreeMap<String, String> office = new TreeMap<>();
    office.put("texts_en.properties", "banner.keep = AS BEFORE\n");
    office.put("texts_fr.properties", "# fr\nbanner.keep = COMME AVANT\nwatch.ppid = Poil.\n");
    Languages languages = new Languages(office);
    assertEquals("AS BEFORE", languages.of("en").text("banner.keep"));
    assertEquals("COMME AVANT", languages.of("fr").text("banner.keep"));
    assertEquals("Poil.", languages.of("fr").text("watch.ppid"));
    assertTrue(languages.knows("fr"));
  }

  @Test
  void aTextThatIsNotThereIsRefusedWithItsLine() {
    assertBroken(
        "# mine\n\nbanner.kep = X\n",
        "config/templates/texts_en.properties, line 3: there is no text \"banner.kep\"; put it right"
            + " or take the file away, the last outputs stay");
  }

  @Test
  void aWordInBracesThatNothingFillsIsRefusedWithItsLine() {
    assertBroken(
        "banner.keep = X\nlead.hold = {hors} stays\n",
        "config/templates/texts_en.properties, line 2: {hors} is not filled in here; the built-in"
            + " text is: Do not open the new hay for {horse}. These amounts hold for as long as the"
            + " present hay lasts.; put it right or take the file away, the last outputs stay");
  }

  @Test
  void aBrokenSignIsRefusedWithItsLine() {
    assertBroken(
        "banner.keep = X\nbanner.hold = \\uZZ\n",
        "config/templates/texts_en.properties, line 2: a \\u without four digits; put it right or"
            + " take the file away, the last outputs stay");
  }

  private static void assertBroken(String text, String message) {
    TreeMap<String, String> office = new TreeMap<>(Map.of("texts_en.properties", text));
    BrokenTemplateException broken =
        assertThrows(BrokenTemplateException.class, () -> new Languages(office));
    assertEquals(message, broken.getMessage());
  }
}
