package rickyard.morning;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.distribution.NormalDistribution;
import rickyard.morning.WorkedMix.Choice;
import rickyard.morning.WorkedMix.Fed;
import rickyard.morning.WorkedMix.Item;
import rickyard.morning.WorkedMix.Whole;

/**
 * Three proposals of the demo worked step by step from registers and analyses alone, with the
 * program's figure beside every result.
 */
final class WorkedExamplesPage {
  /** Guard factors of a risk of 20 % and of 5 %: quantiles of the normal distribution. */
  private static final double Z_20 = 0.8416212335729143;

  private static final double Z_5 = 1.6448536269514722;

  /** Standard uncertainty of a batch's sugar or starch on a label, points; config. */
  private static final double LABEL_U = 0.4;

  private static final double LIMIT = 10;

  /** Kilograms of a pound, exact. */
  private static final double POUND = 0.45359237;

  /** A result by hand and the program's. */
  record Check(String what, double byHand, double program) {}

  private final WorkedSources sources;
  private final StringBuilder page = new StringBuilder();
  private final List<Check> checks = new ArrayList<>();
  private final Item salt;
  private final Item balancer;

  WorkedExamplesPage(WorkedSources sources) {
    this.sources = sources;
    this.salt = sources.labelled("SALT", "", 0);
    this.balancer = sources.labelled("TUPPIN", "", 0);
    write();
  }

  String text() {
    return page.toString();
  }

  List<Check> checks() {
    return List.copyOf(checks);
  }

  private void line(String format, Object... values) {
    page.append(String.format(Locale.ROOT, format, values)).append('\n');
  }

  /** A result, said and held against the program's. */
  private String check(String what, double byHand, String program, int decimals) {
    checks.add(new Check(what, byHand, Double.parseDouble(program)));
    return String.format(Locale.ROOT, "%." + decimals + "f", byHand);
  }

  private void write() {
    line("# Worked examples");
    line("");
    line(
        "Three proposals of the demo (`java -jar target/rickyard.jar demo`, morning of 2026-03-16),"
            + " worked step by step from its registers and the figures in force in `analyses.csv`"
            + " with nothing but the arithmetic shown. `WorkedExamplesEndToEndTest` makes this page"
            + " from them again, holds it to this text, and holds every result to `remedies.csv`,"
            + " `horses.csv`, `diets.csv` and `changeover.csv` of the demo's morning; with"
            + " `-Drickyard.docs.write=true` it writes the page.");
    line("");
    line(
        "NSC is WSC + starch. A content of a diet is the mean by dry matter, c = Σ d·c / Σ d; its"
            + " standard uncertainty is u = √Σ(d·u)² / Σ d; the diet clears a limit L if"
            + " c + z·u ≤ L. z is 0.8416 at a risk of 20 %% and 1.6449 at 5 %%. A label that names a"
            + " most counts it in full, with no uncertainty.");
    juniper();
    comet();
    thimble();
  }

  private void juniper() {
    Item old = sources.hay("C25-108");
    Item added = sources.hay("C25-110");
    double oldKg = sources.ration("juniper", "C25-108");
    List<Fed> rest =
        List.of(
            new Fed(balancer, sources.ration("juniper", "TUPPIN")),
            new Fed(salt, sources.ration("juniper", "SALT")));
    line("");
    line("## Juniper: a blend of two lots; a fortified forage with its balancer pro rata");
    line("");
    line(
        "A pony of 320 kg, insulin-dysregulated: NSC of the whole diet at most 10 %% DM at a risk of"
            + " 20 %% (and at most 12 %% at 2.5 %%, which the result is checked against too). Hay"
            + " C25-108 lies just over the line; C25-110 is for sale at the co-op.");
    today("juniper", old, oldKg, rest);
    WorkedMix mix = new WorkedMix(old, oldKg, added, rest, LIMIT, Z_20);
    least(mix);
    Choice best = weigh("juniper", "1", "C25-110", "C25-108", mix);
    double kg = best.addedKg();
    line("");
    line("5. A month of 30 days, bales of 17 kg at 215 a tonne, 12,600 kg in stock:");
    line("");
    line(
        "   %s kg × 30 / 17 kg = %s bales a month; %s kg × 0.215 = %s a day.",
        plain(kg),
        check(
            "juniper bales",
            kg * 30 / sources.lot("C25-110", "bale_kg"),
            sources.remedy("juniper", "1", "C25-110").get("units_per_month"),
            2),
        plain(kg),
        check(
            "juniper cost",
            kg * added.price(),
            sources.remedy("juniper", "1", "C25-110").get("cost_per_day"),
            3));
    double left = left("   ", "C25-108", "hallowick", oldKg);
    line(
        "   Of C25-108 %s kg are left at the yard; %s kg a day make them last %s days, more than"
            + " the 30 that are asked for.",
        plain(left),
        plain(best.oldKg()),
        check(
            "juniper days",
            left / best.oldKg(),
            sources.remedy("juniper", "1", "C25-108").get("days_of_stock"),
            1));
    needs("juniper", mix.ration(kg, best.oldKg()), 1.26, 0.04, "", 6);
    line("");
    line("7. Changeover: a quarter more every 4 days, each amount to the nearest step:");
    line("");
    line("   | days | share | C25-108 | C25-110 |");
    line("   |---|---|---|---|");
    for (int step = 1; step <= 4; step++) {
      int day = 4 * step - 3;
      double share = step / 4.0;
      double goes = step == 4 ? best.oldKg() : nearest(oldKg + share * (best.oldKg() - oldKg));
      double comes = step == 4 ? kg : nearest(share * kg);
      line(
          "   | %s | %s | %s | %s |",
          step == 4 ? "from 13" : day + " to " + (day + 3),
          plain(share),
          check("juniper day " + day + " old", goes, "" + changeover(day, "C25-108"), 2),
          check("juniper day " + day + " new", comes, "" + changeover(day, "C25-110"), 2));
    }
    line("");
    line("### Its proposal 2, the least share of a fortified chop with the balancer pro rata");
    line("");
    fortified(old, oldKg, rest.get(0).kg(), rest.get(1));
  }

  private double changeover(int day, String item) {
    return sources.changeover("juniper", "1", day, item);
  }

  private void comet() {
    Item old = sources.hay("HAV-1");
    Item added = sources.hay("C25-101");
    double oldKg = sources.ration("comet", "HAV-1");
    List<Fed> rest =
        List.of(
            new Fed(balancer, sources.ration("comet", "TUPPIN")),
            new Fed(salt, sources.ration("comet", "SALT")));
    line("");
    line("## Comet: another lot, in pounds");
    line("");
    line(
        "A horse of 530 kg with the same limits. Its own hay HAV-1 exceeds after an amended report."
            + " Its client weighs in pounds: above 10 lb in whole ones.");
    today("comet", old, oldKg, rest);
    double kg = oldKg * old.dm() / added.dm();
    double pounds = Math.rint(kg / POUND);
    line("");
    line(
        "2. Equal dry matter of C25-101: %s kg × %.3f / %.3f = %.4f kg = %.4f lb, the nearest step"
            + " %s lb = %s kg.",
        plain(oldKg),
        old.dm(),
        added.dm(),
        kg,
        kg / POUND,
        check("comet lb", pounds, sources.remedy("comet", "3", "C25-101").get("then_lb"), 0),
        check(
            "comet kg", pounds * POUND, sources.remedy("comet", "3", "C25-101").get("then_kg"), 4));
    List<Fed> ration = new ArrayList<>(List.of(new Fed(added, pounds * POUND)));
    ration.addAll(rest);
    Whole whole = WorkedMix.whole(ration);
    var row = sources.remedy("comet", "3", "C25-101");
    line("");
    line(
        "3. Checked: c = %s, u = %s, c + 0.8416·u = %.4f ≤ 10: it clears. Bales of %s kg:"
            + " %.4f kg × 30 / %s kg = %s bales a month.",
        check("comet then c", whole.mean(), row.get("nsc_wsc_after"), 4),
        check("comet then u", whole.u(), row.get("u_after"), 4),
        whole.upper(Z_20),
        plain(sources.lot("C25-101", "bale_kg")),
        pounds * POUND,
        plain(sources.lot("C25-101", "bale_kg")),
        check(
            "comet bales",
            pounds * POUND * 30 / sources.lot("C25-101", "bale_kg"),
            row.get("units_per_month"),
            2));
    line("");
    line(
        "4. HAV-1 exceeds and cleared forage is at hand: no slow steps, the veterinarian is asked"
            + " first.");
  }

  private void thimble() {
    Item present = sources.hay("C25-101");
    Item coming = sources.hay("C25-111");
    double presentKg = sources.ration("thimble", "C25-101");
    double oldKg = presentKg * present.dm() / coming.dm();
    double fullDose = sources.ration("thimble", "TUPPIN");
    Fed pinch = new Fed(salt, sources.ration("thimble", "SALT"));
    line("");
    line("## Thimble: stay on the present hay; the least share of a controlled forage");
    line("");
    line(
        "A pony of 250 kg that has had laminitis: at most 10 %% DM at a risk of 5 %%. It is fed"
            + " C25-101; C25-111 is to take its place at equal dry matter, %s kg × %.3f / %.3f ="
            + " %.5f kg, and exceeds.",
        plain(presentKg), present.dm(), coming.dm(), oldKg);
    line("");
    line("### Proposal 1, stay");
    line("");
    Whole hold =
        WorkedMix.whole(List.of(new Fed(present, presentKg), new Fed(balancer, fullDose), pinch));
    var row = sources.remedy("thimble", "1", "C25-101");
    line(
        "c = %s, u = %s, c + 1.6449·u = %.3f ≤ 10: it clears.",
        check("thimble hold c", hold.mean(), row.get("nsc_wsc_after"), 4),
        check("thimble hold u", hold.u(), row.get("u_after"), 4),
        hold.upper(Z_5));
    line("");
    // rations.csv: Merlin ate 6.6 kg of the same delivery until his ration of 2026-03-02
    double merlinKg = 39 * 6.6;
    double left = left("", "C25-101", "tollow", presentKg) - merlinKg;
    line(
        "Merlin was fed 6.6 kg a day of it too, until 2026-03-02: 39 days, %s kg.",
        plain(merlinKg));
    line(
        "%s kg are left at the yard; at %s kg a day they last %s days.",
        plain(left),
        plain(presentKg),
        check("thimble hold days", left / presentKg, row.get("days_of_stock"), 1));
    line("");
    line("### Proposal 3, the least share of Meddlow Low-Sugar Chop");
    line("");
    line("Batch M2511 has a certificate. As it would be fed without a change:");
    Item chop = sources.certified("MEDDLOW", "M2511");
    List<Fed> rest = List.of(new Fed(balancer, fullDose), pinch);
    table(coming, oldKg, rest);
    WorkedMix mix = new WorkedMix(coming, oldKg, chop, rest, LIMIT, Z_5);
    least(mix);
    Choice best = weigh("thimble", "3", "MEDDLOW", "C25-111", mix);
    double kg = best.addedKg();
    double forage = kg * chop.dm() + best.oldKg() * coming.dm();
    line("");
    line(
        "5. Its share of the forage dry matter is %.4f / %.4f = %.0f %%. Bags of 20 kg at 13.4:"
            + " %s kg × 30 / 20 kg = %s bags a month; %s a day.",
        kg * chop.dm(),
        forage,
        100 * kg * chop.dm() / forage,
        plain(kg),
        check(
            "thimble bags",
            kg * 30 / 20,
            sources.remedy("thimble", "3", "MEDDLOW").get("units_per_month"),
            2),
        check(
            "thimble cost",
            kg * chop.price(),
            sources.remedy("thimble", "3", "MEDDLOW").get("cost_per_day"),
            3));
    line(
        "   A quarter and half of the forage are shown too, as not enough: at half, c + z·u is"
            + " %.2f.",
        WorkedMix.whole(mix.ration(2.25, 2.25)).upper(Z_5));
  }

  /** Balancer and share hang on each other; taken in turns they settle. */
  private void fortified(Item coming, double oldKg, double fullDose, Fed pinch) {
    Item chop = sources.labelled("LOWLAWN", "L2601", LABEL_U);
    double low = sources.feed("LOWLAWN", "L2601", "full_rate_pct_bw_low");
    double high = sources.feed("LOWLAWN", "L2601", "full_rate_pct_bw_high");
    line(
        "The chop is a whole ration at %s to %s %% of body weight; its share of that is"
            + " r = rate / max(%s, min(%s, all forage fed)), and (1 − r) of the %s kg of balancer"
            + " stays. Its label gives %.1f %% (u 0.4 for sugar and for starch).",
        plain(low), plain(high), plain(low), plain(high), plain(fullDose), chop.content());
    line("");
    line("1. The share depends on the balancer and the balancer on the share; in turns:");
    line("");
    line("   | balancer, kg | least chop, kg DM | chop, kg | hay, kg | r |");
    line("   |---|---|---|---|---|");
    double dose = fullDose;
    WorkedMix mix = mix(coming, oldKg, chop, dose, pinch);
    for (int turn = 0; turn < 4; turn++) {
      mix = mix(coming, oldKg, chop, dose, pinch);
      double x = mix.least();
      double chopKg = x / chop.dm();
      double hayKg = (mix.target() - x) / coming.dm();
      double r = share(chopKg, hayKg, low, high);
      line("   | %.5f | %.5f | %.5f | %.5f | %.5f |", dose, x, chopKg, hayKg, r);
      dose = (1 - r) * fullDose;
    }
    Choice best = mix.choices().get(0);
    double r = share(best.addedKg(), best.oldKg(), low, high);
    double weighed = nearest((1 - r) * fullDose);
    line("");
    line(
        "2. Weighable: %s kg of chop and %s kg of C25-108 are the nearest that clear and change"
            + " least. There r = %.4f and the balancer (1 − %.4f) × %s = %.4f kg, weighed %s kg.",
        check(
            "juniper chop",
            best.addedKg(),
            sources.remedy("juniper", "2", "LOWLAWN").get("then_kg"),
            2),
        check(
            "juniper hay",
            best.oldKg(),
            sources.remedy("juniper", "2", "C25-108").get("then_kg"),
            2),
        r,
        r,
        plain(fullDose),
        (1 - r) * fullDose,
        check(
            "juniper balancer",
            weighed,
            sources.remedy("juniper", "2", "TUPPIN").get("then_kg"),
            3));
    List<Fed> ration =
        List.of(
            new Fed(chop, best.addedKg()),
            new Fed(coming, best.oldKg()),
            new Fed(balancer, weighed),
            pinch);
    Whole whole = WorkedMix.whole(ration);
    var row = sources.remedy("juniper", "2", "LOWLAWN");
    line("");
    line(
        "3. Checked: c = %s, u = %s, c + 0.8416·u = %.4f ≤ 10: it clears.",
        check("juniper chop c", whole.mean(), row.get("nsc_wsc_after"), 4),
        check("juniper chop u", whole.u(), row.get("u_after"), 4),
        whole.upper(Z_20));
  }

  private WorkedMix mix(Item coming, double oldKg, Item chop, double dose, Fed pinch) {
    return new WorkedMix(coming, oldKg, chop, List.of(new Fed(balancer, dose), pinch), LIMIT, Z_20);
  }

  private double share(double chopKg, double hayKg, double low, double high) {
    double weight = sources.horse("juniper", "body_weight_kg");
    double rate = 100 * chopKg / weight;
    double all = 100 * (chopKg + hayKg) / weight;
    return Math.min(1, rate / Math.max(low, Math.min(high, all)));
  }

  private void today(String horse, Item old, double oldKg, List<Fed> rest) {
    List<Fed> ration = new ArrayList<>(List.of(new Fed(old, oldKg)));
    ration.addAll(rest);
    Whole whole = WorkedMix.whole(ration);
    line("");
    line("1. As fed now:");
    table(old, oldKg, rest);
    var row = sources.horseRow(horse);
    line("");
    line(
        "   %s kg of dry matter, c = %s, u = %s: c + 0.8416·u = %.2f, over 10.",
        check(horse + " dm", whole.dmKg(), row.get("dm_kg"), 4),
        check(horse + " c", whole.mean(), row.get("nsc_wsc_pct_dm"), 4),
        check(horse + " u", whole.u(), row.get("u"), 4),
        whole.upper(Z_20));
  }

  private void table(Item old, double oldKg, List<Fed> rest) {
    List<Fed> ration = new ArrayList<>(List.of(new Fed(old, oldKg)));
    ration.addAll(rest);
    line("");
    line("   | item | kg as fed | DM | kg DM | NSC, % DM | u |".replace("%", "%%"));
    line("   |---|---|---|---|---|---|");
    for (Fed f : ration) {
      line(
          "   | %s | %s | %.3f | %.4f | %.3f | %.4f |",
          f.item().name(),
          plain(f.kg()),
          f.item().dm(),
          f.dmKg(),
          f.item().content(),
          f.item().u());
    }
  }

  private void least(WorkedMix mix) {
    double[] q = mix.quadratic();
    double x = mix.least();
    line("");
    line(
        "2. x kg of dry matter of %s take the place of as much of the %.4f kg of %s. Then"
            + " Σ d·(c − 10) = P + Q·x with P = %.5f and Q = %.3f − %.3f = %.5f, and at the edge"
            + " z²·(x²·%.4f² + (%.4f − x)²·%.4f²) = (P + Q·x)².",
        mix.added().name(),
        mix.target(),
        mix.old().name(),
        mix.excess(),
        mix.added().content(),
        mix.old().content(),
        mix.slope(),
        mix.added().u(),
        mix.target(),
        mix.old().u());
    line(
        "   Multiplied out: %.5f·x² %+.5f·x %+.5f = 0; the root with P + Q·x < 0 is"
            + " **x = %.5f** kg of dry matter: %.4f kg as fed of %s and %.4f kg of %s.",
        q[0],
        q[1],
        q[2],
        x,
        x / mix.added().dm(),
        mix.added().name(),
        (mix.target() - x) / mix.old().dm(),
        mix.old().name());
  }

  private Choice weigh(String horse, String rank, String added, String old, WorkedMix mix) {
    List<Choice> choices = mix.choices();
    line("");
    line(
        "3. Steps of the scale: of all pairs of weighable amounts the one that clears at the least"
            + " price. The price of a change is 1 for each kg of dry matter added or taken away, 3"
            + " for each kg off equal dry matter and 0.001 for each unit of money"
            + " (`config/remedy.csv`). The four cheapest that clear, and of what would cost less the"
            + " one that comes nearest:");
    line("");
    line("   | %s, kg | %s, kg | c | u | c + z·u | price | |", added, old);
    line("   |---|---|---|---|---|---|---|");
    choices.stream().filter(Choice::clears).limit(4).forEach(c -> row(c, mix, "clears"));
    choices.stream()
        .filter(c -> !c.clears() && c.price() < choices.get(0).price())
        .min(Comparator.comparingDouble(c -> c.whole().upper(mix.z())))
        .ifPresent(c -> row(c, mix, "does not clear"));
    Choice best = choices.get(0);
    var proposal = sources.remedy(horse, rank, added);
    line("");
    line(
        "4. So **%s kg of %s and %s kg of %s**: c = %s, u = %s, chance of being over"
            + " Φ((c − 10)/u) = %s.",
        check(horse + " new kg", best.addedKg(), proposal.get("then_kg"), 2),
        added,
        check(horse + " old kg", best.oldKg(), sources.remedy(horse, rank, old).get("then_kg"), 2),
        old,
        check(horse + " then c", best.whole().mean(), proposal.get("nsc_wsc_after"), 4),
        check(horse + " then u", best.whole().u(), proposal.get("u_after"), 4),
        check(
            horse + " chance",
            new NormalDistribution()
                .cumulativeProbability((best.whole().mean() - LIMIT) / best.whole().u()),
            proposal.get("p_over_after"),
            3));
    return best;
  }

  private void row(Choice c, WorkedMix mix, String word) {
    line(
        "   | %s | %s | %.4f | %.4f | %.4f | %.4f | %s |",
        plain(c.addedKg()),
        plain(c.oldKg()),
        c.whole().mean(),
        c.whole().u(),
        c.whole().upper(mix.z()),
        c.price(),
        word);
  }

  /** Crude protein and calcium of the new ration against what the horse needs. */
  private void needs(
      String horse,
      List<Fed> ration,
      double proteinPerKg,
      double calciumPerKg,
      String batch,
      int n) {
    double weight = sources.horse(horse, "body_weight_kg");
    double protein = 0;
    double calcium = 0;
    for (Fed f : ration) {
      String id = f.item().name();
      boolean isHay = id.startsWith("C25");
      boolean isSalt = id.equals("SALT");
      double cp =
          isHay ? sources.value(id, batch, "CP") : isSalt ? 0 : sources.feed(id, "", "cp_pct_dm");
      protein += 10 * f.dmKg() * cp;
      calcium +=
          isHay
              ? 10 * f.dmKg() * sources.value(id, batch, "CA")
              : isSalt ? 0 : f.kg() * sources.feed(id, "", "ca_g_per_kg_af");
    }
    var cp = sources.diet(horse, "remedy", "CP");
    var ca = sources.diet(horse, "remedy", "CA");
    line("");
    line(
        "%d. Requirements, for example: crude protein %s g against %s × %s kg = %s g; calcium %s g"
            + " against %s × %s kg = %s g.",
        n,
        check(horse + " CP", protein, cp.get("supply"), 1),
        plain(proteinPerKg),
        plain(weight),
        check(horse + " CP need", proteinPerKg * weight, cp.get("requirement"), 1),
        check(horse + " Ca", calcium, ca.get("supply"), 2),
        plain(calciumPerKg),
        plain(weight),
        check(horse + " Ca need", calciumPerKg * weight, ca.get("requirement"), 2));
  }

  /** What is left of a delivery that this horse alone eats of. */
  private double left(String indent, String lot, String client, double kgPerDay) {
    var delivery = sources.delivery(lot, client);
    long days =
        ChronoUnit.DAYS.between(
            LocalDate.parse(delivery.get("opened_on")), LocalDate.of(2026, 3, 16));
    double kg = Double.parseDouble(delivery.get("kg"));
    line(
        indent + "Delivered %s kg of %s, opened on %s: %d days at %s kg a day are eaten.",
        plain(kg),
        lot,
        delivery.get("opened_on"),
        days,
        plain(kgPerDay));
    return kg - days * kgPerDay;
  }

  private static double nearest(double kg) {
    double step = WorkedMix.step(kg);
    return Math.rint(Math.floor(kg / step + 0.5 + 1e-9) * step * 1e6) / 1e6;
  }

  private static String plain(double value) {
    String text = String.format(Locale.ROOT, "%.4f", value);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
