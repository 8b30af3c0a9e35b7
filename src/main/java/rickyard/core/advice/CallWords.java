package rickyard.core.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Replacement;
import rickyard.core.quantity.Chance;
import rickyard.core.remedy.MassUnit;

/** The one sentence to say on the telephone; plain words, and the vet first where it must be. */
final class CallWords {
  private CallWords() {}

  /**
   * The sentence.
   *
   * @param takenBack whether that it clears was told and holds no longer, in words
   * @param coming what deliveries change in the ration
   * @param portions what will be fed
   * @param acute whether acute laminitis is on record
   * @param groups of limits that the horse belongs to
   * @param remedies proposals, best first, and the days of their changeovers
   */
  static String say(
      Horse horse,
      PriorityRule.Ruling ruling,
      Optional<String> takenBack,
      ComingRation coming,
      List<Portion> portions,
      boolean acute,
      Collection<String> groups,
      RemedyFinder.Found remedies) {
    if (!isCall(ruling)) {
      return "";
    }
    if (acute) {
      return horse.name()
          + " is on record with acute laminitis: the veterinarian decides what it is fed."
          + finding(ruling, portions);
    }
    return "About "
        + horse.name()
        + "."
        + takenBack.map(t -> " W" + t.substring(1) + ".").orElse("")
        + unopened(coming)
        + finding(ruling, portions)
        + (isOpen(ruling) ? OPEN : remedy(remedies))
        + signs(groups);
  }

  static boolean isCall(PriorityRule.Ruling ruling) {
    return ruling.priority() == Priority.CALL_NOW || ruling.priority() == Priority.CALL_TODAY;
  }

  private static final String OPEN = " Until that is known, please change nothing on your own.";

  private static boolean isOpen(PriorityRule.Ruling ruling) {
    LimitLine line = ruling.line();
    return line != null && (line.value() == null || line.pOver() == null);
  }

  /** What the owner may see before anybody else does, by what is on record of the horse. */
  static String signs(Collection<String> groups) {
    List<String> signs = new ArrayList<>();
    boolean muscle = groups.contains("PSSM");
    boolean potassium = groups.contains("HYPP");
    boolean feet = groups.contains("laminitis") || groups.contains("ID");
    if (feet || (!muscle && !potassium)) {
      signs.add("footsore");
    }
    if (muscle) {
      signs.add("stiff, sweating, unwilling to move");
    }
    if (potassium) {
      signs.add("weak, trembling, breathing noisily");
    }
    return " If it is "
        + String.join(", ", signs)
        + " or off its feed, ring the veterinarian first.";
  }

  /** A lot that is not open yet is best left shut. */
  private static String unopened(ComingRation coming) {
    return coming.replacements().stream()
        .map(Replacement::delivery)
        .filter(d -> d.openedOn().isEmpty())
        .findFirst()
        .map(
            d ->
                " Please do not open lot "
                    + d.lotId()
                    + d.opensOn().map(day -> ", planned for " + day + ",").orElse("")
                    + " before we have spoken.")
        .orElse("");
  }

  private static String finding(PriorityRule.Ruling ruling, List<Portion> portions) {
    LimitLine line = ruling.line();
    if (line == null) {
      return " " + ruling.reason() + ".";
    }
    String what = largest(portions).map(p -> " on " + p.food().id()).orElse("");
    boolean shared = line.reason().startsWith("shared bale ");
    if (line.value() == null || line.pOver() == null) {
      return " Its feed"
          + what
          + " cannot be judged yet: how much "
          + quantity(line.quantity())
          + " it holds is not known; the limit is "
          + limit(line)
          + ".";
    }
    return String.format(
        Locale.ROOT,
        " Its %s%s holds %s%.1f %s; the limit is %s. Chance of being over, from this test alone:"
            + " %s.",
        subject(line, shared),
        shared ? "" : line.subject().equals("lot") ? what.replace(" on ", " ") : what,
        line.high() == null ? "at least " : "",
        line.value(),
        of(line.unit(), quantity(line.quantity())),
        limit(line),
        line.high() == null ? Chance.atLeast(line.pOver()) : Chance.words(line.pOver()));
  }

  /** A limit may be of the whole ration, of a meal, or of the forage as it lies there. */
  private static String subject(LimitLine line, boolean shared) {
    if (shared) {
      return "shared bale";
    }
    return switch (line.subject()) {
      case "bucket-meal" -> "bucket meal";
      case "lot" -> "forage";
      default -> "ration";
    };
  }

  /** {@code % of starch in the dry matter}, {@code g/kg BW of starch}. */
  private static String of(String unit, String quantity) {
    return unit.equals("% DM")
        ? "% of " + quantity + " in the dry matter"
        : unit + " of " + quantity;
  }

  /** What would put it right, without the figures that stand on the page. */
  static String remedy(RemedyFinder.Found remedies) {
    return remedies.proposals().stream()
        .filter(Proposal::enough)
        .findFirst()
        .map(
            p ->
                " What would put it right: "
                    + p.why().split(": ", 2)[0]
                    + "."
                    + fetched(p)
                    + beforeItStarts(p, remedies.days()))
        .orElse(" Nothing in reach puts it right yet.");
  }

  /** What the change takes of items that are new in it: it has to be there first. */
  private static String fetched(Proposal proposal) {
    if (!OTHER_FORAGE.contains(proposal.kind())) {
      return "";
    }
    String items =
        proposal.items().stream()
            .filter(i -> i.nowKg() <= 0 && i.thenKg() > 0)
            .map(
                i ->
                    String.format(
                        Locale.ROOT,
                        "%.0f kg (%.0f lb) of %s",
                        MONTH_DAYS * i.thenKg(),
                        MONTH_DAYS * i.thenKg() / MassUnit.LB.kg(),
                        i.item()))
            .collect(Collectors.joining(" and "));
    return items.isEmpty()
        ? ""
        : " For 30 days that takes " + items + ": it must be at the yard first.";
  }

  private static final int MONTH_DAYS = 30;

  /** Another forage asks for the vet: at once it is a sudden change, in steps it takes time. */
  private static String beforeItStarts(Proposal proposal, List<ChangeoverLine> days) {
    if (!OTHER_FORAGE.contains(proposal.kind())) {
      return "";
    }
    boolean inSteps = days.stream().anyMatch(d -> d.rank() == proposal.rank() && d.day() > 1);
    return inSteps
        ? " It is phased in over days; ask the veterinarian before it starts."
        : " It would be at once: ask the veterinarian before it starts.";
  }

  private static final Set<String> OTHER_FORAGE = Set.of("swap", "blend", "controlled");

  private static String quantity(String quantity) {
    return switch (quantity) {
      case "nsc_wsc" -> "starch and sugar (WSC + starch)";
      case "nsc_esc" -> "starch and sugar (ESC + starch)";
      case "k" -> "potassium";
      case "se" -> "selenium";
      case "no3_n" -> "nitrate nitrogen";
      default -> quantity.replace('_', ' ');
    };
  }

  private static String limit(LimitLine line) {
    return plain(line.limit()) + (line.unit().startsWith("%") ? " %" : " " + line.unit());
  }

  private static String plain(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%s", value);
  }

  private static Optional<Portion> largest(List<Portion> portions) {
    return portions.stream()
        .filter(p -> p.food().isForage())
        .max(
            Comparator.comparingDouble(Portion::kgDm)
                .thenComparing(p -> p.food().key(), Comparator.reverseOrder()));
  }
}
