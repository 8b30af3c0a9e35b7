package rickyard.core.advice.coop;

import rickyard.core.judgement.Word;
import rickyard.core.judgement.WorstVerdict;

/** The whole diet of a horse with the hay of one lot. */
record HayTried(CoOpContext context, Eater.Member member) {

  /** Kg as fed per day: as it is told or fed, else at equal dry matter on the scale. */
  double kgPerDay(String lot) {
    return isFed(lot) ? member.kg() : context.steps().nearestKg(member.kgDm() / fraction(lot));
  }

  /** The word of the worst-placed limit. */
  String verdict(String lot) {
    return isFed(lot)
        ? member.fed().verdict()
        : WorstVerdict.find(
                context
                    .adviser()
                    .withHay(member.horse(), member.replaced(), lot, kgPerDay(lot))
                    .verdicts())
            .map(v -> v.word())
            .orElse(Word.NO_LIMIT)
            .code();
  }

  private boolean isFed(String lot) {
    return member.kgByLot().size() == 1 && member.kgByLot().containsKey(lot);
  }

  private double fraction(String lot) {
    return context
        .larder()
        .find(lot, "")
        .map(f -> f.dryMatter().best() / 100)
        .orElseThrow(() -> new IllegalStateException("shared out without dry matter: " + lot));
  }
}
