package rickyard.core.judgement;

import rickyard.core.quantity.Chance;
import rickyard.core.quantity.Measured;

/** The sentence that explains a verdict. */
final class Reasons {
  private Reasons() {}

  static String of(Limit limit, Measured v, Finding finding, String missing) {
    String unit = limit.unit().text();
    String line =
        (limit.bound() == Bound.MAX ? "limit " : "minimum ")
            + Words.number(limit.value())
            + " "
            + unit;
    if (finding.word() == Word.CANNOT_JUDGE) {
      String known =
          v.isBoundedAbove()
              ? limit.words()
                  + " lies somewhere from "
                  + Words.number(v.lower())
                  + " to "
                  + Words.number(v.upper())
                  + " "
                  + unit
              : v.lower() == 0
                  ? limit.words() + " is not known"
                  : limit.words() + " is at least " + Words.number(v.lower()) + " " + unit;
      return known
          + "; "
          + line
          + "; "
          + (missing.isEmpty() ? "not bounded" : missing)
          + chance(finding, limit, v);
    }
    return measured(limit, v, finding)
        + "; "
        + line
        + guard(limit, finding)
        + chance(finding, limit, v);
  }

  private static String measured(Limit limit, Measured v, Finding finding) {
    String what = limit.words() + " ";
    if (!v.isBoundedAbove()) {
      what += "at least ";
    } else if (v.isOneSided()) {
      what += limit.bound() == Bound.MAX ? "up to " : "from ";
    }
    return what
        + Words.number(finding.used())
        + " ± "
        + Words.uncertainty(v.u())
        + " "
        + limit.unit().text();
  }

  private static String guard(Limit limit, Finding finding) {
    if (limit.risk().isEmpty()) {
      return ", no guard band";
    }
    return ", guard band "
        + Words.uncertainty(finding.guardBand())
        + " at "
        + Words.number(limit.risk().getAsDouble() * 100)
        + " % risk";
  }

  private static String chance(Finding finding, Limit limit, Measured v) {
    if (finding.chanceWrong().isEmpty()) {
      return "";
    }
    return "; chance of being "
        + (limit.bound() == Bound.MAX ? "over" : "under")
        + ", from this test alone, "
        + (v.isBoundedAbove()
            ? Chance.words(finding.chanceWrong().getAsDouble())
            : Chance.atLeast(finding.chanceWrong().getAsDouble()));
  }
}
