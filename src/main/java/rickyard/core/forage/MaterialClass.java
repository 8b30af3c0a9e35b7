package rickyard.core.forage;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/** The kinds of material for which laboratories' errors differ. */
public enum MaterialClass {
  GRASS("grass"),
  LEGUME("legume"),
  CEREAL("cereal"),
  HAYLAGE("haylage"),
  STRAW("straw"),
  BAGGED("bagged");

  /**
   * From this share of legume on, a mixed hay counts as legume; our own assumption, the wider side.
   */
  private static final double LEGUME_FROM_PERCENT = 30;

  private static final Set<String> LEGUMES =
      Set.of("legume", "alfalfa", "lucerne", "luzerne", "clover", "sainfoin");
  private static final Set<String> CEREALS =
      Set.of("cereal", "oat", "oats", "barley", "wheat", "rye", "triticale", "grain");
  private static final Set<String> FERMENTED =
      Set.of("haylage", "silage", "baleage", "fermented", "wrapped");

  private final String code;

  MaterialClass(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }

  /** Whether it is dry-stored: limits on moisture of hay apply. */
  public boolean isDryStored() {
    return this != HAYLAGE && this != BAGGED;
  }

  /**
   * The class of a material as a register or a report names it.
   *
   * @param material for example {@code grass-hay}; blank counts as grass
   * @param legumePercent share of legume, %, if known; a mixed hay of unknown share counts as
   *     legume, for which NIR is the less certain
   */
  public static MaterialClass of(String material, OptionalDouble legumePercent) {
    Set<String> words = Set.of(distinct(material.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)));
    if (words.stream().anyMatch(FERMENTED::contains)) {
      return HAYLAGE;
    }
    if (words.contains("straw")) {
      return STRAW;
    }
    if (words.stream().anyMatch(LEGUMES::contains)) {
      return LEGUME;
    }
    if (words.stream().anyMatch(CEREALS::contains)) {
      return CEREAL;
    }
    boolean mixed = words.contains("mixed") || words.contains("mix");
    double share = legumePercent.orElse(mixed ? 100 : 0);
    return share >= LEGUME_FROM_PERCENT ? LEGUME : GRASS;
  }

  private static String[] distinct(String[] words) {
    return java.util.Arrays.stream(words).distinct().toArray(String[]::new);
  }
}
