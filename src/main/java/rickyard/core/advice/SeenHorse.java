package rickyard.core.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Requirements;

/** A horse with all that decides how a ration of it is judged. */
record SeenHorse(Horse horse, HorseGroups groups, Requirements requirements, Optional<Herd> herd) {

  /** What it eats of: its own forages, and the bales it shares. */
  Stream<String> items(List<Portion> portions) {
    return Stream.concat(
        portions.stream().map(p -> p.food().id()), herd.stream().flatMap(h -> h.bales().stream()));
  }

  boolean hasSugarLimit() {
    return HorseQuestions.hasSugarLimit(groups)
        || herd.map(h -> HorseQuestions.hasSugarLimit(h.groups())).orElse(false);
  }
}
