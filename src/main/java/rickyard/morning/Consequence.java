package rickyard.morning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Settled;
import rickyard.core.judgement.LotJudge;
import rickyard.core.judgement.LotRules;
import rickyard.core.judgement.Suitability;
import rickyard.core.judgement.Verdict;
import rickyard.core.quantity.Measured;

/** What an answer would change, in words: the lots whose analysis would be another. */
final class Consequence {
  private static final int MOST = 3;

  private final LotRules rules;

  Consequence(LotRules rules) {
    this.rules = rules;
  }

  /** The lots that would stand otherwise; a sentence that says so where none would. */
  String words(Settled before, Settled after) {
    List<String> changed = new ArrayList<>();
    for (InForce now : after.inForce()) {
      Optional<InForce> old = before.find(now.subject(), now.batch());
      if (old.filter(o -> o.equals(now)).isEmpty()) {
        changed.add(now.subject() + ": " + stands(now));
      }
    }
    for (InForce old : before.inForce()) {
      if (after.find(old.subject(), old.batch()).isEmpty()) {
        changed.add(old.subject() + ": no longer a lot of its own");
      }
    }
    if (changed.isEmpty()) {
      return "no lot stands otherwise for it";
    }
    String more = changed.size() > MOST ? " and " + (changed.size() - MOST) + " more" : "";
    return String.join("; ", changed.subList(0, Math.min(MOST, changed.size()))) + more;
  }

  private String stands(InForce entry) {
    if (entry.analysis().isEmpty()) {
      return "no analysis in force";
    }
    if (!entry.batch().isEmpty()) {
      return "batch " + entry.batch() + ", " + sugar(entry);
    }
    List<Verdict> verdicts = LotJudge.judge(entry.analysis().get(), rules);
    Suitability suitability = Suitability.of(verdicts);
    List<String> words = new ArrayList<>();
    words.add(sugar(entry));
    add(words, "clears for", List.copyOf(suitability.suits()));
    add(words, "exceeds for", List.copyOf(suitability.notFor()));
    add(words, "does not clear for", List.copyOf(suitability.undecided()));
    return String.join(", ", words);
  }

  private static void add(List<String> words, String start, List<String> groups) {
    if (!groups.isEmpty()) {
      words.add(start + " " + String.join("/", groups));
    }
  }

  private static String sugar(InForce entry) {
    for (AnalyteCode code : List.of(AnalyteCode.NSC_WSC, AnalyteCode.NSC_ESC)) {
      Optional<Measured> value =
          entry.analysis().flatMap(a -> a.analysis().find(code)).filter(Measured::isBoundedAbove);
      if (value.isPresent()) {
        String name = code.equals(AnalyteCode.NSC_WSC) ? "WSC + starch" : "ESC + starch";
        return String.format(Locale.ROOT, "%s %.1f %% of dry matter", name, value.get().best());
      }
    }
    return "NSC not known";
  }
}
