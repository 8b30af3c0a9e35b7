package rickyard.report;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Reads a page as a browser would. */
final class PageText {
  private PageText() {}

  static Document page(String html) {
    return Jsoup.parse(html);
  }

  /** The text of the details of this horse. */
  static String section(String html, String horse) {
    for (Element details : page(html).select("details.horse")) {
      if (details.select("summary strong").text().equals(horse)) {
        return details.text();
      }
    }
    throw new AssertionError("no horse " + horse);
  }
}
