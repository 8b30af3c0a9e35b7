package rickyard.intake.grid.pdf;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rickyard.intake.grid.CellText;

/**
 * Settles characters that stand on top of one another: the same one twice is one; an accent joins
 * its letter; two different ones cannot be read by anybody and become unknown.
 */
final class Overdrawn {
  private static final String ACCENTS = "`´^~¨¯˘˙˚¸˝ˇ";
  private static final String COMBINING =
      "\u0300\u0301\u0302\u0303\u0308\u0304\u0306\u0307\u030A\u0327\u030B\u030C";

  private Overdrawn() {}

  static List<Glyph> settled(List<Glyph> glyphs, Set<String> cautions) {
    List<Glyph> kept = new ArrayList<>();
    for (Glyph glyph : glyphs) {
      int last = kept.size() - 1;
      int same = twin(kept, glyph);
      if (same >= 0) {
        cautions.add("overdrawn-text");
      } else if (last < 0 || !collides(kept.get(last), glyph)) {
        kept.add(glyph);
      } else {
        kept.set(last, joined(kept.get(last), glyph, cautions));
      }
    }
    return kept;
  }

  private static int twin(List<Glyph> kept, Glyph glyph) {
    for (int at = kept.size() - 1; at >= Math.max(0, kept.size() - 3); at--) {
      Glyph other = kept.get(at);
      if (other.text().equals(glyph.text())
          && Math.abs(other.left() - glyph.left()) < 0.35 * glyph.width()
          && Math.abs(other.base() - glyph.base()) < 0.2 * glyph.size()) {
        return at;
      }
    }
    return -1;
  }

  private static boolean collides(Glyph one, Glyph other) {
    double common = Math.min(one.right(), other.right()) - other.left();
    boolean sameLine = Math.abs(one.base() - other.base()) < 0.3 * other.size();
    return sameLine && common > 0.45 * Math.min(one.width(), other.width());
  }

  private static Glyph joined(Glyph one, Glyph other, Set<String> cautions) {
    if (one.text().equals("_") || other.text().equals("_")) {
      return one.text().equals("_") ? other : one;
    }
    int accent = ACCENTS.indexOf(other.text());
    int accentBefore = ACCENTS.indexOf(one.text());
    if (accent >= 0 && other.text().length() == 1) {
      return spelled(one, other, accented(one.text(), COMBINING.charAt(accent)));
    }
    if (accentBefore >= 0 && one.text().length() == 1) {
      return spelled(one, other, accented(other.text(), COMBINING.charAt(accentBefore)));
    }
    if (Character.getType(other.text().codePointAt(0)) == Character.NON_SPACING_MARK) {
      return spelled(
          one, other, Normalizer.normalize(one.text() + other.text(), Normalizer.Form.NFC));
    }
    cautions.add("overdrawn-text");
    return spelled(one, other, String.valueOf(CellText.UNKNOWN));
  }

  private static String accented(String letter, char mark) {
    return Normalizer.normalize(letter + mark, Normalizer.Form.NFC);
  }

  private static Glyph spelled(Glyph one, Glyph other, String text) {
    return new Glyph(
        text,
        Math.min(one.left(), other.left()),
        Math.max(one.right(), other.right()),
        one.base(),
        Math.max(one.size(), other.size()),
        one.space(),
        one.order());
  }
}
