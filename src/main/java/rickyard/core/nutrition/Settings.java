package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;

/** The single numbers and choices of the diet evaluation, by name. */
public record Settings(SortedMap<String, Setting> byName) {

  public Settings {
    byName = Collections.unmodifiableSortedMap(new TreeMap<>(byName));
  }

  /**
   * One row of the table.
   *
   * @param name key
   * @param text the cell as written
   * @param number its number; NaN where it is a word
   * @param source where it comes from
   * @param others what other sources give for it
   */
  public record Setting(
      String name, String text, double number, Source source, List<OtherValue> others) {
    public Setting {
      requireNonNull(name, "name");
      requireNonNull(text, "text");
      requireNonNull(source, "source");
      others = List.copyOf(others);
    }
  }

  /** The setting of a name; the loader makes sure that all of them are there. */
  public Setting get(String name) {
    Setting found = byName.get(name);
    if (found == null) {
      throw new IllegalArgumentException("no setting " + name);
    }
    return found;
  }

  public double number(String name) {
    double number = get(name).number();
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("setting " + name + " is not a number");
    }
    return number;
  }

  public String text(String name) {
    return get(name).text();
  }

  /** The words of a list joined by semicolons, in order. */
  public List<String> words(String name) {
    return Arrays.stream(text(name).split(";", -1))
        .map(String::strip)
        .filter(w -> !w.isEmpty())
        .toList();
  }

  /** Whether a word is in a list, without making the list. */
  boolean lists(String name, String word) {
    String text = text(name);
    int from = 0;
    while (from <= text.length()) {
      int semicolon = text.indexOf(';', from);
      int to = semicolon < 0 ? text.length() : semicolon;
      if (to - from >= word.length() && text.substring(from, to).strip().equals(word)) {
        return !word.isEmpty();
      }
      from = to + 1;
    }
    return false;
  }

  /** Share of a horse's energy requirement that a kind of animal needs; 1 where no row says so. */
  public double energyFactor(HorseType type) {
    String name = "energy_factor_" + type.code().toLowerCase(Locale.ROOT);
    return byName.containsKey(name) ? number(name) : 1;
  }

  /** The low end of a body weight, kg: the weight itself less the error of how it was obtained. */
  public double lowEndKg(Horse horse) {
    return horse.bodyWeightKg() * (1 - weightErrorPercent(horse) / 100);
  }

  /** How far a body weight may be off for the way it was obtained, %. */
  double weightErrorPercent(Horse horse) {
    return number("weight_error_" + horse.weightBy().code() + "_pct");
  }
}
