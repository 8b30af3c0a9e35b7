package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.mail.BodyPart;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All markup against the checker of the HTML standard's conformance rules. */
class MarkupInBrowser {
  /** The checker's tables of styles are of 2020: what browsers learned since is no error. */
  private static final List<String> YOUNGER =
      List.of(
          "\u201ctext-underline-offset\u201d",
          "\u201cpaint-order\u201d",
          "\u201ccontent-visibility\u201d",
          "\u201ccontain-intrinsic-size\u201d",
          "\u201crevert\u201d is not a \u201cdisplay\u201d value",
          "\u201c::details-content\u201d");

  @TempDir Path folder;

  private static List<String> wrong(List<Path> files) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("rickyard.validator", "target/validator") + "/*",
                "nu.validator.client.SimpleCommandLineValidator",
                "--format",
                "gnu",
                "--no-langdetect"));
    files.forEach(f -> command.add(f.toString()));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said;
    try (InputStream out = process.getInputStream()) {
      said = new String(out.readAllBytes(), StandardCharsets.UTF_8);
    }
    process.waitFor();
    assertFalse(said.contains("Exception"), said);
    return said.lines()
        .filter(l -> l.startsWith("\""))
        .filter(l -> YOUNGER.stream().noneMatch(l::contains))
        .toList();
  }

  @Test
  void theSummaryIsValid() throws Exception {
    assertEquals(List.of(), wrong(List.of(Demo.file("summary.html"))));
  }

  @Test
  void theSheetsAreValid() throws Exception {
    List<Path> sheets =
        Demo.files("sheets").stream().filter(s -> s.toString().endsWith(".html")).toList();
    assertTrue(sheets.size() > 5);

    assertEquals(List.of(), wrong(sheets));
  }

  @Test
  void theMarkupOfLettersAndAlertsIsValid() throws Exception {
    List<Path> parts = new ArrayList<>();
    for (String below : List.of("letters", "alerts")) {
      for (Path draft : Demo.files(below)) {
        if (draft.toString().endsWith(".eml")) {
          for (String html : markup(draft)) {
            Path part = folder.resolve(draft.getFileName() + "-" + parts.size() + ".html");
            parts.add(Files.writeString(part, html));
          }
        }
      }
    }
    assertTrue(parts.size() > 5);

    assertEquals(List.of(), wrong(parts));
  }

  private static List<String> markup(Path draft) throws Exception {
    List<String> found = new ArrayList<>();
    try (InputStream in = Files.newInputStream(draft)) {
      collect(new MimeMessage(Session.getInstance(new Properties()), in).getContent(), found);
    }
    return found;
  }

  private static void collect(Object content, List<String> found) throws Exception {
    if (content instanceof MimeMultipart parts) {
      for (int i = 0; i < parts.getCount(); i++) {
        BodyPart part = parts.getBodyPart(i);
        if (part.isMimeType("text/html") && part.getFileName() == null) {
          found.add((String) part.getContent());
        } else if (part.isMimeType("multipart/*")) {
          collect(part.getContent(), found);
        }
      }
    }
  }

  /** An unclosed element and an attribute of no standard are found: the checker does check. */
  @Test
  void theCheckerSeesWhatIsWrong() throws Exception {
    Path wrong =
        Files.writeString(
            folder.resolve("wrong.html"),
            "<!DOCTYPE html><html lang='en'><title>x</title><p wrong=1><b>x</p>");

    assertTrue(wrong(List.of(wrong)).size() > 1);
  }
}
