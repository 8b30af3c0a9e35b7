package rickyard.report.about;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.forage.Decision;
import rickyard.report.about.AboutCard.Line;
import rickyard.report.text.Harmless;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.ClientFacts;

/** The card of a client. */
final class ClientCard {
  private static final int MOST_HORSES = 8;

  private final AboutFacts facts;
  private final AboutWords words;

  ClientCard(AboutFacts facts) {
    this.facts = facts;
    this.words = new AboutWords(facts);
  }

  /** The card of a client. */
  AboutCard of(ClientFacts client) {
    List<HorseAdvice> own =
        facts.advice().stream()
            .filter(a -> a.client().equals(client.client()))
            .sorted(Comparator.comparing(HorseAdvice::priority).thenComparing(HorseAdvice::horse))
            .toList();
    List<Line> lines = new ArrayList<>();
    AboutWords.add(lines, "mail", client.email());
    AboutWords.add(lines, "adviser", client.adviserName());
    own.stream()
        .limit(MOST_HORSES)
        .forEach(a -> AboutWords.add(lines, Harmless.line(words.name(a.horse())), standing(a)));
    if (own.size() > MOST_HORSES) {
      AboutWords.add(lines, "more", own.size() - MOST_HORSES + " horses; ask for each by its name");
    }
    List<Hay> hay = facts.hay(client.client());
    hay.forEach(h -> AboutWords.add(lines, "hay", h.words()));
    Optional<String> told =
        own.stream()
            .map(a -> words.told(a.horse()))
            .flatMap(Optional::stream)
            .max(Comparator.comparing(Decision::date).thenComparing(Decision::row))
            .map(d -> words.name(d.about()) + ": " + AboutWords.words(d));
    told.ifPresent(t -> AboutWords.add(lines, "told", t));
    return new AboutCard(
        "client",
        client.client(),
        client.name(),
        client.client(),
        client.phone(),
        "",
        "",
        null,
        null,
        null,
        told.orElse(""),
        AboutWords.days(hay),
        lines);
  }

  private String standing(HorseAdvice advice) {
    @Nullable DietSummary diet = advice.after();
    @Nullable LimitLine worst = diet == null ? null : diet.worst();
    String words =
        Words.of("priority", advice.priority().code())
            + "; "
            + Words.of("verdict", diet == null ? "cannot-judge" : diet.verdict());
    return worst == null || worst.pOver() == null
        ? words
        : words + ", chance of being over " + Shown.chance(worst.pOver());
  }
}
