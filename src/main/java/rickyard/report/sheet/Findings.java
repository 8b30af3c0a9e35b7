package rickyard.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.PortionLine;
import rickyard.core.advice.ProposalItem;
import rickyard.report.text.Shown;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.VerdictRow;

/** What was measured of a horse's forage, and what it means for the horse. */
final class Findings {
  private static final String NSC = "nsc_wsc";
  private static final String PERCENT = "% DM";

  private final HorseAdvice horse;
  private final Map<String, LotRow> lots;
  private final Contents contents;
  private final Voice voice;

  Findings(HorseAdvice horse, Map<String, LotRow> lots, Contents contents, Voice voice) {
    this.horse = horse;
    this.lots = lots;
    this.contents = contents;
    this.voice = voice;
  }

  static Map<String, LotRow> byLot(MorningView view) {
    Map<String, LotRow> lots = new LinkedHashMap<>();
    view.lots().forEach(l -> lots.putIfAbsent(l.lot(), l));
    return lots;
  }

  /** One sentence a forage, of the quantity that decides. */
  List<String> measured(Course course) {
    Map<String, String> sentences = new LinkedHashMap<>();
    DietSummary after = horse.after();
    if (after != null) {
      after.portions().stream()
          .filter(PortionLine::asForage)
          .forEach(p -> sentences.put(p.item() + " " + p.batch(), measured(p)));
    }
    if (course == Course.CHANGE || course == Course.HOLD) {
      Course.chosen(horse).stream()
          .flatMap(p -> p.items().stream())
          .filter(i -> i.thenKg() > 0 && lots.containsKey(i.item()))
          .forEach(i -> sentences.putIfAbsent(i.item() + " " + i.batch(), measured(i)));
    }
    return new ArrayList<>(sentences.values());
  }

  private String measured(ProposalItem item) {
    return ofLot(
        Optional.ofNullable(lots.get(item.item())).orElseThrow(),
        voice.item(item.item(), item.batch(), item.name(), item.role()));
  }

  private String measured(PortionLine portion) {
    String item = voice.item(portion.item(), portion.batch(), portion.name(), portion.role());
    LotRow lot = lots.get(portion.item());
    if (lot != null) {
      return ofLot(lot, item);
    }
    return portion.nscPercent() == null
        ? sentence("measured.lot-unknown", item, NSC, "", "")
        : sentence(
            "measured.feed",
            item,
            NSC,
            "",
            voice.value(portion.nscPercent(), portion.nscU(), PERCENT));
  }

  private String ofLot(LotRow lot, String item) {
    String quantity = quantity();
    String key = lot.sampledOn().isBlank() ? "measured.lot-no-day" : "measured.lot";
    Optional<VerdictRow> row = row(lot, quantity);
    Optional<AnalysisRow> plain =
        row.isPresent() ? Optional.empty() : contents.find(lot.lot(), quantity);
    if (plain.isPresent()) {
      AnalysisRow figure = plain.get();
      String value =
          Shown.isCensored(figure.value(), figure.low(), figure.high())
              ? voice.say("value.up-to", "value", voice.value(figure.high(), null, PERCENT))
              : voice.value(figure.value(), figure.u(), PERCENT);
      return sentence(key, item, quantity, voice.day(lot.sampledOn()), value);
    }
    if (row.isEmpty()) {
      return sentence(unknown(lot), item, quantity, "", "");
    }
    VerdictRow verdict = row.get();
    String value =
        figure(verdict.value(), verdict.low(), verdict.high(), verdict.u(), verdict.unit());
    return sentence(key, item, quantity, voice.day(lot.sampledOn()), bounded(verdict, value));
  }

  /** Why nothing of a lot counts, where a client should hear of it. */
  private static String unknown(LotRow lot) {
    if (isDisputed(lot)) {
      return "measured.lot-disputed";
    }
    return lot.reason().contains("withdrew") ? "measured.lot-withdrawn" : "measured.lot-unknown";
  }

  private static boolean isDisputed(LotRow lot) {
    return lot.reason().startsWith("two tests of the lot disagree");
  }

  /** Whether two tests of a forage of the horse disagree. */
  boolean isDisputed() {
    DietSummary after = horse.after();
    return after != null
        && after.portions().stream()
            .map(p -> Optional.ofNullable(lots.get(p.item())))
            .anyMatch(lot -> lot.filter(Findings::isDisputed).isPresent());
  }

  /** Less than a limit of detection is no number with an uncertainty. */
  private String figure(
      @Nullable Double value,
      @Nullable Double low,
      @Nullable Double high,
      @Nullable Double u,
      String unit) {
    boolean isCensored =
        value != null
            && low != null
            && high != null
            && value > 0
            && low == 0
            && high >= CENSORED * value;
    return isCensored
        ? voice.say("value.below", "value", voice.value(high, null, unit))
        : voice.value(value, u, unit);
  }

  /** Half a limit of detection stands for what is below it. */
  private static final double CENSORED = 1.99;

  private String bounded(VerdictRow row, String value) {
    boolean isUnder = Shown.isCensored(row.value(), row.low(), row.high());
    if (isUnder) {
      return voice.say("value.up-to", "value", voice.value(row.high(), null, row.unit()));
    }
    return row.high() == null ? voice.say("value.at-least", "value", value) : value;
  }

  private static Optional<VerdictRow> row(LotRow lot, String quantity) {
    return lot.verdicts().stream()
        .filter(v -> v.quantity().equals(quantity) && v.value() != null)
        .filter(v -> v.verdict().equals("cannot-judge") ? v.high() != null : true)
        .findFirst();
  }

  private String sentence(String key, String item, String quantity, String day, String value) {
    return voice
        .texts()
        .say(
            key,
            "item",
            item,
            "quantity",
            voice.texts().word("quantity", quantity),
            "day",
            day,
            "value",
            value);
  }

  /** The quantity of the worst-placed limit; starch and sugar where there is none. */
  private String quantity() {
    LimitLine worst = worst();
    return worst == null ? NSC : worst.quantity();
  }

  private @Nullable LimitLine worst() {
    DietSummary after = horse.after();
    return after == null ? null : after.worst();
  }

  /** What it means for this horse, in one sentence or two. */
  String meaning(Course course) {
    if (course == Course.VET_FIRST) {
      return voice.say("meaning.vet-first");
    }
    if (!horse.problems().isEmpty() || horse.after() == null) {
      return voice.say("meaning.no-diet");
    }
    LimitLine worst = worst();
    return worst == null
        ? voice.say("meaning.no-limit")
        : meaning(
            worst,
            isOfAnother(horse)
                ? "shared"
                : worst.subject().equals("diet") ? ration(course) : worst.subject());
  }

  /** Whether the limit is that of another horse at the same bale. */
  static boolean isOfAnother(HorseAdvice horse) {
    DietSummary after = horse.after();
    LimitLine worst = after == null ? null : after.worst();
    return worst != null
        && worst.reason().startsWith("shared bale ")
        && !worst.group().equals("all")
        && !horse.groups().contains(worst.group());
  }

  /** Which ration the finding is of, where the sheet gives another one. */
  private static String ration(Course course) {
    return switch (course) {
      case HOLD -> "coming";
      case CHANGE -> "present";
      default -> "diet";
    };
  }

  /** What the changed ration comes to; empty where none is told. */
  String then(Course course) {
    if (course != Course.CHANGE && course != Course.HOLD) {
      return "";
    }
    return Course.chosen(horse)
        .flatMap(p -> Optional.ofNullable(p.diet()))
        .flatMap(d -> Optional.ofNullable(d.worst()))
        .map(
            line ->
                voice
                    .texts()
                    .say(
                        line.verdict().equals("clears") ? "meaning.then-clears" : "meaning.then",
                        "quantity",
                        voice.texts().word("quantity", line.quantity()),
                        "value",
                        voice.value(line.value(), line.u(), line.unit()),
                        "chance",
                        voice.chance(line.pOver())))
        .orElse("");
  }

  private String under(LimitLine line, String number) {
    return Shown.isCensored(line.value(), line.low(), line.high())
        ? voice.say("value.up-to", "value", voice.value(line.high(), null, line.unit()))
        : number;
  }

  private String meaning(LimitLine line, String subject) {
    String number = figure(line.value(), line.low(), line.high(), line.u(), line.unit());
    boolean isBound = line.high() == null;
    return voice
        .texts()
        .say(
            "meaning." + line.verdict(),
            "horse",
            voice.horse(),
            "subject",
            voice.texts().word("subject", subject),
            "value",
            isBound ? voice.say("value.at-least", "value", number) : under(line, number),
            "quantity",
            voice.texts().word("quantity", line.quantity()),
            "group",
            voice.texts().word("group", line.group()),
            "limit",
            voice.value(line.limit(), null, line.unit()),
            "chance",
            voice.chance(line.pOver()));
  }
}
