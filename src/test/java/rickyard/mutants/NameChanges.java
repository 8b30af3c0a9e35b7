package rickyard.mutants;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import rickyard.mutants.Paper.Spot;

/** Alterations of names: of analytes and lots. */
final class NameChanges {
  private static final String CHARACTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ0123456789";

  private NameChanges() {}

  static boolean water(Paper paper, GoodReport report, Random random) {
    Optional<Site> dry = Draw.site(report, random, s -> s.code().equals("DM"));
    Optional<Site> wet = Draw.site(report, random, s -> s.code().equals("MOISTURE"));
    if (dry.isPresent() && wet.isPresent()) {
      if (random.nextBoolean()) {
        FigureChanges.exchange(paper, dry.get().value(), wet.get().value());
      } else {
        exchange(paper, dry.get(), wet.get());
      }
      return true;
    }
    dry.ifPresent(s -> rename(paper, s, "Moisture", "Wasser"));
    wet.ifPresent(s -> rename(paper, s, "Dry matter", "Trockensubstanz"));
    return dry.isPresent() || wet.isPresent();
  }

  private static void rename(Paper paper, Site site, String english, String german) {
    String name = site.name(paper);
    String tail = name.contains("(") ? name.substring(name.indexOf('(') - 1) : "";
    site.rename(paper, (name.startsWith("Trocken") ? german : english) + tail);
  }

  private static void exchange(Paper paper, Site a, Site b) {
    String name = a.name(paper);
    a.rename(paper, b.name(paper));
    b.rename(paper, name);
  }

  static boolean nitrate(Paper paper, GoodReport report, Random random) {
    Optional<Site> site = Draw.site(report, random, s -> s.code().equals("NO3_N"));
    site.ifPresent(s -> s.rename(paper, "Nitrate (NO3)"));
    return site.isPresent();
  }

  /** One carbohydrate under the other's name; the unit in the name stays. */
  static boolean named(Paper paper, GoodReport report, Random random, String code, String other) {
    Optional<Site> site = Draw.site(report, random, s -> s.code().equals(code));
    if (site.isEmpty()) {
      return false;
    }
    Optional<Site> twin = Draw.beside(report, site.get(), other);
    boolean copy = twin.isPresent() && random.nextBoolean();
    String name = site.get().name(paper);
    String tail = name.endsWith("(%)") ? " (%)" : name.endsWith(", %") ? ", %" : "";
    site.get().rename(paper, copy ? twin.get().name(paper) : other + tail);
    if (twin.isPresent() && random.nextInt(3) == 0) {
      Site gone = twin.get();
      if (gone.head().equals(Optional.of(gone.label()))) {
        paper.set(gone.value(), "");
      } else {
        paper.lines().get(gone.value().line()).boxes().clear();
      }
    }
    return true;
  }

  static boolean carbohydrates(Paper paper, GoodReport report, Random random) {
    Optional<Site> esc = Draw.site(report, random, s -> s.code().equals("ESC"));
    Optional<Site> wsc = esc.flatMap(s -> Draw.beside(report, s, "WSC"));
    wsc.ifPresent(w -> exchange(paper, esc.get(), w));
    return wsc.isPresent();
  }

  static boolean lotLetter(Paper paper, GoodReport report, Random random) {
    int sample = random.nextInt(report.report().samples().size());
    String lot = report.report().samples().get(sample).label();
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < paper.lines().size(); i++) {
      for (int j = 0; j < paper.lines().get(i).boxes().size(); j++) {
        if (!lot.isEmpty() && paper.text(new Spot(i, j)).contains(lot)) {
          spots.add(new Spot(i, j));
        }
      }
    }
    if (spots.isEmpty()) {
      return false;
    }
    int at = random.nextInt(lot.length());
    char other = CHARACTERS.charAt(random.nextInt(CHARACTERS.length()));
    String changed = lot.substring(0, at) + other + lot.substring(at + 1);
    spots.forEach(s -> paper.set(s, paper.text(s).replace(lot, changed)));
    return !changed.equals(lot);
  }
}
