package rickyard.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietLine;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.PortionLine;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.LotRow;

/** A horse's diet before and after: totals, limits, what it is made of, what it must supply. */
public final class DietPages {
  private static final String NOTHING = "–";
  private static final String MEETS = "meets";

  /** A total before and after. */
  public record Compared(String what, String before, String after) {}

  /** An item of the diet; {@code other} is the amount after, or else before, in the other unit. */
  public record Portion(
      String item,
      String anchor,
      String role,
      String before,
      String after,
      String other,
      String dm,
      String nsc,
      String share) {
    Portion withNsc(String content) {
      return new Portion(item, anchor, role, before, after, other, dm, content, share);
    }
  }

  /** A nutrient against its floor and ceiling. */
  public record Need(
      String nutrient,
      String unit,
      String before,
      String after,
      String floor,
      String percent,
      String ceiling,
      String status,
      String origin,
      String bar) {}

  private DietPages() {}

  static List<Compared> compared(HorseAdvice horse, Mass mass) {
    DietSummary before = horse.before();
    DietSummary after = horse.after();
    if (before == null && after == null) {
      return List.of();
    }
    List<Compared> rows = new ArrayList<>();
    if (!horse.vetFirst()) {
      rows.add(
          new Compared(
              "Fed a day, as fed",
              before == null ? NOTHING : mass.words(before.asFedKg()),
              after == null ? NOTHING : mass.words(after.asFedKg())));
    }
    rows.add(
        new Compared("Dry matter", dryMatter(before, horse, mass), dryMatter(after, horse, mass)));
    rows.add(new Compared("WSC + starch, % of dry matter", nsc(before), nsc(after)));
    rows.add(
        new Compared(
            "ESC + starch, % of dry matter",
            before == null ? NOTHING : Shown.number(before.nscEscPercent()),
            after == null ? NOTHING : Shown.number(after.nscEscPercent())));
    rows.add(new Compared("WSC + starch a day", grams(before), grams(after)));
    rows.add(new Compared("Against its limits", verdict(before), verdict(after)));
    return rows;
  }

  private static String dryMatter(@Nullable DietSummary diet, HorseAdvice horse, Mass mass) {
    if (diet == null) {
      return NOTHING;
    }
    String percent = Shown.number(Double.valueOf(diet.dmPercentBw())) + " % of body weight";
    return horse.vetFirst() ? percent : mass.words(diet.dmKg()) + ", " + percent;
  }

  private static String nsc(@Nullable DietSummary diet) {
    return diet == null ? NOTHING : Shown.withUncertainty(diet.nscWscPercent(), diet.nscWscU());
  }

  private static String grams(@Nullable DietSummary diet) {
    return diet == null
        ? NOTHING
        : diet.nscGrams() == null ? Shown.UNKNOWN : Shown.number(diet.nscGrams()) + " g";
  }

  private static String verdict(@Nullable DietSummary diet) {
    return diet == null ? NOTHING : Words.of("verdict", diet.verdict());
  }

  static List<Blocks.Block> limits(HorseAdvice horse, String name, Anchors anchors) {
    DietSummary after = horse.after();
    if (after == null) {
      return List.of();
    }
    List<Blocks.Held> limits =
        after.limits().stream().map(line -> held(line, horse.before())).toList();
    return Blocks.of(limits, name, anchors);
  }

  private static Blocks.Held held(LimitLine line, @Nullable DietSummary before) {
    String was =
        before == null
            ? NOTHING
            : before.limits().stream()
                .filter(other -> other.limitId().equals(line.limitId()))
                .findFirst()
                .map(LimitLine::verdict)
                .orElse(NOTHING);
    return new Blocks.Held(
        line.subject(),
        line.group(),
        line.quantity(),
        line.limit(),
        line.unit(),
        isKnown(line) ? line.value() : null,
        line.low(),
        line.high(),
        isKnown(line) ? line.u() : null,
        line.pOver(),
        was,
        line.verdict(),
        line.reason());
  }

  /** The known part alone is no value of a diet. */
  private static boolean isKnown(LimitLine line) {
    return !line.verdict().equals("cannot-judge") || line.high() != null;
  }

  /** Items of both diets, those fed now first. */
  static List<Portion> portions(
      HorseAdvice horse, Map<String, LotRow> lots, Mass mass, Anchors anchors) {
    Map<String, PortionLine> before = byItem(horse.before());
    Map<String, PortionLine> after = byItem(horse.after());
    Set<String> keys = new LinkedHashSet<>(after.keySet());
    keys.addAll(before.keySet());
    double nsc = totalNsc(after);
    List<Portion> portions = new ArrayList<>();
    for (String key : keys) {
      Portion portion =
          portion(before.get(key), after.get(key), nsc, horse.vetFirst(), mass, anchors);
      PortionLine was = before.get(key);
      portions.add(
          after.containsKey(key) || was == null ? portion : portion.withNsc(nsc(was, lots)));
    }
    return portions;
  }

  /** What is fed no longer is told by the lot's figure of today, if it has one. */
  private static String nsc(PortionLine was, Map<String, LotRow> lots) {
    LotRow lot = lots.get(was.item());
    return lot == null || lot.nscWsc() == null
        ? Shown.withUncertainty(was.nscPercent(), was.nscU())
        : Shown.number(lot.nscWsc());
  }

  private static Map<String, PortionLine> byItem(@Nullable DietSummary diet) {
    Map<String, PortionLine> portions = new LinkedHashMap<>();
    if (diet != null) {
      int i = 0;
      for (PortionLine portion : diet.portions()) {
        String key = portion.item() + "\n" + portion.batch() + "\n" + portion.asForage();
        portions.put(portions.containsKey(key) ? key + "\n" + i : key, portion);
        i++;
      }
    }
    return portions;
  }

  /** Dry matter times content over all items; not a number where one is unknown. */
  private static double totalNsc(Map<String, PortionLine> portions) {
    double total = 0;
    for (PortionLine portion : portions.values()) {
      Double content = portion.nscPercent();
      total += content == null ? Double.NaN : portion.dmKg() * content;
    }
    return total;
  }

  private static Portion portion(
      @Nullable PortionLine before,
      @Nullable PortionLine after,
      double nsc,
      boolean vetFirst,
      Mass mass,
      Anchors anchors) {
    PortionLine any = after == null ? before : after;
    if (any == null) {
      throw new IllegalArgumentException("a portion stands in one diet at least");
    }
    Double content = after == null ? null : after.nscPercent();
    boolean shared = after != null && content != null && nsc > 0;
    return new Portion(
        item(any),
        anchors.findLot(any.item()),
        Harmless.line(any.role()).replace('-', ' '),
        amount(before, vetFirst, mass),
        amount(after, vetFirst, mass),
        vetFirst ? "" : mass.other().words(any.kg()),
        after == null || vetFirst ? NOTHING : mass.digits(after.dmKg()),
        Shown.withUncertainty(any.nscPercent(), any.nscU()),
        shared && after != null && content != null
            ? Shown.share(after.dmKg() * content, nsc)
            : after == null ? NOTHING : Shown.UNKNOWN);
  }

  private static String item(PortionLine portion) {
    String id = Harmless.line(portion.item());
    String name = Harmless.line(portion.name());
    String batch = portion.batch().isBlank() ? "" : ", batch " + Harmless.line(portion.batch());
    String how = portion.prepared().equals("dry") ? "" : ", " + Harmless.line(portion.prepared());
    return (name.isEmpty() || name.equals(id) ? id : name + " (" + id + ")") + batch + how;
  }

  private static String amount(@Nullable PortionLine portion, boolean vetFirst, Mass mass) {
    if (vetFirst) {
      return "vet first";
    }
    return portion == null ? NOTHING : mass.digits(portion.kg());
  }

  /**
   * The nutrients as rows.
   *
   * @param open only those that are not plainly met; {@link #met} has the others
   */
  static List<Need> needs(HorseAdvice horse, boolean open) {
    DietSummary after = horse.after();
    if (after == null || horse.vetFirst()) {
      return List.of();
    }
    return after.lines().stream()
        .filter(line -> !(open && line.status().equals(MEETS)))
        .map(line -> need(line, horse.before()))
        .toList();
  }

  /** The nutrients that are met and under any ceiling, in words; empty where none is. */
  static String met(HorseAdvice horse) {
    DietSummary after = horse.after();
    if (after == null || horse.vetFirst()) {
      return "";
    }
    List<String> met =
        after.lines().stream()
            .filter(line -> line.status().equals(MEETS))
            .map(DietPages::met)
            .toList();
    return met.isEmpty()
        ? ""
        : "Met a day, and under any ceiling; their ranges and what they were before stand in"
            + " diets.csv: "
            + String.join("; ", met)
            + ".";
  }

  private static String met(DietLine line) {
    String unit = Words.of("unit", line.unit());
    String supply =
        Words.of("nutrient", line.nutrient())
            + " "
            + (Shown.number(line.supply()) + " " + unit).strip();
    Double percent = line.percentOfRequirement();
    if (line.requirement() == null) {
      return supply;
    }
    return supply
        + " of "
        + Shown.number(line.requirement())
        + (percent == null ? "" : " (" + Shown.share(percent, 100) + ")");
  }

  /** Most forage passes the extrapolated ceiling of potassium: that is no reason for a status. */
  private static String ceiling(DietLine line) {
    Double most = line.maxTolerable();
    if (most == null) {
      return NOTHING;
    }
    boolean passed = line.supply() != null && line.supply() > most;
    boolean alarms = line.status().equals("above-ceiling");
    return Shown.number(most) + (passed && !alarms ? " (passed, no alarm)" : "");
  }

  /** Not all that is fed has a value: what is known is the least. */
  private static boolean isOpen(DietLine line) {
    return line.status().equals("unknown");
  }

  private static String least(DietLine line) {
    return isOpen(line) && line.supply() != null ? "at least " : "";
  }

  private static Need need(DietLine line, @Nullable DietSummary before) {
    String was =
        before == null
            ? NOTHING
            : before.lines().stream()
                .filter(other -> other.nutrient().equals(line.nutrient()))
                .findFirst()
                .map(other -> Shown.number(other.supply()))
                .orElse(NOTHING);
    Double percent = line.percentOfRequirement();
    return new Need(
        Words.of("nutrient", line.nutrient()),
        Words.of("unit", line.unit()),
        was,
        least(line) + Shown.number(line.supply()),
        line.requirement() == null ? NOTHING : Shown.number(line.requirement()),
        percent == null ? NOTHING : least(line) + Shown.share(percent, 100),
        ceiling(line),
        Words.of("status", line.status()),
        isOpen(line) ? "" : Words.of("origin", line.origin()),
        NeedBar.of(line));
  }
}
