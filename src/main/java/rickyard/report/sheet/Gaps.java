package rickyard.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rickyard.core.advice.DietLine;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.PortionLine;
import rickyard.report.text.Cut;
import rickyard.report.text.Shown;

/** What is not known of a horse's diet, and what its client can be asked. */
final class Gaps {
  private static final int LONGEST_NAME = 60;

  private Gaps() {}

  /** What keeps the diet from being judged. */
  static List<String> missing(HorseAdvice horse, Voice voice) {
    Set<String> missing = new LinkedHashSet<>();
    DietSummary after = horse.after();
    if (!horse.problems().isEmpty() || after == null) {
      missing.add(voice.say("missing.ration"));
    }
    if (after != null) {
      after.limits().stream()
          .filter(l -> l.verdict().equals("cannot-judge") && Course.decides(l))
          .forEach(l -> missing.addAll(missing(l, after, voice)));
    }
    return new ArrayList<>(missing);
  }

  private static List<String> missing(LimitLine line, DietSummary diet, Voice voice) {
    String quantity = voice.texts().word("quantity", line.quantity());
    List<PortionLine> unknown =
        line.quantity().startsWith("nsc")
            ? diet.portions().stream().filter(p -> p.nscPercent() == null).toList()
            : List.of();
    if (unknown.isEmpty()) {
      return List.of(voice.say("missing.quantity-diet", "quantity", quantity));
    }
    return unknown.stream()
        .map(
            p ->
                voice
                    .texts()
                    .say(
                        "missing.quantity",
                        "quantity",
                        quantity,
                        "item",
                        voice.item(p.item(), p.batch(), p.name(), p.role())))
        .toList();
  }

  /** What is not known although the diet was judged. */
  static List<String> unknown(HorseAdvice horse, Voice voice) {
    Set<String> unknown = new LinkedHashSet<>();
    DietSummary after = horse.after();
    if (after != null) {
      after.notes().stream()
          .map(n -> "note." + n.code())
          .filter(key -> voice.texts().find(key).isPresent())
          .forEach(key -> unknown.add(voice.say(key)));
    }
    return new ArrayList<>(unknown);
  }

  /** What the ration gives less of than is needed, by its best values; empty where nothing. */
  static String shortfalls(HorseAdvice horse, Voice voice) {
    DietSummary after = horse.after();
    String lacking =
        after == null
            ? ""
            : after.lines().stream()
                .filter(line -> line.status().equals("below") && line.supply() != null)
                .filter(line -> voice.texts().find("nutrient." + line.nutrient()).isPresent())
                .map(line -> shortfall(line, voice))
                .collect(Collectors.joining(", "));
    return lacking.isEmpty() ? "" : voice.say("letter.short", "nutrients", lacking);
  }

  private static String shortfall(DietLine line, Voice voice) {
    Double percent = line.percentOfRequirement();
    String name = voice.texts().word("nutrient", line.nutrient());
    return percent == null ? name : name + " " + Shown.share(percent, 100);
  }

  /** What only the client can say. */
  static List<String> asks(HorseAdvice horse, Voice voice) {
    return horse.questions().stream()
        .filter(q -> voice.texts().find("ask." + q.kind()).isPresent())
        .map(q -> voice.say("ask." + q.kind(), "about", Cut.line(q.about(), LONGEST_NAME)))
        .distinct()
        .toList();
  }
}
