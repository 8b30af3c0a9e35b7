package rickyard.second;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Subject;
import rickyard.core.judgement.LotJudge;
import rickyard.core.judgement.Verdict;
import rickyard.core.quantity.Measured;
import rickyard.tables.JudgementTables;
import rickyard.tables.UncertaintyTable;

/** 200 lots with random reports: every verdict computed twice. */
class RandomLotsTest {
  private static final long SEED = 20260316;
  private static final int LOTS = 200;
  private static final double RELATIVE = 1e-9;

  private final Books books = new Books();
  private final Differences differences = new Differences();
  private final Map<String, Integer> words = new TreeMap<>();

  @Test
  void everyVerdictOfTwoHundredLotsIsTheSame() {
    AnalysisMaker maker =
        new AnalysisMaker(UncertaintyTable.load(Optional.empty()).uncertainties());
    var rules = JudgementTables.load(Optional.empty()).lotRules();
    Draws draws = new Draws(SEED);
    for (int i = 0; i < LOTS; i++) {
      RandomSheet sheet = RandomSheet.draw(draws);
      MaterialClass material =
          draws.of(
              List.of(
                  MaterialClass.GRASS,
                  MaterialClass.LEGUME,
                  MaterialClass.CEREAL,
                  MaterialClass.HAYLAGE,
                  MaterialClass.STRAW));
      int inRegister = draws.chance(0.5) ? draws.whole(1, 25) : 0;
      OptionalInt registered = inRegister > 0 ? OptionalInt.of(inRegister) : OptionalInt.empty();
      String id = "lot-" + i;
      AccountedAnalysis analysis =
          maker.make(sheet.sample(id), new Subject(id, "", material, registered));
      int cores = sheet.cores() > 0 ? sheet.cores() : inRegister;
      SortedMap<String, Num> contents =
          new Laboratory(books, material.code(), cores).contents(sheet.figures());
      compare(id, LotJudge.judge(analysis, rules), contents, material != MaterialClass.HAYLAGE);
    }
    differences.assertNone();
    assertTrue(differences.compared() > 10 * LOTS, "compared " + differences.compared());
    assertTrue(
        words
            .keySet()
            .containsAll(
                List.of(
                    "clears", "borderline-under", "borderline-over", "exceeds", "cannot-judge")),
        "met only " + words);
  }

  private void compare(
      String lot, List<Verdict> verdicts, SortedMap<String, Num> contents, boolean isDry) {
    SortedMap<String, LotRuling> rulings = LotRuling.all(books, contents, isDry);
    differences.word(
        lot + " limits",
        new TreeMap<>(byId(verdicts)).keySet().toString(),
        rulings.keySet().toString());
    for (Verdict v : verdicts) {
      LotRuling second = rulings.get(v.limit().id());
      if (second != null) {
        compare(lot + " " + v.limit().id(), v, second);
      }
    }
  }

  private static Map<String, Verdict> byId(List<Verdict> verdicts) {
    Map<String, Verdict> byId = new TreeMap<>();
    verdicts.forEach(v -> byId.put(v.limit().id(), v));
    return byId;
  }

  private void compare(String what, Verdict first, LotRuling second) {
    words.merge(first.word().code(), 1, Integer::sum);
    differences.word(what, first.word().code(), second.ruling().word());
    differences.number(
        what + " p",
        first.pOver().orElse(Double.NaN),
        second.ruling().pOver().orElse(Double.NaN),
        RELATIVE);
    Optional<Measured> value = first.value();
    differences.word(what + " known", "" + value.isPresent(), "" + second.value().isPresent());
    if (value.isPresent() && second.value().isPresent()) {
      Measured a = value.get();
      Num b = second.value().get();
      differences.number(what + " value", a.best(), b.best(), RELATIVE);
      differences.number(what + " low", a.low(), b.low(), RELATIVE);
      differences.number(what + " high", a.high(), b.high(), RELATIVE);
      differences.number(what + " u", a.u(), b.u(), RELATIVE);
    }
  }
}
