package rickyard.report.about;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.PortionLine;
import rickyard.core.forage.Decision;
import rickyard.report.about.AboutCard.Line;
import rickyard.report.text.Shown;
import rickyard.report.text.Weighed;
import rickyard.report.text.Words;
import rickyard.report.view.HorseFacts;

/** The card of a horse. */
final class HorseCard {
  private final AboutFacts facts;
  private final AboutWords words;

  HorseCard(AboutFacts facts) {
    this.facts = facts;
    this.words = new AboutWords(facts);
  }

  /** The card of a horse. */
  AboutCard of(HorseAdvice advice) {
    @Nullable HorseFacts horse = facts.horses().get(advice.horse());
    @Nullable DietSummary diet = advice.after();
    @Nullable LimitLine worst = diet == null ? null : diet.worst();
    String verdict = diet == null ? "cannot-judge" : diet.verdict();
    List<Hay> hay =
        facts.hay(advice.client()).stream().filter(h -> AboutWords.isFed(diet, h.lot())).toList();
    List<Line> lines = new ArrayList<>();
    AboutWords.add(lines, "about", about(horse, advice));
    AboutWords.add(lines, "now", Words.of("priority", advice.priority().code()));
    AboutWords.add(lines, "verdict", verdict(verdict, worst));
    advice.problems().forEach(p -> AboutWords.add(lines, "problem", p));
    AboutWords.add(lines, "ration", ration(advice, diet));
    Optional<Decision> told = words.told(advice.horse());
    AboutWords.add(lines, "told", told.map(AboutWords::words).orElse("never"));
    AboutWords.add(lines, "hay", hay(hay));
    advice.proposals().stream()
        .filter(p -> !advice.vetFirst())
        .findFirst()
        .ifPresent(
            p -> AboutWords.add(lines, "proposed", Words.of("kind", p.kind()) + ": " + p.why()));
    advice.questions().forEach(q -> AboutWords.add(lines, "ask", q.question()));
    words.due(lines, advice.horse());
    return new AboutCard(
        "horse",
        advice.horse(),
        horse == null ? advice.horse() : horse.name(),
        advice.client(),
        words.phone(advice.client()),
        verdict,
        worst == null ? "" : worst.limitId(),
        worst == null ? null : worst.value(),
        worst == null ? null : worst.u(),
        worst == null ? null : worst.pOver(),
        told.map(AboutWords::words).orElse(""),
        AboutWords.days(hay),
        lines);
  }

  /** No weight where amounts could be worked out from it. */
  private String about(@Nullable HorseFacts horse, HorseAdvice advice) {
    if (horse == null) {
      return "not in the register";
    }
    String weight =
        advice.vetFirst()
            ? ""
            : ", "
                + facts.mass().words(horse.bodyWeightKg())
                + " "
                + Words.of("weightby", horse.weightBy());
    return horse.type()
        + ", "
        + horse.status()
        + weight
        + (horse.conditions().isBlank() ? "" : "; on record: " + horse.conditions());
  }

  private static String verdict(String word, @Nullable LimitLine worst) {
    String words = Words.of("verdict", word);
    if (worst == null) {
      return words;
    }
    return words
        + AboutWords.figure(
            worst.quantity(),
            Shown.figure(worst.verdict(), worst.value(), worst.low(), worst.high(), worst.u()),
            worst.limit(),
            worst.unit(),
            worst.pOver());
  }

  private String ration(HorseAdvice advice, @Nullable DietSummary diet) {
    if (advice.vetFirst()) {
      return "VET FIRST: no amounts without a veterinary plan";
    }
    return diet == null
        ? "not known"
        : diet.portions().stream()
            .sorted(Comparator.comparing(p -> !p.asForage()))
            .map(this::portion)
            .collect(Collectors.joining(", "));
  }

  private String portion(PortionLine portion) {
    return portion.item()
        + " "
        + Weighed.words(facts.mass(), portion.kg())
        + (portion.prepared().equals("dry") ? "" : " " + portion.prepared());
  }

  private static String hay(List<Hay> hay) {
    return hay.isEmpty()
        ? "the registers do not say how much is left"
        : hay.stream().map(Hay::words).collect(Collectors.joining("; "));
  }
}
