package rickyard.intake.interpret;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.core.forage.Method;

/**
 * The method that the report gives for all its figures, or for minerals and the rest apart, and the
 * letters that stand for methods in its table.
 *
 * <p>Wet chemistry makes a verdict sharper, so it is believed only where the report says it of
 * everything or of the group; an elements' method (ICP) never speaks for organic matter.
 */
final class Methods {
  private static final Set<String> MINERALS =
      Set.of("CA", "P", "MG", "K", "NA", "CL", "S", "FE", "ZN", "CU", "MN", "MO", "SE", "I", "CO");
  private static final Set<String> ELEMENTAL = Set.of("icp", "oes", "ms", "icpms", "xrf");
  private static final Set<Kind> KINDS = EnumSet.of(Kind.METHOD, Kind.SUBJECT, Kind.FILLER);
  private static final Pattern LEGEND =
      Pattern.compile("(?<![\\p{L}0-9])(?<sign>\\p{Lu}{1,3})\\s*[=:]\\s*(?<text>[^,;.=|]+)");

  private final Dictionary dictionary;
  private final Map<String, String> signs = new TreeMap<>();
  private final NavigableSet<String> ofMinerals = new TreeSet<>();
  private final NavigableSet<String> ofRest = new TreeSet<>();

  private Methods(Dictionary dictionary) {
    this.dictionary = dictionary;
  }

  static Methods in(Dictionary dictionary, List<Line> lines) {
    Methods methods = new Methods(dictionary);
    for (Line line : lines) {
      if (!line.isItem()) {
        if (!line.isSilent()) {
          methods.legend(line.text());
        }
        line.pieces().stream()
            .filter(p -> p.mark().has(Kind.METHOD) && p.heading().words().size() >= 2)
            .filter(p -> !LEGEND.matcher(p.text()).find())
            .forEach(p -> methods.sentence(p.text()));
      }
    }
    return methods;
  }

  private void legend(String text) {
    Matcher match = LEGEND.matcher(text);
    while (match.find()) {
      Meaning meaning = dictionary.read(match.group("text"), EnumSet.of(Kind.METHOD, Kind.FILLER));
      if (meaning.isWhole()) {
        meaning.only(Kind.METHOD).ifPresent(m -> signs.putIfAbsent(match.group("sign"), m));
      }
    }
  }

  private void sentence(String text) {
    for (String clause : text.split("[,;.:]\\s+|\\sand\\s(?=[^,;]*\\sby\\s)", -1)) {
      Meaning meaning = dictionary.read(clause, KINDS);
      Optional<String> method = meaning.only(Kind.METHOD).filter(m -> !m.equals("calc"));
      if (method.isEmpty()) {
        continue;
      }
      boolean elemental =
          meaning.phrases().stream()
              .filter(p -> p.kind() == Kind.METHOD)
              .anyMatch(p -> ELEMENTAL.contains(p.words().get(0)));
      boolean minerals =
          elemental
              || meaning.words().stream().anyMatch(w -> w.matches("minerals?|elements?|trace"));
      (minerals ? ofMinerals : ofRest).add(method.get());
    }
  }

  static boolean isMineral(String code) {
    return MINERALS.contains(code);
  }

  /** The method of an analyte's figure whose row says none. */
  Method of(String code) {
    NavigableSet<String> said =
        MINERALS.contains(code) && !ofMinerals.isEmpty() ? ofMinerals : ofRest;
    return said.size() == 1 ? Resolved.method(said.first()) : Method.UNKNOWN;
  }

  /** The method that a sign such as 'W' stands for, by the report's legend. */
  Optional<String> ofSign(String sign) {
    return Optional.ofNullable(signs.get(sign));
  }
}
