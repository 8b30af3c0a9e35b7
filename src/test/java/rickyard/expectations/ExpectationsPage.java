package rickyard.expectations;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import rickyard.core.forage.Method;

/** Writes {@code docs/expectations.md}; every figure is computed from the tables in force. */
final class ExpectationsPage {
  static final List<Integer> CORES = List.of(1, 3, 12, 20);
  static final List<Method> METHODS = List.of(Method.WET, Method.NIR);
  static final List<String> GROUPS = List.of("laminitis", "ID");

  /** One published calibration's error of prediction of WSC by NIR (config/sources.csv). */
  static final double WIDE_NIR = 3.172;

  private record Choice(String name, double value, OptionalDouble risk) {}

  private static final List<Choice> CHOICES =
      List.of(
          new Choice("10 %, no guard band", 10, OptionalDouble.empty()),
          new Choice("10 % at 20 %", 10, OptionalDouble.of(0.2)),
          new Choice("10 % at 10 %", 10, OptionalDouble.of(0.1)),
          new Choice("10 % at 5 %", 10, OptionalDouble.of(0.05)),
          new Choice("12 % at 2.5 %", 12, OptionalDouble.of(0.025)));

  private record Office(String name, int reports, double laminitis, double id) {}

  private static final List<Office> OFFICES =
      List.of(
          new Office("an adviser, 3 lots a morning", 3, 0.5, 1),
          new Office("an office, 12 lots a morning", 12, 0.5, 1),
          new Office("a co-op in the season, 40 lots a morning", 40, 0.2, 0.4));

  private final StringBuilder out = new StringBuilder();

  private ExpectationsPage() {}

  static String make() {
    ExpectationsPage page = new ExpectationsPage();
    page.head();
    HayKind.all().forEach(page::hay);
    page.choices();
    page.wide();
    page.calls();
    return page.out.toString();
  }

  private void line(String words, Object... values) {
    out.append(values.length == 0 ? words : String.format(Locale.ROOT, words, values)).append('\n');
  }

  private void head() {
    line("# What to expect of the verdicts on sugar");
    line("");
    line(
        "Made by `mvn -o test -Dtest=ExpectationsTest -Drickyard.expectations.page=docs/expectations.md`"
            + " from `config/limits.csv`, `config/uncertainties.csv` and"
            + " `src/test/resources/expectations/hays.csv`; a test holds this page to them.");
    line("");
    line(
        "For hays of a kind the true WSC + starch of a lot is taken as normal, cut off at both ends;"
            + " a test gives the truth with a normal error of the standard uncertainty u that the"
            + " program itself computes, and the figures at which a lot clears or exceeds are found"
            + " by judging lots with it. The shares are integrals, not simulations. Nothing here is"
            + " a survey: where a distribution is from memory or assumed, so is what follows from"
            + " it, and the uncertainties rest mostly on memory too. `borderline` is not cleared, on"
            + " either side of the limit.");
    line("");
    line("| hay | mean | SD | from | to | source | status |");
    line("|---|---|---|---|---|---|---|");
    for (HayKind h : HayKind.all()) {
      line(
          "| %s | %s | %s | %s | %s | %s | %s |",
          h.name(), h.mean(), h.sd(), h.low(), h.high(), h.source(), h.status());
    }
    line("");
    line(
        "Group `laminitis`: 10 % at 5 %% risk. Groups `ID` and `PSSM`: 10 % at 20 %% and 12 %% at"
                .replace("%%", "%")
            + " 2.5 % risk together; PSSM has the same figures and is not listed twice.");
  }

  private void hay(HayKind hay) {
    line("");
    line("## %s", hay.name());
    line("");
    line(
        "%s of the lots are truly at most 10 %%.",
        percent(Expectation.of(hay, Rule.ofGroup("ID", hay.material(), Method.WET, 20)).under()));
    line("");
    line(
        "| group | method | cores | u | clears to | clears | borderline | exceeds | of the truly under,"
            + " clear | of the cleared, truly over 10 % | over 12 % |");
    line("|---|---|---|---|---|---|---|---|---|---|---|");
    for (String group : GROUPS) {
      for (Method method : METHODS) {
        for (int cores : CORES) {
          Rule rule = Rule.ofGroup(group, hay.material(), method, cores);
          Expectation e = Expectation.of(hay, rule);
          line(
              "| %s | %s | %d | %.2f | %.2f | %s | %s | %s | %s | %s | %s |",
              group,
              method.code(),
              cores,
              rule.u(),
              rule.clearsTo(),
              percent(e.clears()),
              percent(e.borderline()),
              percent(e.exceeds()),
              percent(e.underThatClear()),
              percent(e.clearedOver10()),
              percent(e.clearedOver12()));
        }
      }
    }
  }

  private void choices() {
    line("");
    line("## Other rules, for comparison");
    line("");
    line(
        "| hay | method | cores | rule | clears to | of the truly under, clear | of the cleared,"
            + " truly over 10 % | over 12 % |");
    line("|---|---|---|---|---|---|---|---|");
    for (HayKind hay : compared()) {
      for (Method method : METHODS) {
        for (int cores : List.of(3, 20)) {
          for (Choice c : CHOICES) {
            choice(
                hay,
                method,
                cores,
                c.name(),
                Rule.ofOne(c.value(), c.risk(), hay.material(), method, cores));
          }
          Rule both = Rule.ofGroup("ID", hay.material(), method, cores);
          choice(hay, method, cores, "both steps of ID", both);
        }
      }
    }
  }

  private static List<HayKind> compared() {
    return HayKind.all().stream()
        .filter(h -> h.name().startsWith("cool") || h.name().startsWith("late"))
        .toList();
  }

  private void choice(HayKind hay, Method method, int cores, String name, Rule rule) {
    Expectation e = Expectation.of(hay, rule);
    line(
        "| %s | %s | %d | %s | %.2f | %s | %s | %s |",
        hay.name(),
        method.code(),
        cores,
        name,
        rule.clearsTo(),
        percent(e.underThatClear()),
        percent(e.clearedOver10()),
        percent(e.clearedOver12()));
  }

  /** What happens if NIR misses by as much as one published calibration did. */
  private void wide() {
    line("");
    line("## If NIR misses by more than the table says");
    line("");
    line(
        "One published calibration had an error of prediction of %s points for WSC, about twice the"
            + " table's 1.5. The rule is the table's, the errors are those.",
        Double.toString(WIDE_NIR));
    line("");
    line(
        "| hay | group | cores | of the truly under, clear | of the cleared, truly over 10 % | over 12"
            + " % |");
    line("|---|---|---|---|---|---|");
    for (HayKind hay : compared()) {
      for (String group : GROUPS) {
        for (int cores : List.of(3, 20)) {
          Rule rule = Rule.ofGroup(group, hay.material(), Method.NIR, cores);
          double more = WIDE_NIR * WIDE_NIR - 1.5 * 1.5;
          Expectation e = Expectation.of(hay, rule, StrictMath.sqrt(rule.u() * rule.u() + more));
          line(
              "| %s | %s | %d | %s | %s | %s |",
              hay.name(),
              group,
              cores,
              percent(e.underThatClear()),
              percent(e.clearedOver10()),
              percent(e.clearedOver12()));
        }
      }
    }
  }

  private void calls() {
    line("");
    line("## Calls of a morning");
    line("");
    line(
        "Each lot is taken as all the forage of so many listed horses, none of them told before. A"
            + " horse of group `laminitis` is a call now when its figure is over 10 % (chance of"
            + " being over at least one half), one of `ID` or `PSSM` a call now over 12 % and a call"
            + " today over 10 %. Calls do not hang on the accepted risk, notes do: a borderline"
            + " figure under the limit makes a note. Tests by NIR with 3 cores. Reports that lack"
            + " WSC, starch or dry matter come on top.");
    line("");
    line(
        "| office (assumed) | hay | laminitis horses a lot | ID or PSSM horses a lot | calls now |"
            + " calls today | notes |");
    line("|---|---|---|---|---|---|---|");
    for (Office office : OFFICES) {
      for (HayKind hay : compared()) {
        Rule strict = Rule.ofGroup("laminitis", hay.material(), Method.NIR, 3);
        Rule steps = Rule.ofGroup("ID", hay.material(), Method.NIR, 3);
        double over10 = Expectation.read(hay, strict.u(), 10, 1000);
        double over12 = Expectation.read(hay, strict.u(), 12, 1000);
        double noteL = Expectation.read(hay, strict.u(), strict.clearsTo(), 10);
        double noteId = Expectation.read(hay, strict.u(), steps.clearsTo(), 10);
        line(
            "| %s | %s | %s | %s | %.1f | %.1f | %.1f |",
            office.name(),
            hay.name(),
            office.laminitis(),
            office.id(),
            office.reports() * (office.laminitis() * over10 + office.id() * over12),
            office.reports() * office.id() * (over10 - over12),
            office.reports() * (office.laminitis() * noteL + office.id() * noteId));
      }
    }
  }

  private static String percent(double share) {
    return Double.isFinite(share) ? String.format(Locale.ROOT, "%.1f %%", 100 * share) : "–";
  }
}
