package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import rickyard.report.text.Plain;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The printed summary read by PDFBox and by poppler: both find what summary.json says, on as many
 * pages, and every font travels with the file.
 */
class PaperByTwoReaders {
  /** Text without blanks and with ligatures taken apart: lines break where they like. */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC).replaceAll("[\\s\\u00a0]+", "");
  }

  private static Map<String, String> readings(Path file) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      found.put("PDFBox", plain(new PDFTextStripper().getText(document)));
    }
    found.put("pdftotext", plain(said("pdftotext", "-raw", "-enc", "UTF-8", file.toString(), "-")));
    return found;
  }

  /** What a program of the system prints. */
  private static String said(String... command) throws IOException {
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    try (InputStream out = process.getInputStream()) {
      String text = new String(out.readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(0, process.waitFor(), String.join(" ", command));
      return text;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static JsonNode json() throws IOException {
    return JsonMapper.shared().readTree(Files.readString(Demo.file("summary.json")));
  }

  /** What the paper has to hold: names, sentences, figures, counts. */
  private static List<String> wanted() throws IOException {
    JsonNode root = json();
    List<String> wanted = new ArrayList<>();
    JsonNode counts = root.get("counts");
    wanted.add(counts.get("files").asInt() + " files came");
    wanted.add("They hold " + counts.get("samples").asInt() + " samples");
    for (JsonNode horse : root.get("horse_details")) {
      String name = horse.get("name").asString();
      String id = horse.get("horse").asString();
      wanted.add(name.equalsIgnoreCase(id) ? name : name + " (" + id + ")");
      wanted.add(horse.get("say").asString());
    }
    for (JsonNode question : root.get("questions")) {
      // In print the codes are words, those in brackets too.
      wanted.add(Plain.figures(question.get("question").asString().replaceAll(" \\(.*", "")));
      wanted.add(question.get("question_id").asString());
    }
    for (JsonNode lot : root.get("lots")) {
      wanted.add(lot.get("lot").asString());
    }
    for (JsonNode outcome : root.get("outcomes")) {
      wanted.add(outcome.get("file").asString());
    }
    for (JsonNode table : root.get("tables")) {
      wanted.add(table.get("name").asString());
      wanted.add(table.get("sha256").asString().substring(0, 12));
    }
    for (JsonNode caution : root.get("cautions")) {
      wanted.add(caution.asString());
    }
    return wanted.stream().filter(w -> !w.isBlank()).distinct().toList();
  }

  @Test
  void bothReadersFindWhatTheJsonSays() throws IOException {
    List<String> wanted = wanted();
    assertTrue(wanted.size() > 200, wanted.size() + " texts looked for");

    for (Map.Entry<String, String> reading : readings(Demo.file("summary.pdf")).entrySet()) {
      List<String> missing =
          wanted.stream().filter(w -> !reading.getValue().contains(plain(w))).toList();
      assertEquals(List.of(), missing, reading.getKey());
    }
  }

  /** Kilograms of each portion of a horse stand in one line, in the order of its items. */
  @Test
  void bothReadersFindThePortions() throws IOException {
    Map<String, String> readings = readings(Demo.file("summary.pdf"));
    int looked = 0;
    for (JsonNode horse : json().get("horse_details")) {
      if (horse.get("vet_first").asBoolean() || !horse.get("after").isObject()) {
        continue;
      }
      for (JsonNode portion : horse.get("after").get("portions")) {
        double kg = portion.get("kg").asDouble();
        if (kg >= 1 && kg == Math.rint(kg * 10) / 10) {
          looked++;
          String line = plain(portion.get("item").asString());
          String amount = kg == Math.rint(kg) ? String.valueOf((long) kg) : String.valueOf(kg);
          for (Map.Entry<String, String> reading : readings.entrySet()) {
            assertTrue(
                reading
                    .getValue()
                    .matches(
                        "(?s).*"
                            + java.util.regex.Pattern.quote(line)
                            + "\\)?.{0,60}?"
                            + java.util.regex.Pattern.quote(amount)
                            + ".*"),
                reading.getKey() + ": " + horse.get("horse").asString() + " " + line + " " + kg);
          }
        }
      }
    }
    assertTrue(looked > 30, looked + " portions");
  }

  @Test
  void everyFontIsEmbeddedInEveryPrintedFile() throws IOException {
    List<Path> printed = new ArrayList<>(List.of(Demo.file("summary.pdf")));
    Demo.files("sheets").stream().filter(f -> f.toString().endsWith(".pdf")).forEach(printed::add);
    assertTrue(printed.size() > 5);
    for (Path file : printed) {
      try (PDDocument document = Loader.loadPDF(file.toFile())) {
        int fonts = 0;
        for (PDPage page : document.getPages()) {
          for (COSName name : page.getResources().getFontNames()) {
            PDFont font = page.getResources().getFont(name);
            fonts++;
            assertTrue(font.isEmbedded(), file.getFileName() + ": " + font.getName());
          }
        }
        assertTrue(fonts > 0, file.toString());
      }
    }
  }

  @Test
  void bothReadersCountTheSamePages() throws IOException {
    Path file = Demo.file("summary.pdf");
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      assertTrue(
          said("pdfinfo", file.toString())
              .matches("(?s).*Pages: +" + document.getNumberOfPages() + "\\n.*"));
    }
  }
}
