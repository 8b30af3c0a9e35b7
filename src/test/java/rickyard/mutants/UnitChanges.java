package rickyard.mutants;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.mutants.Paper.Spot;

/** Alterations of units and of words that state a basis. */
final class UnitChanges {
  private static final Pattern UNIT = Pattern.compile("%|g/kg");
  private static final Pattern DRY =
      Pattern.compile("(?i)in dry matter|on dry matter|dry matter|dry basis|D\\.M\\.|\\bTM\\b");
  private static final Pattern FED =
      Pattern.compile("(?i)as received|as fed|as-received|fresh|\\bFM\\b");

  private UnitChanges() {}

  /** The other unit in the cell that names it: of one line, or wherever it stands. */
  static boolean exchanged(Paper paper, GoodReport report, Random random) {
    List<Spot> spots = units(paper, report, random);
    boolean changed = false;
    for (Spot spot : spots) {
      Matcher found = UNIT.matcher(paper.text(spot));
      if (found.find() && !paper.text(spot).contains("mg/kg")) {
        String text = paper.text(spot);
        String other = found.group().equals("%") ? "g/kg" : "%";
        paper.set(spot, text.substring(0, found.start()) + other + text.substring(found.end()));
        changed = true;
      }
    }
    return changed;
  }

  static boolean dropped(Paper paper, GoodReport report, Random random) {
    List<Spot> spots = units(paper, report, random);
    boolean changed = false;
    for (Spot spot : spots) {
      String text = paper.text(spot);
      String other = text.replaceFirst("\\s*[(,]?\\s*(%|m?g/kg|ppm)\\)?", "");
      changed |= !other.equals(text);
      paper.set(spot, other);
    }
    return changed;
  }

  private static List<Spot> units(Paper paper, GoodReport report, Random random) {
    if (random.nextInt(3) > 0) {
      return Draw.any(report, random).map(s -> List.of(unit(paper, s))).orElse(List.of());
    }
    return report.sites().stream().map(s -> unit(paper, s)).distinct().toList();
  }

  private static Spot unit(Paper paper, Site site) {
    return site.unit()
        .orElse(UNIT.matcher(paper.text(site.label())).find() ? site.label() : site.value());
  }

  /** Cells that state a basis and are neither the name of an analyte nor its figure. */
  private static List<Spot> statements(Paper paper, GoodReport report) {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < paper.lines().size(); i++) {
      for (int j = 0; j < paper.lines().get(i).boxes().size(); j++) {
        Spot spot = new Spot(i, j);
        String text = paper.text(spot);
        boolean states = DRY.matcher(text).find() || FED.matcher(text).find();
        boolean named = report.sites().stream().anyMatch(s -> s.label().equals(spot));
        if (states && !named) {
          spots.add(spot);
        }
      }
    }
    return spots;
  }

  /** One statement goes, or all of them. */
  static boolean noSentence(Paper paper, GoodReport report, Random random) {
    List<Spot> spots = statements(paper, report);
    if (spots.isEmpty()) {
      return false;
    }
    if (random.nextBoolean()) {
      paper.set(spots.get(random.nextInt(spots.size())), "");
    } else {
      spots.forEach(s -> paper.set(s, ""));
    }
    return true;
  }

  /** One statement says the other basis, or all do; in a pair of headings only one does. */
  static boolean basisWord(Paper paper, GoodReport report, Random random) {
    List<Spot> spots = statements(paper, report);
    if (spots.isEmpty()) {
      return false;
    }
    if (random.nextBoolean()) {
      turn(paper, spots.get(random.nextInt(spots.size())));
    } else {
      spots.forEach(s -> turn(paper, s));
    }
    return true;
  }

  private static void turn(Paper paper, Spot spot) {
    String text = paper.text(spot);
    Optional<String> dry = first(DRY, text);
    Optional<String> fed = first(FED, text);
    String other = text;
    if (dry.isPresent()) {
      boolean german = dry.get().equals("TM");
      other = other.replace(dry.get(), german ? "FM" : "as fed");
    } else if (fed.isPresent()) {
      other = other.replace(fed.get(), fed.get().equals("FM") ? "TM" : "dry matter");
    }
    paper.set(spot, other);
  }

  private static Optional<String> first(Pattern pattern, String text) {
    Matcher found = pattern.matcher(text);
    return found.find() ? Optional.of(found.group()) : Optional.empty();
  }
}
