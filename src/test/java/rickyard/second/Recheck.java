package rickyard.second;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Holds a changed ration against everything that the contract asks of a proposal: limits with the
 * guard band, lot limits of a forage fed alone, intake and forage floor, straw, tolerances and
 * ratios, label doses with the fortified share, stock for the horizon, reach, shelf life, form and
 * steps of the scale.
 *
 * <p>Readings of what the contract leaves open: a lot for sale is in reach whoever holds it; stock
 * is what is for sale or the client's own and what is left of what was delivered to it, and all
 * horses that eat of it count; it must last for what a proposal raises, and for all of a forage
 * that it changes; the only figure that a balancer's label gives is its dose.
 *
 * <p>It was written from the contract and the tables before the search was read, on the second
 * computation of diets. Only limits of severity stop or change bind.
 */
final class Recheck {
  private static final double TIE = 1e-9;
  private static final double POUND_KG = 0.45359237;
  private static final double LABEL_HORSE_KG = 500;

  /**
   * A changed ration as a proposal prints it.
   *
   * @param kind hold, swap, blend, controlled or bucket
   * @param nowKg today, by item
   * @param then as it would be fed
   */
  record Changed(String kind, SortedMap<String, Double> nowKg, List<Portioned> then) {
    Changed {
      nowKg = new TreeMap<>(nowKg);
      then = List.copyOf(then);
    }

    double now(Portioned p) {
      return nowKg.getOrDefault(p.food().key(), 0.0);
    }

    boolean isMore(Portioned p) {
      return p.kg() > now(p) * (1 + TIE);
    }

    boolean isOther(Portioned p) {
      return Math.abs(p.kg() - now(p)) > TIE * Math.max(p.kg(), now(p));
    }
  }

  private final Books books;
  private final RemedyStable stable;
  private final Groups groups;
  private final LocalDate day;
  private final boolean isKg;
  private final List<String> found = new ArrayList<>();

  Recheck(Books books, RemedyStable stable, LocalDate day, boolean isKg) {
    this.books = books;
    this.stable = stable;
    this.groups = new Groups(books);
    this.day = day;
    this.isKg = isKg;
  }

  /** What stands against the changed ration; a key word first. */
  List<String> objections(Map<String, String> horse, Changed changed) {
    found.clear();
    List<Portioned> then = changed.then().stream().filter(p -> p.kg() > 0).toList();
    Mixture mixture = new Mixture(books, then);
    Evaluated evaluated = new Evaluated(books, horse, day, mixture);
    limits(horse, mixture, then);
    lotAlone(horse, then);
    hazards(horse, then);
    intake(evaluated, mixture, then);
    tolerances(evaluated);
    energy(horse, changed, evaluated);
    doses(horse, changed, then);
    boolean changesForage =
        !changed.kind().equals("hold")
            && changed.then().stream().anyMatch(p -> p.food().isForage() && changed.isOther(p));
    for (Portioned p : then) {
      if (changed.isOther(p)) {
        step(p);
      }
      if (changed.isMore(p)) {
        reach(horse, p, changed.now(p));
      }
      if (changed.isMore(p) || (changesForage && p.food().isForage())) {
        stock(horse, p);
      }
    }
    return List.copyOf(found);
  }

  private void limits(Map<String, String> horse, Mixture mixture, List<Portioned> then) {
    groups
        .rulings(horse, mixture, then)
        .forEach(
            (id, ruling) -> {
              boolean isClear = ruling.ruling().word().equals("clears");
              if (!isClear && isBinding(books.find("limits", "limit_id", id).orElseThrow())) {
                found.add("limit " + id + " " + ruling.ruling().word());
              }
            });
  }

  private static boolean isBinding(Map<String, String> limit) {
    return List.of("stop", "change").contains(limit.get("severity"));
  }

  /** The limits of lots bind a forage that is fed alone. */
  private void lotAlone(Map<String, String> horse, List<Portioned> then) {
    List<Portioned> forage = then.stream().filter(p -> p.food().isForage()).toList();
    if (forage.size() != 1 || !stable.isLot(forage.get(0).food().key())) {
      return;
    }
    String lot = forage.get(0).food().key();
    SortedMap<String, LotRuling> rulings = stable.lotRulings(lot);
    for (Map<String, String> limit : groups.limits(horse, List.of("lot"))) {
      LotRuling ruling = rulings.get(limit.get("limit_id"));
      if (ruling != null && isBinding(limit) && !ruling.ruling().word().equals("clears")) {
        found.add("alone " + lot + " " + limit.get("limit_id") + " " + ruling.ruling().word());
      }
    }
  }

  /** What stops a lot and no limit of the diet counts, such as mould, no mixing takes away. */
  private void hazards(Map<String, String> horse, List<Portioned> then) {
    for (Map<String, String> limit : groups.limits(horse, List.of("lot"))) {
      boolean isCounted =
          books.find("limits", "subject", "diet", "quantity", limit.get("quantity")).isPresent();
      for (Portioned p : then) {
        LotRuling ruling =
            stable.isLot(p.food().key())
                ? stable.lotRulings(p.food().key()).get(limit.get("limit_id"))
                : null;
        boolean isStop = limit.get("severity").equals("stop") && !isCounted;
        if (isStop && ruling != null && !ruling.ruling().word().equals("clears")) {
          found.add("hazard " + p.food().key() + " " + limit.get("limit_id"));
        }
      }
    }
  }

  private void intake(Evaluated evaluated, Mixture mixture, List<Portioned> then) {
    String floor = evaluated.floor();
    if (floor.equals("refuse") || floor.equals("needs-vet-plan")) {
      found.add("floor " + floor);
    }
    double forage = mixture.forageDm();
    double straw =
        then.stream()
            .filter(p -> p.food().isStraw())
            .mapToDouble(p -> p.kg() * p.food().dryMatter().best() / 100)
            .sum();
    double most = Double.parseDouble(evaluated.rule().get("straw_hard_pct")) / 100;
    if (straw > most * forage * (1 + TIE)) {
      found.add("straw " + straw / forage);
    }
  }

  /** Ceilings of nutrients and of dry matter, and Ca:P below one. */
  private void tolerances(Evaluated evaluated) {
    evaluated
        .lines()
        .forEach(
            (code, line) -> {
              if (line.status().equals("above-ceiling")) {
                found.add("ceiling " + code);
              }
            });
    Line ratio = evaluated.lines().get("CA_P");
    double least = books.settingNumber("ca_p_refuse_below");
    boolean isReported = Double.isFinite(ratio.high()) && ratio.origin().equals(Num.REPORTED);
    if (isReported && ratio.supply() < least * (1 - TIE)) {
      found.add("ratio Ca:P " + ratio.supply());
    }
  }

  /** Reported energy does not move the body condition the wrong way by more than counts as even. */
  private void energy(Map<String, String> horse, Changed changed, Evaluated evaluated) {
    List<Portioned> fed = new ArrayList<>();
    for (Portioned p : changed.then()) {
      if (changed.now(p) > 0) {
        fed.add(new Portioned(p.food(), changed.now(p), 0, p.isBucket(), p.meals()));
      }
    }
    Line now = new Evaluated(books, horse, day, new Mixture(books, fed)).lines().get("DE");
    Line then = evaluated.lines().get("DE");
    if (!isReported(now) || !isReported(then) || now.requirement().isEmpty()) {
      return;
    }
    double need = now.requirement().getAsDouble();
    double even = books.settingNumber("energy_even_pct") / 100 * need;
    double score = Csv.number(horse.get("body_condition"));
    boolean isThin = score <= books.settingNumber("condition_thin_at_most");
    boolean isFat = score >= books.settingNumber("condition_fat_at_least");
    boolean mayLose =
        isFat && (horse.get("vet_plan").equals("yes") || !isProtected(horse, evaluated));
    if (!mayLose && then.supply() < Math.min(need, now.supply()) - even - 1e-5 * need) {
      found.add("energy " + then.supply() + " of " + need + ", now " + now.supply());
    }
    if (!isThin && then.supply() > Math.max(need, now.supply()) + even + 1e-5 * need) {
      found.add("energy " + then.supply() + " above " + need + ", now " + now.supply());
    }
  }

  private static boolean isReported(Line line) {
    return Double.isFinite(line.high()) && line.origin().equals(Num.REPORTED);
  }

  /** Donkeys, miniatures, pregnant, lactating and sick animals. */
  private static boolean isProtected(Map<String, String> horse, Evaluated evaluated) {
    return List.of("donkey", "miniature").contains(horse.get("type"))
        || evaluated.rule().get("state").equals("protected");
  }

  private void doses(Map<String, String> horse, Changed changed, List<Portioned> then) {
    double kg = Double.parseDouble(horse.get("body_weight_kg"));
    double left = 1 - Math.min(1, fortified(kg, then));
    for (Portioned p : then) {
      Map<String, String> label = stable.label(p.food().key());
      double share = p.food().role().equals("balancer") ? left : 1;
      boolean isForage = p.food().isForage();
      if (label.isEmpty() || isForage || !changed.isOther(p)) {
        continue;
      }
      double least = Csv.number(label.get("dose_kg_per_day_low")) * kg / LABEL_HORSE_KG * share;
      String top = label.get("dose_kg_per_day_high");
      boolean isOnlyFigure = top.isEmpty() && p.food().role().equals("balancer");
      double most = isOnlyFigure ? least : Csv.number(top) * kg / LABEL_HORSE_KG * share;
      if (p.food().role().equals("balancer") && !hasStepWithin(least, most)) {
        continue; // what is left of a dose may be finer than the scale
      }
      if (p.kg() < least * (1 - TIE)) {
        found.add("dose " + p.food().key() + " " + p.kg() + " below " + least);
      }
      if (p.kg() > most * (1 + TIE)) {
        found.add("dose " + p.food().key() + " " + p.kg() + " above " + most);
      }
    }
  }

  private boolean hasStepWithin(double leastKg, double mostKg) {
    double unit = isKg ? 1 : POUND_KG;
    double step = step(leastKg / unit);
    double first = Math.ceil(leastKg / unit / step - 1e-6) * step * unit;
    return Double.isNaN(mostKg) || first <= mostKg * (1 + TIE);
  }

  /** The share of the ration that fortified complete forages stand for. */
  private double fortified(double kg, List<Portioned> then) {
    double all =
        100 * then.stream().filter(p -> p.food().isForage()).mapToDouble(Portioned::kg).sum() / kg;
    double sum = 0;
    for (Portioned p : then) {
      Map<String, String> label = stable.label(p.food().key());
      if (p.food().isForage() && label.getOrDefault("complete", "no").equals("yes")) {
        double low = Csv.number(label.get("full_rate_pct_bw_low"));
        double high = Csv.number(label.get("full_rate_pct_bw_high"));
        double rate = 100 * p.kg() / kg;
        sum += Double.isNaN(low) ? 0 : rate / Math.max(low, Math.min(high, all));
      }
    }
    return sum;
  }

  /** A lot of the client's or for sale at the co-op; a batch within its shelf life; a form. */
  private void reach(Map<String, String> horse, Portioned p, double now) {
    String key = p.food().key();
    if (now == 0 && !stable.isInReach(key, horse.get("client_id"))) {
      found.add("reach " + key);
    }
    Map<String, String> label = stable.label(key);
    String months = label.getOrDefault("shelf_life_months", "");
    if (!months.isEmpty() && !label.get("bagged_on").isEmpty()) {
      LocalDate end = LocalDate.parse(label.get("bagged_on")).plusMonths(Long.parseLong(months));
      if (end.isBefore(day)) {
        found.add("shelf " + key + " " + end);
      }
    }
  }

  /** What is raised must last, and all of a forage that is changed. */
  private void stock(Map<String, String> horse, Portioned p) {
    OptionalDouble stock = stable.stockKg(p.food().key(), horse.get("client_id"));
    double horizon = setting("stock-horizon-days", "");
    double use = stable.othersKg(p.food().key(), horse) + p.kg();
    if (stock.isPresent() && use * horizon > stock.getAsDouble() * (1 + TIE)) {
      found.add("stock " + p.food().key() + " " + use * horizon + " of " + stock.getAsDouble());
    }
  }

  /** Whether a horse with bad teeth is newly given long stems, which it gets last. */
  boolean isHardToChew(Map<String, String> horse, Changed changed) {
    boolean isDental = List.of(horse.get("conditions").split(";", -1)).contains("dental");
    return isDental
        && changed.then().stream()
            .filter(p -> p.kg() > 0 && changed.now(p) == 0 && p.food().isForage())
            .map(p -> p.food().key())
            .anyMatch(
                k ->
                    stable.isLot(k)
                        || stable.label(k).getOrDefault("form", "").equals("long-stem"));
  }

  /** A multiple of the step of the scale for its size. */
  private void step(Portioned p) {
    double amount = isKg ? p.kg() : p.kg() / POUND_KG;
    double step = step(amount);
    double multiple = amount / step;
    if (Math.abs(multiple - Math.rint(multiple)) > 1e-6) {
      found.add(String.format(Locale.ROOT, "step %s %.6f by %s", p.food().key(), amount, step));
    }
  }

  private double step(double amount) {
    List<Map<String, String>> rows =
        books.rows("remedy", "setting", isKg ? "scale-step-kg" : "scale-step-lb").toList();
    return rows.stream()
        .filter(r -> r.get("key").isEmpty() || amount < Double.parseDouble(r.get("key")) - 1e-9)
        .mapToDouble(r -> Double.parseDouble(r.get("value")))
        .min()
        .orElseThrow();
  }

  private double setting(String name, String key) {
    return Double.parseDouble(
        books.find("remedy", "setting", name, "key", key).orElseThrow().get("value"));
  }

  /** Nutrients short of their requirement, with what their supply rests on. */
  SortedMap<String, String> shortOf(Map<String, String> horse, List<Portioned> portions) {
    List<Portioned> fed = portions.stream().filter(p -> p.kg() > 0).toList();
    SortedMap<String, String> shortOf = new TreeMap<>();
    new Evaluated(books, horse, day, new Mixture(books, fed))
        .lines()
        .forEach(
            (code, line) -> {
              if (line.status().equals("below")) {
                shortOf.put(code, line.origin());
              }
            });
    return shortOf;
  }

  /** Whether reports alone tell that something is short that is not short now. */
  boolean isNewlyShortByReports(
      Map<String, String> horse, List<Portioned> now, List<Portioned> then) {
    SortedMap<String, String> before = shortOf(horse, now);
    return shortOf(horse, then).entrySet().stream()
        .anyMatch(e -> e.getValue().equals(Num.REPORTED) && !before.containsKey(e.getKey()));
  }
}
