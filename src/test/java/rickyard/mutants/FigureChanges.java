package rickyard.mutants;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import rickyard.mutants.Paper.Spot;

/** Alterations of figures. */
final class FigureChanges {
  private FigureChanges() {}

  /** A line times a power of ten, in one column or all, with its decimals or with all digits. */
  static boolean scaled(Paper paper, GoodReport report, Random random, int power) {
    Optional<Site> site = Draw.any(report, random);
    boolean both = random.nextBoolean();
    boolean digits = random.nextBoolean();
    site.ifPresent(
        s -> {
          scale(paper, s.value(), power, digits);
          s.twin().filter(t -> both).ifPresent(t -> scale(paper, t, power, digits));
        });
    return site.isPresent();
  }

  private static void scale(Paper paper, Spot spot, int power, boolean digits) {
    String printed = Site.number(paper, spot);
    char mark = printed.contains(",") ? ',' : '.';
    String sign = printed.startsWith("<") ? "<" : "";
    BigDecimal number = new BigDecimal(printed.replaceAll("[<≤\\s]", "").replace(',', '.'));
    BigDecimal moved = number.scaleByPowerOfTen(power);
    BigDecimal shown =
        digits ? moved : moved.setScale(Math.max(0, number.scale()), RoundingMode.HALF_UP);
    Site.setNumber(paper, spot, sign + shown.toPlainString().replace('.', mark));
  }

  /** 11.2 as 1.12 or 112 in one cell. */
  static boolean pointMoved(Paper paper, GoodReport report, Random random) {
    Optional<Site> site =
        Draw.site(report, random, s -> Site.number(paper, s.value()).matches(".*[.,].*"));
    int power = random.nextInt(3) == 0 ? 1 : -1;
    site.ifPresent(s -> scale(paper, pick(s, random), power, true));
    return site.isPresent();
  }

  private static Spot pick(Site site, Random random) {
    return random.nextInt(3) == 0 ? site.twin().orElse(site.value()) : site.value();
  }

  /** The other decimal mark, in one cell or in all. */
  static boolean pointComma(Paper paper, GoodReport report, Random random) {
    List<Site> sites =
        random.nextBoolean()
            ? report.sites()
            : Draw.any(report, random).map(List::of).orElse(List.of());
    boolean changed = false;
    for (Site site : sites) {
      String number = Site.number(paper, site.value());
      String other = number.contains(",") ? number.replace(',', '.') : number.replace('.', ',');
      Site.setNumber(paper, site.value(), other);
      site.twin()
          .ifPresent(
              t ->
                  Site.setNumber(
                      paper,
                      t,
                      number.contains(",")
                          ? Site.number(paper, t).replace(',', '.')
                          : Site.number(paper, t).replace('.', ',')));
      changed |= !other.equals(number);
    }
    return changed;
  }

  static boolean noStarch(Paper paper, GoodReport report, Random random) {
    Optional<Site> site = Draw.site(report, random, s -> s.code().equals("STARCH"));
    boolean both = random.nextBoolean();
    site.ifPresent(
        s -> {
          Site.setNumber(paper, s.value(), "");
          s.twin().filter(t -> both).ifPresent(t -> Site.setNumber(paper, t, ""));
        });
    return site.isPresent();
  }

  /** From a line on, every figure stands a row too high or too low. */
  static boolean shifted(Paper paper, GoodReport report, Random random) {
    Optional<Site> drawn = Draw.any(report, random);
    if (drawn.isEmpty()) {
      return false;
    }
    List<Site> sites = column(report, drawn.get());
    if (sites.size() < 4) {
      return false;
    }
    int from = random.nextBoolean() ? 0 : random.nextInt(sites.size() - 2);
    List<Site> part = new ArrayList<>(sites.subList(from, sites.size()));
    if (random.nextBoolean()) {
      Collections.reverse(part);
    }
    boolean both = random.nextBoolean();
    for (int i = 0; i + 1 < part.size(); i++) {
      move(paper, part.get(i + 1), part.get(i), both);
    }
    paper.set(part.get(part.size() - 1).value(), kept(part.get(part.size() - 1), paper));
    return true;
  }

  private static List<Site> column(GoodReport report, Site drawn) {
    return report.sites().stream()
        .filter(s -> s.sample() == drawn.sample())
        .filter(s -> drawn.label().equals(drawn.value()) == s.label().equals(s.value()))
        .toList();
  }

  private static String kept(Site last, Paper paper) {
    return last.label().equals(last.value()) ? last.name(paper) + ": -" : "";
  }

  private static void move(Paper paper, Site from, Site to, boolean both) {
    Site.setNumber(paper, to.value(), Site.number(paper, from.value()));
    if (both && from.twin().isPresent() && to.twin().isPresent()) {
      Site.setNumber(paper, to.twin().get(), Site.number(paper, from.twin().get()));
    }
  }

  /** The row once more, the figure a fifth to a half smaller or larger. */
  static boolean twice(Paper paper, GoodReport report, Random random) {
    Optional<Site> site = Draw.any(report, random);
    if (site.isEmpty() || Site.number(paper, site.get().value()).isEmpty()) {
      return false;
    }
    Spot value = site.get().value();
    paper.repeat(value.line());
    Spot chosen = random.nextBoolean() ? value : new Spot(value.line() + 1, value.box());
    String printed = Site.number(paper, chosen);
    String bare = printed.replaceAll("[<≤\\s]", "").replace(',', '.');
    BigDecimal number = new BigDecimal(bare);
    BigDecimal factor = BigDecimal.valueOf(random.nextBoolean() ? 0.6 : 1.4);
    BigDecimal other =
        number.multiply(factor).setScale(Math.max(0, number.scale()), RoundingMode.HALF_UP);
    Site.setNumber(
        paper, chosen, printed.contains(",") ? other.toString().replace('.', ',') : other + "");
    return other.compareTo(number) != 0;
  }

  static boolean noDryMatter(Paper paper, GoodReport report, Random random) {
    Optional<Site> site = Draw.site(report, random, s -> s.code().equals("DM"));
    site.ifPresent(
        s -> {
          boolean wide = s.head().equals(Optional.of(s.label()));
          if (wide) {
            paper.set(s.value(), "");
          } else {
            paper.lines().get(s.value().line()).boxes().clear();
          }
        });
    return site.isPresent();
  }

  static boolean lessThan(Paper paper, GoodReport report, Random random) {
    Optional<Site> site = Draw.any(report, random);
    site.ifPresent(
        s -> {
          Spot spot = pick(s, random);
          String number = Site.number(paper, spot);
          Site.setNumber(paper, spot, number.startsWith("<") ? number.substring(1) : "<" + number);
        });
    return site.isPresent();
  }

  static boolean starchWsc(Paper paper, GoodReport report, Random random) {
    Optional<Site> starch = Draw.site(report, random, s -> s.code().equals("STARCH"));
    Optional<Site> wsc = starch.flatMap(s -> Draw.beside(report, s, "WSC"));
    if (wsc.isEmpty()) {
      return false;
    }
    boolean both = random.nextBoolean();
    exchange(paper, starch.get().value(), wsc.get().value());
    if (both && starch.get().twin().isPresent() && wsc.get().twin().isPresent()) {
      exchange(paper, starch.get().twin().get(), wsc.get().twin().get());
    }
    return true;
  }

  static void exchange(Paper paper, Spot a, Spot b) {
    String number = Site.number(paper, a);
    Site.setNumber(paper, a, Site.number(paper, b));
    Site.setNumber(paper, b, number);
  }
}
