package rickyard.intake.grid;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Selector;

/**
 * What a web page's own styles keep from being seen: not shown at all, of no size, clear, or moved
 * off the page. Styles that lie elsewhere are not fetched.
 */
final class HiddenStyles {
  private static final int MOST_RULES = 100;
  private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
  private static final String END = "(\\.0*)?(px|pt|em|rem|%)?(!important)?(;|$)";
  private static final Pattern HIDES =
      Pattern.compile(
          "(^|;)(display:none|visibility:(hidden|collapse)"
              + "|(font-size|opacity):0"
              + END
              + "|(text-indent|left|top|right|bottom|margin-left|margin-top):-[0-9]{3,}"
              + "|transform:(scale[xy]?\\(0|translate[xy]?\\(-[0-9]{3,})"
              + "|clip:rect\\(0|clip-path:(inset\\((50|100)%|circle\\(0))");

  private static final Pattern FLAT =
      Pattern.compile("(^|;)(height|width|max-height|max-width):0" + END);

  private final Set<Element> hidden = Collections.newSetFromMap(new IdentityHashMap<>());

  private HiddenStyles() {}

  /** Finds what the rules of a page hide. */
  static HiddenStyles of(Document page) {
    HiddenStyles styles = new HiddenStyles();
    int rules = 0;
    for (Element sheet : page.select("style")) {
      Matcher rule = RULE.matcher(sheet.data().replaceAll("(?s)/\\*.*?\\*/", ""));
      while (rule.find()) {
        if (hides(rule.group(2)) && ++rules > MOST_RULES) {
          throw new UnreadableException(
              "too-complex", "The web page hides more than is followed; ask for another file.");
        }
        if (hides(rule.group(2))) {
          styles.add(page, rule.group(1).strip());
        }
      }
    }
    return styles;
  }

  private void add(Document page, String selector) {
    try {
      hidden.addAll(page.select(selector));
    } catch (Selector.SelectorParseException | IllegalArgumentException notUnderstood) {
      // Rules for printing, pointing and the like select nothing that is read here.
    }
  }

  /** Whether an element's own declarations hide it. */
  static boolean hides(String declarations) {
    String bare = bare(declarations);
    return HIDES.matcher(bare).find()
        || (bare.contains("overflow:hidden") && FLAT.matcher(bare).find());
  }

  boolean hide(Element element) {
    return hidden.contains(element) || hides(element.attr("style"));
  }

  private static String bare(String declarations) {
    return declarations.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
  }
}
