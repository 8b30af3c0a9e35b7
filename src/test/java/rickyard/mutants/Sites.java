package rickyard.mutants;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.mutants.Paper.Box;
import rickyard.mutants.Paper.Line;
import rickyard.mutants.Paper.Spot;

/** Finds on the paper what a reading of it says is there. */
final class Sites {
  private static final Pattern FIGURE = Pattern.compile("[<≤]?\\s*[0-9]+([.,][0-9]+)?");
  private static final Pattern AS_FED =
      Pattern.compile("(?i).*(as received|as fed|as-received|as-fed|fresh).*");
  private static final int WIDE = 4;

  private final Paper paper;

  private Sites(Paper paper) {
    this.paper = paper;
  }

  static List<Site> of(Paper paper, Report report) {
    Sites finder = new Sites(paper);
    List<Site> sites = new ArrayList<>();
    for (int i = 0; i < report.samples().size(); i++) {
      sites.addAll(finder.sample(i, report.samples().get(i).readings()));
    }
    return sites;
  }

  private List<Site> sample(int number, List<Reading> readings) {
    Map<Reading, Spot> values = new HashMap<>();
    readings.forEach(r -> value(r).ifPresent(s -> values.put(r, s)));
    Map<Integer, Integer> perLine = new HashMap<>();
    values.values().forEach(s -> perLine.merge(s.line(), 1, Integer::sum));
    boolean wide = perLine.values().stream().anyMatch(n -> n >= WIDE);
    Map<Integer, Set<String>> words = wide ? Map.of() : words(values);
    List<Site> sites = new ArrayList<>();
    for (Reading reading : readings) {
      Spot value = values.get(reading);
      if (value != null) {
        Optional<Spot> head = head(value);
        Optional<Spot> label = wide ? head : label(value, words);
        label.ifPresent(l -> sites.add(site(number, reading, value, l, head)));
      }
    }
    return sites;
  }

  private Site site(int number, Reading reading, Spot value, Spot label, Optional<Spot> head) {
    Optional<Spot> twin = twin(value);
    return new Site(
        number,
        reading.analyte().value(),
        reading.rawBasis(),
        value,
        label,
        twin,
        unit(value, label, reading.rawUnit()),
        head,
        twin.flatMap(this::head));
  }

  private Optional<Spot> value(Reading reading) {
    for (int i = 0; i < paper.lines().size(); i++) {
      Line line = paper.lines().get(i);
      if (line.page() == reading.place().page() && line.number() == reading.place().row()) {
        return value(i, line, reading);
      }
    }
    return Optional.empty();
  }

  private Optional<Spot> value(int at, Line line, Reading reading) {
    List<Spot> same = new ArrayList<>();
    for (int j = 0; j < line.boxes().size(); j++) {
      String text = line.boxes().get(j).text();
      if (text.equals(reading.raw()) || text.endsWith(": " + reading.raw())) {
        same.add(new Spot(at, j));
      }
    }
    if (same.size() == 1) {
      return Optional.of(same.get(0));
    }
    return same.stream()
        .filter(s -> head(s).map(paper::text).filter(reading.place().column()::equals).isPresent())
        .findFirst();
  }

  /** The nearest text above that is no figure. */
  private Optional<Spot> head(Spot value) {
    for (int i = value.line() - 1; i >= 0; i--) {
      List<Box> boxes = paper.lines().get(i).boxes();
      for (int j = 0; j < boxes.size(); j++) {
        Box above = boxes.get(j);
        if (paper.box(value).isUnder(above)
            && paper.lines().get(i).page() == paper.lines().get(value.line()).page()
            && !FIGURE.matcher(above.text()).matches()) {
          return Optional.of(new Spot(i, j));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Spot> twin(Spot value) {
    List<Box> boxes = paper.lines().get(value.line()).boxes();
    List<Spot> others = new ArrayList<>();
    for (int j = 0; j < boxes.size(); j++) {
      Spot other = new Spot(value.line(), j);
      if (j != value.box()
          && FIGURE.matcher(boxes.get(j).text()).matches()
          && head(other).filter(h -> AS_FED.matcher(paper.text(h)).matches()).isPresent()) {
        others.add(other);
      }
    }
    return others.stream()
        .min(
            java.util.Comparator.comparingDouble(
                s -> Math.abs(paper.box(s).left() - paper.box(value).left())));
  }

  /** Different words in each column of the lines that hold figures. */
  private Map<Integer, Set<String>> words(Map<Reading, Spot> values) {
    Map<Integer, Set<String>> words = new HashMap<>();
    for (Spot spot : values.values()) {
      for (Box box : paper.lines().get(spot.line()).boxes()) {
        words.computeIfAbsent((int) box.left(), k -> new HashSet<>()).add(box.text());
      }
    }
    return words;
  }

  private Optional<Spot> label(Spot value, Map<Integer, Set<String>> words) {
    if (paper.text(value).contains(": ")) {
      return Optional.of(value);
    }
    List<Box> boxes = paper.lines().get(value.line()).boxes();
    Optional<Spot> best = Optional.empty();
    int most = 0;
    for (int j = 0; j < value.box(); j++) {
      Box box = boxes.get(j);
      int distinct = words.getOrDefault((int) box.left(), Set.of()).size();
      if (!FIGURE.matcher(box.text()).matches() && distinct >= most) {
        most = distinct;
        best = Optional.of(new Spot(value.line(), j));
      }
    }
    return best;
  }

  private Optional<Spot> unit(Spot value, Spot label, String rawUnit) {
    List<Box> boxes = paper.lines().get(value.line()).boxes();
    for (int j = 0; j < boxes.size(); j++) {
      Spot spot = new Spot(value.line(), j);
      String text = boxes.get(j).text();
      if (!rawUnit.isEmpty()
          && !spot.equals(label)
          && !spot.equals(value)
          && (text.equals(rawUnit) || text.startsWith(rawUnit + " "))) {
        return Optional.of(spot);
      }
    }
    return Optional.empty();
  }
}
