package rickyard.intake.grid;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/** HTML as rows: each line of text one cell, each table row its cells by column, spans counted. */
final class HtmlTables {
  private static final Set<String> BLOCKS =
      Set.of(
          "p",
          "div",
          "h1",
          "h2",
          "h3",
          "h4",
          "h5",
          "h6",
          "li",
          "ul",
          "ol",
          "dl",
          "dt",
          "dd",
          "section",
          "article",
          "header",
          "footer",
          "main",
          "body",
          "blockquote",
          "address",
          "caption",
          "figure",
          "figcaption",
          "form",
          "fieldset",
          "center",
          "tbody",
          "thead",
          "tfoot",
          "tr",
          "td",
          "th",
          "table",
          "br",
          "hr",
          "pre");
  private static final Set<String> UNSEEN =
      Set.of("script", "style", "template", "noscript", "head", "title", "object", "iframe");

  private static final String WHITE_WORD =
      "(?:white|#fff(?:fff)?|rgb\\(255,255,255\\)|transparent)(?:!important)?(?:;|$)";
  private static final Pattern WHITE = Pattern.compile("(?:^|;)color:" + WHITE_WORD);
  private static final Pattern GROUND_WHITE =
      Pattern.compile("(?:^|;)background(?:-color)?:" + WHITE_WORD);

  private final ReadLimits limits;
  private final List<Row> rows = new ArrayList<>();
  private final Set<String> cautions = new TreeSet<>();
  private final StringBuilder line = new StringBuilder();
  private HiddenStyles styles = HiddenStyles.of(new Document(""));
  private int fields;

  HtmlTables(ReadLimits limits) {
    this.limits = limits;
  }

  Opened open(byte[] bytes) {
    Document document;
    try {
      document = Jsoup.parse(new ByteArrayInputStream(bytes), null, "");
    } catch (IOException broken) {
      throw new UnreadableException("damaged", "The web page is damaged; ask for it again.");
    }
    styles = HiddenStyles.of(document);
    read(document.body(), 0);
    endLine();
    if (rows.isEmpty()) {
      throw new UnreadableException("no-text", "The web page holds no text; ask for it again.");
    }
    Page page = new Page(1, "", rows);
    return new Opened.Cells(
        ContentKind.HTML.label(), new Grid(Grid.Kind.TABLE, List.of(page), List.copyOf(cautions)));
  }

  private void read(Node node, int level) {
    if (level > 500) {
      throw new UnreadableException("too-deep", "The web page is nested too deeply to be read.");
    }
    if (node instanceof TextNode text) {
      line.append(text.getWholeText().replace('\n', ' '));
    } else if (node instanceof Element element && isSeen(element)) {
      boolean block = BLOCKS.contains(element.normalName());
      if (block) {
        endLine();
      }
      if (element.normalName().equals("table") && element.select("table").size() == 1) {
        table(element);
      } else if (element.normalName().equals("dl") && element.select("dl").size() == 1) {
        list(element);
      } else {
        element.childNodes().forEach(child -> read(child, level + 1));
      }
      if (block) {
        endLine();
      }
    }
  }

  private void endLine() {
    String text = CellText.plain(line.toString());
    line.setLength(0);
    if (!text.isEmpty()) {
      addRow(List.of(cell(text, 0, 1)));
    }
  }

  private void table(Element table) {
    // Columns still taken by a cell that reaches down from an earlier row: column to rows left.
    TreeMap<Integer, Integer> taken = new TreeMap<>();
    for (Element tr : table.select("tr")) {
      if (!isSeen(tr)) {
        continue;
      }
      List<Cell> cells = new ArrayList<>();
      TreeMap<Integer, Integer> next = new TreeMap<>();
      // A cell that reaches down is a cell of every row it reaches.
      count(taken.size());
      taken.forEach((column, left) -> keep(next, column, left - 1));
      int column = 0;
      for (Element td : tr.children()) {
        while (taken.containsKey(column)) {
          column++;
        }
        int span = span(td, "colspan");
        int down = span(td, "rowspan");
        for (int c = column; c < column + span; c++) {
          keep(next, c, down - 1);
        }
        String text = isSeen(td) ? CellText.plain(visible(td)) : "";
        if (!text.isEmpty()) {
          cells.add(cell(text, column, span));
        }
        column += span;
        count(span);
      }
      taken = next;
      addRow(cells);
    }
  }

  /** A list of terms with what is said of each: a row for every term. */
  private void list(Element list) {
    List<Cell> cells = new ArrayList<>();
    for (Element part : list.select("dt, dd")) {
      if (part.normalName().equals("dt") && cells.stream().anyMatch(c -> c.column() > 1)) {
        addRow(cells);
        cells = new ArrayList<>();
      }
      String text = isSeen(part) ? CellText.plain(visible(part)) : "";
      if (!text.isEmpty()) {
        int column = part.normalName().equals("dt") ? 0 : Math.max(1, cells.size());
        boolean second = column == 0 && !cells.isEmpty();
        if (second) {
          addRow(cells);
          cells = new ArrayList<>();
        }
        cells.add(cell(text, column, 1));
      }
    }
    addRow(cells);
  }

  private static void keep(Map<Integer, Integer> taken, int column, int rows) {
    if (rows > 0) {
      taken.put(column, rows);
    }
  }

  /** Text of a cell, line breaks as spaces, unseen parts left out. */
  private String visible(Element cell) {
    StringBuilder out = new StringBuilder();
    for (Node child : cell.childNodes()) {
      if (child instanceof TextNode text) {
        out.append(text.getWholeText());
      } else if (child instanceof Element element && isSeen(element)) {
        boolean block = BLOCKS.contains(element.normalName());
        out.append(block ? " " : "").append(visible(element)).append(block ? " " : "");
      }
    }
    return out.toString();
  }

  private boolean isSeen(Element element) {
    if (UNSEEN.contains(element.normalName())) {
      return false;
    }
    String style = element.attr("style").toLowerCase(Locale.ROOT).replaceAll("\\s", "");
    boolean hidden =
        element.hasAttr("hidden")
            || styles.hide(element)
            || style.contains("display:none")
            || style.contains("visibility:hidden")
            || style.matches("(?s).*font-size:0(\\.0*)?(px|pt|em|%|;|$).*")
            || style.matches("(?s).*opacity:0(\\.0*)?(;|$).*")
            || (isWhite(element, style) && !isOnColour(element));
    if (hidden && element.hasText()) {
      cautions.add("hidden-text");
    }
    return !hidden;
  }

  private static boolean isWhite(Element element, String style) {
    return WHITE.matcher(style).find()
        || WHITE.matcher(";color:" + element.attr("color").toLowerCase(Locale.ROOT)).find();
  }

  /** Whether the element or one around it has a ground of its own, white for certain or not. */
  private static boolean isOnColour(Element element) {
    for (Element each = element; each != null; each = each.parent()) {
      String style = each.attr("style").toLowerCase(Locale.ROOT).replaceAll("\\s", "");
      String ground = each.attr("bgcolor").toLowerCase(Locale.ROOT);
      boolean styled = style.contains("background");
      if (styled || !ground.isBlank()) {
        return !GROUND_WHITE.matcher(style).find() && !ground.matches("white|#?fff(fff)?");
      }
    }
    return false;
  }

  private static int span(Element cell, String attribute) {
    try {
      return Math.max(1, Math.min(1000, Integer.parseInt(cell.attr(attribute).strip())));
    } catch (NumberFormatException none) {
      return 1;
    }
  }

  private Cell cell(String text, int column, int span) {
    if (text.length() > limits.cellChars()) {
      throw new UnreadableException(
          "cell-too-long",
          "One cell holds more than " + limits.cellChars() + " characters; this is no report.");
    }
    return new Cell(text, 100.0 * column, 100.0 * (column + span - 1) + 99, column + 1);
  }

  private void addRow(List<Cell> cells) {
    count(1);
    if (!cells.isEmpty()) {
      rows.add(new Row(rows.size() + 1, rows.size() + 1, cells));
    }
  }

  private void count(int more) {
    fields += more;
    if (fields > limits.cells()) {
      throw new UnreadableException(
          "too-many-cells", "The web page has more than " + limits.cells() + " cells.");
    }
  }
}
