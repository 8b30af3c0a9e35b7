package rickyard.report.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietLine;
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
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;

/** The horses, by how soon a person must hear of them; each with its diet before and after. */
public final class HorsePages {
  /** The horses of one priority. */
  public record Level(
      String code,
      String heading,
      boolean urgent,
      List<Entry> horses,
      List<Brief> brief,
      String elsewhere) {}

  /** One horse of very many of which there is nothing to say: a line. */
  public record Brief(
      String anchor,
      String horse,
      String client,
      String verdict,
      String groups,
      String chance,
      String find,
      String sheet) {}

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
      String needsElsewhere,
      List<String> notes,
      List<ProposalPages.Entry> proposals,
      String moreProposals,
      TripPages.@Nullable Trip trip,
      String chance,
      String find,
      String sheet,
      String letter) {}

  private HorsePages() {}

  static List<Level> of(MorningView view, Anchors anchors) {
    List<Level> levels = new ArrayList<>();
    for (Priority priority : Priority.values()) {
      List<HorseAdvice> horses =
          view.horses().stream()
              .filter(horse -> horse.priority() == priority)
              .sorted(Comparator.comparing(horse -> !horse.vetFirst()))
              .toList();
      if (!horses.isEmpty()) {
        levels.add(level(view, priority, horses, anchors));
      }
    }
    return levels;
  }

  /** Whatever the figures say: the closed line must not read as if all were well. */
  private static final String VET_FIRST =
      "VET FIRST: acute laminitis on record, no veterinary plan; ";

  /** Whether the office has more horses than a page can show all of in full. */
  static boolean areMany(MorningView view) {
    return view.horses().size() > Listed.MOST;
  }

  /**
   * All of a level in full, but of very many those with nothing to say: as many of them as there is
   * room for beside the others, which never give way; nor does one that needs the vet first.
   */
  private static Level level(
      MorningView view, Priority priority, List<HorseAdvice> horses, Anchors anchors) {
    long others = view.horses().stream().filter(horse -> horse.priority() != Priority.NONE).count();
    long vetFirst = horses.stream().filter(HorseAdvice::vetFirst).count();
    int room = (int) Math.max(vetFirst, Listed.MOST - others);
    int whole = priority == Priority.NONE ? Math.min(room, horses.size()) : horses.size();
    Mass mass = Mass.named(view.units());
    boolean urgent = priority == Priority.CALL_NOW || priority == Priority.CALL_TODAY;
    return new Level(
        priority.code(),
        Words.of("priority", priority.code()) + " (" + horses.size() + ")",
        urgent,
        horses.stream().limit(whole).map(horse -> entry(view, horse, anchors, mass)).toList(),
        horses.stream().skip(whole).map(horse -> brief(view, horse, anchors)).toList(),
        elsewhere(horses.size() - whole));
  }

  private static String elsewhere(int brief) {
    return brief == 0
        ? ""
        : Shown.count(brief, "horse has", "horses have")
            + " one line each here. Their diets stand in horses.csv and diets.csv; 'about OFFICE"
            + " NAME' prints all that is known of one of them.";
  }

  private static Brief brief(MorningView view, HorseAdvice horse, Anchors anchors) {
    return new Brief(
        anchors.horse(horse.horse()),
        Names.horse(view, horse.horse()),
        Names.client(view, horse.client()),
        verdict(horse),
        groups(horse),
        chance(horse.after()),
        FindWords.horse(horse),
        view.papers().sheets().getOrDefault(horse.horse(), ""));
  }

  private static String verdict(HorseAdvice horse) {
    DietSummary diet = horse.after();
    return (horse.vetFirst() ? VET_FIRST : "")
        + Words.of("verdict", diet == null ? "cannot-judge" : diet.verdict());
  }

  private static String groups(HorseAdvice horse) {
    return horse.groups().isEmpty() ? "none" : Words.all("group", horse.groups());
  }

  private static Entry entry(MorningView view, HorseAdvice horse, Anchors anchors, Mass mass) {
    String name = Names.horse(view, horse.horse());
    DietSummary after = horse.after();
    boolean isCut = areMany(view) && horse.priority() == Priority.STANDING;
    int most = areMany(view) ? ProposalPages.FIRST : Integer.MAX_VALUE;
    return new Entry(
        anchors.horse(horse.horse()),
        name,
        Names.client(view, horse.client()),
        verdict(horse),
        Stream.of(standing(after), shortOf(horse))
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(" · ")),
        facts(view.horseFacts().get(horse.horse()), mass, horse.vetFirst()),
        groups(horse),
        Plain.sentence(Changes.reason(view, horse)),
        Plain.sentence(horse.say()),
        horse.vetFirst(),
        horse.problems().stream().map(Plain::sentence).toList(),
        horse.questions().stream().map(HorsePages::question).toList(),
        Changes.ofHorse(view, horse).stream()
            .map(line -> Names.advisers(view, Plain.sentence(line)))
            .toList(),
        DietPages.compared(horse, mass),
        Blocks.drawn(DietPages.limits(horse, name, anchors), areMany(view) ? 1 : Integer.MAX_VALUE),
        DietPages.portions(horse, lots(view), mass, anchors),
        isCut ? List.of() : DietPages.needs(horse, areMany(view)),
        isCut
            ? "The nutrients of a horse that was told before stand in diets.csv."
            : areMany(view) ? DietPages.met(horse) : "",
        after == null
            ? List.of()
            : after.notes().stream().map(n -> Plain.sentence(n.words())).toList(),
        ProposalPages.of(horse, mass, most, anchors),
        ProposalPages.more(horse, most),
        TripPages.of(horse, mass).orElse(null),
        chance(after),
        FindWords.horse(horse),
        view.papers().sheets().getOrDefault(horse.horse(), ""),
        view.papers().letters().getOrDefault(horse.client(), ""));
  }

  private static Map<String, LotRow> lots(MorningView view) {
    return view.lots().stream()
        .collect(Collectors.toMap(LotRow::lot, lot -> lot, (first, second) -> first));
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
            + Shown.figure(worst.verdict(), worst.value(), worst.low(), worst.high(), worst.u())
            + ", limit "
            + Shown.number(Double.valueOf(worst.limit()))
            + " "
            + Words.of("unit", worst.unit());
    return worst.pOver() == null
        ? value
        : value + ", chance of being over: " + Shown.chance(worst.pOver());
  }

  /** What the ration gives too little of, on the closed line: 'nothing to say' hides it else. */
  private static String shortOf(HorseAdvice horse) {
    DietSummary diet = horse.after();
    String lacking =
        diet == null || horse.vetFirst()
            ? ""
            : diet.lines().stream()
                .filter(line -> line.status().equals("below"))
                .map(HorsePages::shortOf)
                .collect(Collectors.joining(", "));
    return lacking.isEmpty() ? "" : "short of: " + lacking;
  }

  private static String shortOf(DietLine line) {
    Double percent = line.percentOfRequirement();
    String name = Words.find("figure", line.nutrient()).orElse(line.nutrient());
    return percent == null ? name : name + " " + Shown.share(percent, 100);
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
