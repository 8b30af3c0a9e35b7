package rickyard.report.letter;

import java.util.ArrayList;
import java.util.List;
import rickyard.report.sheet.HorsePaper;
import rickyard.report.text.Phrases;

/**
 * One horse in a letter.
 *
 * @param paper what is said of it
 * @param feed what is fed a day, a line an item
 * @param steps the change, a line for each stretch of equal days
 * @param unknown what is not known, the figures' own uncertainty included
 */
public record LetterHorse(
    HorsePaper paper, List<String> feed, List<String> steps, List<String> unknown) {
  public LetterHorse {
    feed = List.copyOf(feed);
    steps = List.copyOf(steps);
    unknown = List.copyOf(unknown);
  }

  static LetterHorse of(HorsePaper paper, Phrases texts) {
    List<String> unknown = new ArrayList<>(paper.unknown());
    if (!paper.measured().isEmpty()) {
      unknown.add(texts.text("unknown.figures"));
    }
    return new LetterHorse(
        paper,
        paper.weigh().stream().map(w -> feed(w, texts)).toList(),
        paper.steps().stream().map(s -> step(paper, s, texts)).toList(),
        unknown);
  }

  private static String feed(HorsePaper.Weigh row, Phrases texts) {
    if (row.stop()) {
      return texts.say("letter.amount-stop", "item", row.item());
    }
    if (row.other().isEmpty()) {
      return texts.say("letter.amount-open", "item", row.item(), "amount", row.amount());
    }
    String item = row.prepared().isEmpty() ? row.item() : row.item() + ", " + row.prepared();
    return texts.say(
        row.meals().isEmpty() ? "letter.amount" : "letter.amount-meals",
        "item",
        item,
        "amount",
        row.amount(),
        "other",
        row.other(),
        "meals",
        row.meals());
  }

  private static String step(HorsePaper paper, HorsePaper.Step step, Phrases texts) {
    List<String> amounts = new ArrayList<>();
    for (int i = 0; i < step.amounts().size(); i++) {
      HorsePaper.StepAmount amount = step.amounts().get(i);
      String item = paper.columns().get(i);
      amounts.add(
          amount.other().isEmpty()
              ? item + " " + amount.amount()
              : texts.say(
                  "letter.step-amount",
                  "item",
                  item,
                  "amount",
                  amount.amount(),
                  "other",
                  amount.other()));
    }
    return texts.say("letter.step", "days", step.days(), "amounts", String.join(", ", amounts));
  }
}
