package rickyard.report.text;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class PlainTest {
  @Test
  void codesInASentenceAreSaidInWords() {
    assertEquals(
        "cannot be judged: WSC + starch is at least 6.58 % DM.",
        Plain.sentence("cannot-judge: NSC_WSC is at least 6.58 % DM"));
    assertEquals(
        "WSC: waits for an answer: columns that may be swapped",
        Plain.line("WSC: waits for an answer:  columns-swapped"));
    assertEquals(
        "a.pdf takes the place of b.pdf (a newer revision)",
        Plain.line("a.pdf takes the place of b.pdf (newer-revision)"));
  }

  @Test
  void whatADietFallsShortOfIsSaidInWords() {
    assertEquals(
        "It falls short of iodine, sulphur, which today's does not.",
        Plain.sentence("It falls short of I, S, which today's does not."));
    assertEquals("I fed K to P; S stays.", Plain.sentence("I fed K to P; S stays"));
  }

  @Test
  void whatOnlyLooksLikeACodeStays() {
    for (String text : List.of("NSC_WSC_2", "the-lot-near-by", "lot-near-3.pdf", "clears")) {
      assertEquals(text, Plain.line(text));
    }
    assertEquals("ßcannot-judge", Plain.line("ßcannot-judge"));
    assertFalse(Plain.line("$1 \\cannot-judge").contains("cannot-judge"));
  }

  /** Every doubt about a figure that a report can raise has its words. */
  @Test
  void everyDoubtHasWords() throws IOException {
    Set<String> missing = new TreeSet<>();
    Set<String> known = new TreeSet<>(Words.codes("say"));
    Path doubts = Path.of("src/main/java/rickyard/intake/interpret/Doubts.java");
    Matcher label =
        Pattern.compile("(?m)^ +case ([^>]+)->").matcher(Files.readString(doubts, UTF_8));
    int found = 0;
    while (label.find()) {
      Matcher code = Pattern.compile("\"([a-z]+(?:-[a-z]+)+)\"").matcher(label.group(1));
      while (code.find()) {
        found++;
        if (!known.contains(code.group(1))) {
          missing.add(code.group(1));
        }
      }
    }
    assertTrue(found > 20, "the pattern finds " + found);
    assertEquals(Set.of(), missing);
  }
}
