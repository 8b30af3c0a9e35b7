package rickyard.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import rickyard.core.advice.DietLine;

class PicturesTest {
  private static final Pattern X = Pattern.compile("M(-?[0-9.]+) ");

  @Test
  void theDotStandsLeftOfALimitThatItIsUnder() {
    Document under = picture(8.36, 1.0, 10);
    Document over = picture(11.2, 1.0, 10);
    assertTrue(dot(under) < line(under, "limit"));
    assertTrue(dot(over) > line(over, "limit"));
  }

  @Test
  void titleAndDescriptionSayWhatIsDrawn() {
    Document picture = picture(8.36, 1.0, 10);
    assertEquals("WSC + starch of L1: 8.36 ± 1", picture.select("title").text());
    assertEquals("Limit line at 10 % of dry matter for ID.", picture.select("desc").text());
    assertEquals("p1t p1d", picture.select("svg").attr("aria-labelledby"));
  }

  @Test
  void everythingStaysInTheFrameWhateverTheNumbers() {
    long seed = 11;
    Random random = new Random(seed);
    for (int i = 0; i < 5_000; i++) {
      double value = random.nextDouble() * StrictMath.pow(10, random.nextInt(9) - 4);
      double u = random.nextDouble() * value * 2;
      double limit = random.nextDouble() * StrictMath.pow(10, random.nextInt(9) - 4);
      Document picture = picture(value, u, limit);
      Matcher x = X.matcher(picture.select("path").outerHtml());
      while (x.find()) {
        double at = Double.parseDouble(x.group(1));
        assertTrue(at >= 0 && at <= 350, "seed " + seed + ": " + at);
      }
      int ticks = picture.select("text.tick").size();
      assertTrue(ticks >= 2 && ticks <= 9, "seed " + seed + ": " + ticks + " ticks");
    }
  }

  @Test
  void anUnknownOrEndlessUncertaintyDrawsTheDotAlone() {
    assertFalse(LimitPicture.of("p1", "t", 5, null, false, "%", List.of()).contains("NaN"));
    String endless = LimitPicture.of("p1", "t", 5, Double.POSITIVE_INFINITY, false, "%", List.of());
    assertFalse(endless.contains("NaN"));
    assertTrue(endless.contains("circle"));
    assertTrue(LimitPicture.of("p1", "t", 0, 0.0, false, "%", List.of()).contains("circle"));
  }

  @Test
  void theBarShowsFloorAndCeilingWhereTheyLie() {
    String both = NeedBar.of(line(2.1, 0.91, 2.5));
    assertTrue(both.contains("floor") && both.contains("ceiling"), both);
    assertFalse(NeedBar.of(line(12.0, 10.0, 900.0)).contains("ceiling"), "too far to the right");
    assertEquals("", NeedBar.of(line(null, 10.0, null)));
    assertEquals("", NeedBar.of(line(3.0, null, null)));
    assertTrue(NeedBar.of(line(3.0, null, 5.0)).contains("ceiling"));
  }

  private static DietLine line(
      @org.jspecify.annotations.Nullable Double supply,
      @org.jspecify.annotations.Nullable Double floor,
      @org.jspecify.annotations.Nullable Double ceiling) {
    return new DietLine("SE", "mg", supply, null, null, floor, ceiling, "meets", "reported");
  }

  @Test
  void aValueThatIsOnlyTheLeastHasAnArrowThatLeavesTheScale() {
    List<LimitPicture.Mark> marks = List.of(new LimitPicture.Mark(10, "ID"));
    String known = LimitPicture.of("p1", "t", 7, 0.5, false, "%", marks);
    String least = LimitPicture.of("p1", "t", 7, 0.5, true, "%", marks);
    assertTrue(least.length() > known.length());
    assertTrue(least.contains("H342"), least);
    assertFalse(known.contains("H342"), known);
  }

  private static Document picture(double value, double u, double limit) {
    return Jsoup.parse(
        LimitPicture.of(
            "p1",
            "WSC + starch of L1: 8.36 ± 1",
            value,
            u,
            false,
            "% of dry matter",
            List.of(new LimitPicture.Mark(limit, "ID"))));
  }

  private static double dot(Document picture) {
    return Double.parseDouble(picture.select("circle").attr("cx"));
  }

  private static double line(Document picture, String style) {
    Matcher x = X.matcher(picture.select("path." + style).attr("d"));
    assertTrue(x.find());
    return Double.parseDouble(x.group(1));
  }
}
