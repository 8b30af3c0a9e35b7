package rickyard.second;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The feeds of a random office: most of them in it, their labels with gaps. */
final class RemedyFeeds {
  /** What a horse is given of a feed today. */
  record Fed(String id, String batch, double percentBw, String fed) {}

  private static final List<String> COLUMNS =
      List.of(
          "dm_pct",
          "cp_pct_dm",
          "lys_pct_dm",
          "adf_pct_dm",
          "ndf_pct_dm",
          "wsc_pct_dm",
          "wsc_kind",
          "esc_pct_dm",
          "esc_kind",
          "starch_pct_dm",
          "starch_kind",
          "ee_pct_dm",
          "ash_pct_dm",
          "de_mcal_per_kg_dm",
          "ca_g_per_kg_af",
          "p_g_per_kg_af",
          "mg_pct_dm",
          "k_pct_dm",
          "k_kind",
          "na_pct_dm",
          "cl_pct_dm",
          "fe_mg_per_kg_dm",
          "zn_mg_per_kg_dm",
          "cu_mg_per_kg_dm",
          "mn_mg_per_kg_dm",
          "se_mg_per_kg_dm",
          "i_mg_per_kg_dm",
          "vit_a_iu_per_kg_af",
          "vit_e_iu_per_kg_af");
  private static final List<String> ENDS =
      List.of(
          "bag_kg",
          "price_per_bag",
          "bagged_on",
          "shelf_life_months",
          "full_rate_pct_bw_low",
          "full_rate_pct_bw_high",
          "dose_kg_per_day_low",
          "dose_kg_per_day_high",
          "complete");

  final StringBuilder text;
  private final Draws draws;
  private final List<Fed> usual = new ArrayList<>();

  RemedyFeeds(Draws draws) {
    this.draws = draws;
    this.text = new StringBuilder("feed_id,name,role,form,batch,");
    text.append(String.join(",", COLUMNS)).append(',').append(String.join(",", ENDS)).append('\n');
    if (draws.chance(0.8)) {
      plainBag("plainbag", "b1", "2026-01-05");
      if (draws.chance(0.4)) {
        plainBag("plainbag", "b2", draws.of(List.of("2025-01-05", "2026-02-20")));
      }
    }
    if (draws.chance(0.6)) {
      completeBag();
    }
    if (draws.chance(0.7)) {
      balancer();
    }
    if (draws.chance(0.7)) {
      salt();
    }
    if (draws.chance(0.7)) {
      concentrate();
    }
    if (draws.chance(0.4)) {
      beetPulp();
    }
    if (draws.chance(0.4)) {
      strawBag();
    }
    if (draws.chance(0.5)) {
      vitaminE();
    }
  }

  /** Up to three of the feeds that a horse may have beside its hay. */
  List<Fed> drawRation(Draws d) {
    return usual.stream()
        .filter(f -> d.chance(f.fed().equals("bucket") ? 0.35 : 0.12))
        .limit(3)
        .toList();
  }

  private void plainBag(String id, String batch, String baggedOn) {
    Map<String, String> c = forage(3.5, 8.5, 1.2);
    ends(c, "20", "13.4", baggedOn, "12");
    add(id, "controlled-forage", form(), batch, c);
    usual.add(new Fed(id, batch, draws.between(0.2, 0.8), "forage"));
  }

  private void completeBag() {
    Map<String, String> c = forage(3, 6.5, 1.5);
    put(c, "lys_pct_dm", 0.45, 0.6, 2);
    put(c, "ca_g_per_kg_af", 7, 9, 1);
    put(c, "p_g_per_kg_af", 3, 4, 1);
    put(c, "na_pct_dm", 0.2, 0.4, 2);
    put(c, "zn_mg_per_kg_dm", 90, 130, 0);
    put(c, "cu_mg_per_kg_dm", 25, 35, 0);
    put(c, "mn_mg_per_kg_dm", 80, 110, 0);
    put(c, "se_mg_per_kg_dm", 0.2, 0.45, 2);
    put(c, "i_mg_per_kg_dm", 0.4, 0.7, 2);
    put(c, "vit_a_iu_per_kg_af", 4000, 6000, 0);
    put(c, "vit_e_iu_per_kg_af", 120, 200, 0);
    ends(c, "20", "17.9", "2026-01-12", "9");
    if (draws.chance(0.85)) {
      c.put("full_rate_pct_bw_low", "1.5");
      c.put("full_rate_pct_bw_high", "2.0");
    }
    c.put("complete", "yes");
    add("wholebag", "controlled-forage", form(), "w1", c);
    usual.add(new Fed("wholebag", "w1", draws.between(0.3, 1.2), "forage"));
  }

  private void balancer() {
    Map<String, String> c = new LinkedHashMap<>();
    c.put("dm_pct", "90");
    put(c, "cp_pct_dm", 16, 32, 0);
    put(c, "lys_pct_dm", 1, 2.4, 1);
    sugars(c, 4, 8, 5, draws.of(List.of("max", "typical", "")));
    put(c, "de_mcal_per_kg_dm", 2.5, 2.9, 1);
    put(c, "ca_g_per_kg_af", 15, 30, 0);
    put(c, "p_g_per_kg_af", 10, 18, 0);
    put(c, "mg_pct_dm", 1, 1.5, 1);
    gap(c, "k_pct_dm", 1, 1.8, 2);
    put(c, "na_pct_dm", 0.8, 1.2, 1);
    put(c, "zn_mg_per_kg_dm", 700, 1000, 0);
    put(c, "cu_mg_per_kg_dm", 200, 280, 0);
    put(c, "mn_mg_per_kg_dm", 350, 500, 0);
    put(c, "se_mg_per_kg_dm", 2, 3.5, 1);
    put(c, "i_mg_per_kg_dm", 3, 5, 1);
    put(c, "vit_a_iu_per_kg_af", 40000, 55000, 0);
    put(c, "vit_e_iu_per_kg_af", 1000, 1800, 0);
    ends(c, "20", "31.5", "2025-12-01", "9");
    if (draws.chance(0.85)) {
      c.put("dose_kg_per_day_low", "0.4");
      c.put("dose_kg_per_day_high", draws.of(List.of("0.5", "0.6", "")));
    }
    add("balancer", "balancer", "pellets", "", c);
    usual.add(new Fed("balancer", "", draws.between(0.08, 0.11), "bucket"));
  }

  private void salt() {
    Map<String, String> c = new LinkedHashMap<>();
    c.put("dm_pct", "99.5");
    c.put("na_pct_dm", "39.0");
    c.put("cl_pct_dm", "60.2");
    ends(c, "25", "8.5", "", "");
    if (draws.chance(0.3)) {
      c.put("dose_kg_per_day_low", "0.01");
      c.put("dose_kg_per_day_high", "0.05");
    }
    add("salt", "salt", "meal", "", c);
    usual.add(new Fed("salt", "", draws.between(0.003, 0.008), "bucket"));
  }

  private void concentrate() {
    Map<String, String> c = new LinkedHashMap<>();
    c.put("dm_pct", "88");
    put(c, "cp_pct_dm", 10, 15, 1);
    put(c, "lys_pct_dm", 0.4, 0.7, 2);
    sugars(c, 2, 8, 45, draws.of(List.of("typical", "max", "")));
    put(c, "de_mcal_per_kg_dm", 2.9, 3.3, 2);
    put(c, "ca_g_per_kg_af", 1, 10, 1);
    put(c, "p_g_per_kg_af", 3, 5, 1);
    gap(c, "k_pct_dm", 0.4, 1.2, 2);
    gap(c, "zn_mg_per_kg_dm", 30, 150, 0);
    gap(c, "cu_mg_per_kg_dm", 5, 40, 0);
    ends(c, "20", "15.6", "2026-01-10", "6");
    if (draws.chance(0.5)) {
      c.put("dose_kg_per_day_low", "0.5");
      c.put("dose_kg_per_day_high", "3.5");
    }
    add("workmix", "concentrate", "pellets", "", c);
    usual.add(new Fed("workmix", "", draws.between(0.05, 0.4), "bucket"));
  }

  private void beetPulp() {
    Map<String, String> c = new LinkedHashMap<>();
    c.put("dm_pct", "90.5");
    put(c, "cp_pct_dm", 8, 10, 1);
    sugars(c, 4, 7, 0.8, draws.of(List.of("max", "typical")));
    put(c, "de_mcal_per_kg_dm", 2.7, 2.9, 1);
    put(c, "ca_g_per_kg_af", 6, 9, 1);
    put(c, "p_g_per_kg_af", 0.8, 1.1, 1);
    gap(c, "k_pct_dm", 0.4, 0.7, 2);
    ends(c, "20", "12.1", "", "");
    add("beetpulp", "beet-pulp", "chopped", "", c);
    usual.add(new Fed("beetpulp", "", draws.between(0.05, 0.15), "bucket"));
  }

  private void strawBag() {
    Map<String, String> c = forage(1.5, 3.5, 0.8);
    put(c, "cp_pct_dm", 3, 4.5, 1);
    put(c, "de_mcal_per_kg_dm", 1.5, 1.7, 1);
    ends(c, "20", "7.9", "", "");
    add("strawbag", "straw", "chopped", "", c);
    usual.add(new Fed("strawbag", "", draws.between(0.2, 0.5), "forage"));
  }

  private void vitaminE() {
    Map<String, String> c = new LinkedHashMap<>();
    c.put("dm_pct", "99");
    c.put("wsc_pct_dm", "0");
    c.put("wsc_kind", "max");
    c.put("starch_pct_dm", "0");
    c.put("starch_kind", "max");
    c.put("de_mcal_per_kg_dm", "9.0");
    c.put("k_pct_dm", "0");
    c.put("k_kind", "max");
    c.put("vit_e_iu_per_kg_af", "12000");
    ends(c, "10", "38", "", "");
    if (draws.chance(0.8)) {
      c.put("dose_kg_per_day_low", "0.05");
      c.put("dose_kg_per_day_high", "0.25");
    }
    add("vite", "supplement", "meal", "", c);
    usual.add(new Fed("vite", "", draws.between(0.01, 0.04), "bucket"));
  }

  private String form() {
    return draws.of(List.of("chopped", "chopped", "cubes", "long-stem"));
  }

  private Map<String, String> forage(double lowWsc, double highWsc, double starch) {
    Map<String, String> c = new LinkedHashMap<>();
    put(c, "dm_pct", 88, 91, 1);
    put(c, "cp_pct_dm", 8, 12, 1);
    put(c, "adf_pct_dm", 33, 38, 1);
    put(c, "ndf_pct_dm", 55, 61, 1);
    sugars(c, lowWsc, highWsc, starch, draws.of(List.of("batch", "batch", "max", "typical")));
    put(c, "ee_pct_dm", 2, 3, 1);
    put(c, "ash_pct_dm", 6.5, 9, 1);
    put(c, "de_mcal_per_kg_dm", 1.95, 2.2, 2);
    put(c, "ca_g_per_kg_af", 3, 6, 1);
    put(c, "p_g_per_kg_af", 1.8, 2.6, 1);
    put(c, "mg_pct_dm", 0.15, 0.25, 2);
    gap(c, "k_pct_dm", 0.8, 1.6, 2);
    gap(c, "na_pct_dm", 0.03, 0.1, 2);
    gap(c, "fe_mg_per_kg_dm", 120, 220, 0);
    gap(c, "zn_mg_per_kg_dm", 18, 35, 0);
    gap(c, "cu_mg_per_kg_dm", 5, 9, 0);
    return c;
  }

  private void sugars(
      Map<String, String> c, double lowWsc, double highWsc, double starch, String kind) {
    if (draws.chance(0.92)) {
      put(c, "wsc_pct_dm", lowWsc, highWsc, 1);
      c.put("wsc_kind", kind);
      put(c, "starch_pct_dm", starch / 3, starch, 1);
      c.put("starch_kind", kind);
    }
    if (draws.chance(0.5)) {
      put(c, "esc_pct_dm", lowWsc * 0.5, lowWsc, 1);
      c.put("esc_kind", kind);
    }
  }

  private void ends(
      Map<String, String> c, String bag, String price, String baggedOn, String months) {
    c.put("bag_kg", draws.chance(0.85) ? bag : "");
    c.put("price_per_bag", draws.chance(0.85) ? price : "");
    c.put("bagged_on", baggedOn);
    c.put("shelf_life_months", baggedOn.isEmpty() ? "" : months);
    c.put("complete", "no");
  }

  private void gap(Map<String, String> c, String column, double low, double high, int decimals) {
    if (draws.chance(0.75)) {
      put(c, column, low, high, decimals);
    }
  }

  private void put(Map<String, String> c, String column, double low, double high, int decimals) {
    c.put(column, draws.printed(low, high, decimals));
  }

  private void add(String id, String role, String form, String batch, Map<String, String> cells) {
    text.append(String.join(",", id, id, role, form, batch));
    Stream.concat(COLUMNS.stream(), ENDS.stream())
        .forEach(c -> text.append(',').append(cells.getOrDefault(c, "")));
    text.append('\n');
  }
}
