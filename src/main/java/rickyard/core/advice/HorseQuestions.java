package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Extras;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Replacement;

/** What must be asked about a horse with limits: grass, treats, other hay, an unopened delivery. */
final class HorseQuestions {
  private HorseQuestions() {}

  /** Whether what it eats outside the bucket matters for a limit: pregnancy alone does not. */
  static boolean hasSugarLimit(HorseGroups groups) {
    return hasSugarLimit(groups.groups());
  }

  static boolean hasSugarLimit(SortedSet<String> groups) {
    return groups.stream().anyMatch(g -> !g.startsWith("pregnant"));
  }

  /** The questions that nobody has answered, in a fixed order. */
  static List<HorseQuestion> open(
      Horse horse, HorseGroups groups, ComingRation coming, SortedSet<String> answered) {
    List<HorseQuestion> questions = new ArrayList<>();
    if (hasSugarLimit(groups)) {
      addGrazing(horse, questions);
      addExtras(horse, questions);
      addOpenings(horse, coming, questions);
    }
    questions.removeIf(q -> answered.contains(q.id()));
    return List.copyOf(questions);
  }

  private static void addGrazing(Horse horse, List<HorseQuestion> questions) {
    if (horse.grazingHoursPerDay().isPresent() && horse.grazingHoursPerDay().getAsDouble() == 0) {
      return;
    }
    boolean isAsked = horse.grazingHoursPerDay().isPresent();
    questions.add(
        new HorseQuestion(
            "q-grazing-" + horse.id(),
            "grazing",
            horse.id(),
            isAsked
                ? horse.name()
                    + " grazes and no analysis of the pasture is on record. How is the grass"
                    + " accounted for?"
                : "Does "
                    + horse.name()
                    + " graze? (How many hours a day goes into horses.csv,"
                    + " grazing_hours_per_day.)",
            List.of("no grass", "muzzled", "grass counted by the adviser"),
            "the verdict is on the ration recorded: no grass, treats or other hay"));
  }

  private static void addExtras(Horse horse, List<HorseQuestion> questions) {
    if (horse.extras() == Extras.NONE) {
      return;
    }
    questions.add(
        new HorseQuestion(
            "q-extras-" + horse.id(),
            "extras",
            horse.id(),
            switch (horse.extras()) {
              case TREATS -> "Which treats does " + horse.name() + " get, and how much?";
              case SHARED -> "How much of other horses' hay does " + horse.name() + " eat?";
              default -> "Does " + horse.name() + " get treats or other horses' hay?";
            },
            List.of("none", "stopped", "counted by the adviser"),
            "the verdict is on the ration recorded: no grass, treats or other hay"));
  }

  private static void addOpenings(Horse horse, ComingRation coming, List<HorseQuestion> questions) {
    for (Replacement replacement : coming.replacements()) {
      if (!replacement.isOpeningKnown()) {
        String lot = replacement.delivery().lotId();
        questions.add(
            new HorseQuestion(
                "q-opening-" + lot + "-" + horse.clientId(),
                "opening",
                lot,
                "Is lot " + lot + " open at " + horse.clientId() + ", and since when?",
                List.of("open", "not yet", "sent back"),
                "it was delivered to replace "
                    + replacement.delivery().replaces().orElse("")
                    + " and counts as fed until someone says otherwise"));
      }
    }
  }
}
