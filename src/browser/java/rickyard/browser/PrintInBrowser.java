package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The summary on paper, as the browser prints it. */
class PrintInBrowser {
  private static final double POINTS = 72.0;

  @ParameterizedTest
  @CsvSource({"a4,8.27,11.69", "letter,8.5,11"})
  void printsAllSectionsWithinTheSheet(String name, double width, double height)
      throws IOException {
    try (Chromium browser = Chromium.withScript()) {
      browser.go(Demo.file("summary.html"));
      byte[] pdf = browser.printed(width, height);
      Files.createDirectories(Path.of("target/browser"));
      Files.write(Path.of("target/browser/printed-" + name + ".pdf"), pdf);

      try (PDDocument document = Loader.loadPDF(pdf)) {
        Outside outside = new Outside(width * POINTS);
        String text = outside.getText(document);
        assertEquals("", outside.found.toString());
        for (String heading :
            List.of("Calls", "What changed", "Horses", "The lots together", "What arrived")) {
          assertTrue(text.contains(heading), heading);
        }
        assertFalse(text.contains("Print the calls alone"), "tools are not printed");
        for (String phone :
            browser.texts(
                "return Array.from(document.querySelectorAll('.phone')).map(e => e.textContent)")) {
          assertTrue(text.contains(phone), phone);
        }
      }
    }
  }

  @Test
  void theCallsAloneAreAFewSheetsAndHoldNothingElse() throws IOException {
    try (Chromium browser = Chromium.withScript()) {
      browser.go(Demo.file("summary.html"));
      browser.ask("document.body.classList.add('calls-alone')");
      byte[] pdf = browser.printed(8.27, 11.69);
      Files.createDirectories(Path.of("target/browser"));
      Files.write(Path.of("target/browser/calls-alone.pdf"), pdf);

      try (PDDocument document = Loader.loadPDF(pdf)) {
        String text = new PDFTextStripper().getText(document);
        assertTrue(document.getNumberOfPages() <= 5, document.getNumberOfPages() + " pages");
        assertTrue(text.contains("Outcome and time"), text);
        assertFalse(text.contains("What arrived"));
      }
    }
  }

  /** Letters that stand over the edge of the sheet. */
  private static final class Outside extends PDFTextStripper {
    private final double width;
    private final StringBuilder found = new StringBuilder();

    private Outside(double width) throws IOException {
      this.width = width;
    }

    @Override
    protected void writeString(String text, List<TextPosition> places) throws IOException {
      for (TextPosition place : places) {
        if (place.getXDirAdj() < 0 || place.getXDirAdj() + place.getWidthDirAdj() > width) {
          found.append(getCurrentPageNo()).append(": ").append(text).append('\n');
          break;
        }
      }
      super.writeString(text, places);
    }
  }
}
