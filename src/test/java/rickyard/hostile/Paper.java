package rickyard.hostile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The reports that hostile files carry: each for a lot of its own that is far too rich in sugar and
 * starch. The lie that some of them hide is a low figure.
 */
final class Paper {
  /** What the page shows, % DM: far above every limit. */
  static final String WSC = "15.8";

  static final String STARCH = "4.6";

  /** What must never be read. */
  static final String LIE_WSC = "3.3";

  static final String LIE_STARCH = "0.3";

  /** All lots of hostile reports begin so. */
  static final String PREFIX = "HX";

  private final Random random = new Random(20260316);
  private final List<String> lots = new ArrayList<>();

  /** A lot that no other report names, far from every other name. */
  String lot() {
    StringBuilder name = new StringBuilder(PREFIX);
    for (int letter = 0; letter < 7; letter++) {
      name.append((char) ('A' + random.nextInt(26)));
    }
    lots.add(name.toString());
    return name.toString();
  }

  /** The lots named so far. */
  List<String> lots() {
    return List.copyOf(lots);
  }

  /** An honest report as a table. */
  String csv() {
    return csv(WSC, STARCH);
  }

  byte[] csvBytes() {
    return csv().getBytes(StandardCharsets.UTF_8);
  }

  /** A report whose two figures are given. */
  String csv(String wsc, String starch) {
    return csv(lot(), wsc, starch);
  }

  static String csv(String lot, String wsc, String starch) {
    String head = "Report,Status,Reported,Sample,Lot,Material,Sampled,Analyte,Result,Unit,Basis\n";
    String each = "R-" + lot + ",final,2026-03-12,1," + lot + ",grass hay,2026-03-02,";
    return head
        + each
        + "Dry matter,89.0,%,as received\n"
        + each
        + "Water soluble carbohydrates,"
        + wsc
        + ",%,dry matter\n"
        + each
        + "Starch,"
        + starch
        + ",%,dry matter\n"
        + each
        + "Crude protein,9.9,%,dry matter\n"
        + each
        + "Neutral detergent fibre,55.3,%,dry matter\n";
  }

  /** The lines of an honest report: name and figure, for pages. */
  List<List<String>> lines() {
    String lot = lot();
    return List.of(
        List.of("Report no.:", "R-" + lot),
        List.of("Status:", "final"),
        List.of("Date reported:", "2026-03-12"),
        List.of("Lot:", lot),
        List.of("Material:", "grass hay"),
        List.of("Analyte", "% DM"),
        List.of("Water soluble carbohydrates", WSC),
        List.of("Starch", STARCH),
        List.of("Crude protein", "9.9"),
        List.of("Neutral detergent fibre", "55.3"));
  }

  /** An honest report as a web page's table, with something before, within and behind it. */
  String html(String head, String row, String after) {
    StringBuilder out = new StringBuilder("<!DOCTYPE html><html><head>" + head + "</head><body>");
    out.append("<table>");
    lines()
        .forEach(l -> out.append("<tr><td>" + l.get(0) + "</td><td>" + l.get(1) + "</td></tr>\n"));
    return out + row + "</table>" + after + "</body></html>";
  }
}
