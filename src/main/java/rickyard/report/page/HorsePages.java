package rickyard.report.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.HorseQuestion;
import rickyard.core.advice.Priority;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Plain;
import rickyard.report.text.PlainNumber;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.MorningView;

/** The horses, by how soon a person must hear of them; each with its diet before and after. */
public final class HorsePages {
  /** The horses of one priority. */
  public record Level(String code, String heading, boolean urgent, List<Entry> horses) {}

  /** One horse. */
  public record Entry(
      String anchor,
      String horse,
      String client,
      String verdict,
      String standing,
      String facts,
      String groups,
      String reason,
      String say,
      boolean vetFirst,
      List<String> problems,
      List<String> questions,
      List<String> changes,
      List<DietPages.Compared> compared,
      List<Blocks.Block> limits,
      List<DietPages.Portion> portions,
      List<DietPages.Need> needs,
      List<String> notes,
      List<ProposalPages.Entry> proposals,
      String chance) {}

  private HorsePages() {}

  static List<Level> of(MorningView view, Anchors anchors) {
    Mass mass = Mass.named(view.units());
    List<Level> levels = new ArrayList<>();
    for (Priority priority : Priority.values()) {
      List<Entry> horses =
          view.horses().stream()
              .filter(horse -> horse.priority() == priority)
              .map(horse -> entry(view, horse, anchors, mass))
              .toList();
      if (!horses.isEmpty()) {
        boolean urgent = priority == Priority.CALL_NOW || priority == Priority.CALL_TODAY;
        String heading = Words.of("priority", priority.code()) + " (" + horses.size() + ")";
        levels.add(new Level(priority.code(), heading, urgent, horses));
      }
    }
    return levels;
  }

  private static Entry entry(MorningView view, HorseAdvice horse, Anchors anchors, Mass mass) {
    String name = Names.horse(view, horse.horse());
    DietSummary after = horse.after();
    return new Entry(
        anchors.horse(horse.horse()),
        name,
        Names.client(view, horse.client()),
        Words.of("verdict", after == null ? "cannot-judge" : after.verdict()),
        standing(after),
        facts(view.horseFacts().get(horse.horse()), mass, horse.vetFirst()),
        horse.groups().isEmpty() ? "none" : Words.all("group", horse.groups()),
        Plain.sentence(horse.reason()),
        Plain.sentence(horse.say()),
        horse.vetFirst(),
        horse.problems().stream().map(Plain::sentence).toList(),
        horse.questions().stream().map(HorsePages::question).toList(),
        horse.changes().stream().map(Plain::sentence).toList(),
        DietPages.compared(horse, mass),
        DietPages.limits(horse, name, anchors),
        DietPages.portions(horse, mass),
        DietPages.needs(horse),
        after == null
            ? List.of()
            : after.notes().stream().map(n -> Plain.sentence(n.words())).toList(),
        ProposalPages.of(horse, mass),
        chance(after));
  }

  private static String question(HorseQuestion open) {
    String choices =
        open.choices().isEmpty() ? "" : " Choices: " + String.join(" or ", open.choices()) + ".";
    return Harmless.line(
        open.question() + " " + open.why() + choices + " Answer under " + open.id() + ".");
  }

  /** For sorting: the chance of being over the worst-placed limit, empty where there is none. */
  private static String chance(@Nullable DietSummary diet) {
    var worst = diet == null ? null : diet.worst();
    return PlainNumber.find(worst == null ? null : worst.pOver())
        .map(BigDecimal::toPlainString)
        .orElse("");
  }

  /** The figure behind the verdict, for the closed line. */
  private static String standing(@Nullable DietSummary diet) {
    if (diet == null) {
      return "the diet cannot be computed";
    }
    var worst = diet.worst();
    if (worst == null) {
      return "";
    }
    String value =
        Words.of("quantity", worst.quantity())
            + " "
            + Shown.withUncertainty(worst.value(), worst.u())
            + ", limit "
            + Shown.number(Double.valueOf(worst.limit()))
            + " "
            + Words.of("unit", worst.unit());
    return worst.pOver() == null
        ? value
        : value + ", chance of being over: " + Shown.chance(worst.pOver());
  }

  private static String facts(@Nullable HorseFacts facts, Mass mass, boolean vetFirst) {
    if (facts == null) {
      return "not in the register";
    }
    List<String> parts = new ArrayList<>();
    parts.add(Harmless.line(facts.type()));
    parts.add(Harmless.line(facts.status()));
    if (facts.bodyWeightKg() > 0 && !vetFirst) {
      parts.add(mass.words(facts.bodyWeightKg()) + ", " + Words.of("weightby", facts.weightBy()));
    }
    Double condition = facts.bodyCondition();
    if (condition != null) {
      parts.add("body condition " + Shown.number(condition) + " of 9");
    }
    if (!facts.conditions().isBlank()) {
      parts.add("on record: " + Harmless.line(facts.conditions()).replace(";", ", "));
    }
    parts.removeIf(String::isBlank);
    return String.join(" · ", parts);
  }
}
