package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Reading;
import rickyard.intake.grid.Grid;

/**
 * Reports damaged as people and machines damage them: the damage is asked about, never believed.
 */
class DamagePropertyTest {
  private static final int RUNS = 1500;
  private static final Set<String> AF =
      Set.of("As fed", "As received", "AF", "As sampled", "in der OS");
  private static final Set<String> DM =
      Set.of("Dry matter", "DM", "DM basis", "Dry basis", "in der TM");

  /** What is done to the rows of a report; empty if this report cannot be damaged so. */
  private interface Damage {
    Optional<List<List<String>>> apply(RandomReport truth, Random random);
  }

  @Test
  void swappedHeadingsAreNeverBelieved() {
    hold((truth, random) -> headed(truth).map(at -> swapped(truth, at)), true);
  }

  @Test
  void aHeadingThatIsGoneIsProvedOrAskedFor() {
    hold(
        (truth, random) ->
            headed(truth)
                .map(
                    at -> {
                      List<List<String>> rows = new ArrayList<>(truth.rows());
                      rows.remove((int) at);
                      return rows;
                    }),
        false);
  }

  @Test
  void aLineTenTimesTooLargeIsFoundWhereBothColumnsArePrinted() {
    hold(
        (truth, random) ->
            headed(truth)
                .filter(at -> truth.contents.size() >= 3)
                .flatMap(at -> scaled(truth, at, random)),
        false);
  }

  @Test
  void aStrayDecimalMarkIsNeverBelieved() {
    hold((truth, random) -> strayMark(truth, random), false);
  }

  @Test
  void aBlankStarchStaysUnknown() {
    for (int seed = 0; seed < RUNS; seed++) {
      Random random = new Random(seed);
      RandomReport truth = new RandomReport(random);
      Optional<List<List<String>>> rows = blankStarch(truth);
      if (rows.isPresent()) {
        for (Reading reading : LayoutPropertyTest.readings(grid(rows.get(), random))) {
          assertFalse(reading.analyte().value().equals("STARCH"), "seed " + seed + reading);
        }
      }
    }
  }

  private static void hold(Damage damage, boolean nothingSettled) {
    int done = 0;
    for (int seed = 0; seed < RUNS; seed++) {
      Random random = new Random(seed);
      RandomReport truth = new RandomReport(random);
      Optional<List<List<String>>> rows = damage.apply(truth, random);
      if (rows.isEmpty()) {
        continue;
      }
      done++;
      for (Reading reading : LayoutPropertyTest.readings(grid(rows.get(), random))) {
        Optional<String> wrong = LayoutPropertyTest.wrong(reading, truth);
        String where = "seed " + seed + ": ";
        assertTrue(wrong.isEmpty(), () -> where + wrong.orElse("") + "\n" + rows.get());
        boolean water = reading.analyte().value().equals("DM");
        assertTrue(!nothingSettled || water || !reading.isSettled(), where + reading);
      }
    }
    assertTrue(done > RUNS / 20, "only " + done + " reports could be damaged");
  }

  private static Grid grid(List<List<String>> rows, Random random) {
    return random.nextBoolean() ? RandomReport.table(rows) : RandomReport.page(rows, random);
  }

  /** The row with both headings. */
  private static Optional<Integer> headed(RandomReport truth) {
    for (int r = 0; r < truth.rows().size(); r++) {
      List<String> row = truth.rows().get(r);
      boolean both = row.stream().anyMatch(AF::contains) && row.stream().anyMatch(DM::contains);
      if (both && truth.contents.size() >= 2) {
        return Optional.of(r);
      }
    }
    return Optional.empty();
  }

  private static int column(List<String> row, Set<String> names) {
    for (int c = 0; c < row.size(); c++) {
      if (names.contains(row.get(c))) {
        return c;
      }
    }
    throw new IllegalStateException("no such column: " + row);
  }

  private static List<List<String>> swapped(RandomReport truth, int at) {
    List<List<String>> rows = new ArrayList<>(truth.rows());
    List<String> head = new ArrayList<>(rows.get(at));
    int wet = column(head, AF);
    int dry = column(head, DM);
    String text = head.get(wet);
    head.set(wet, head.get(dry));
    head.set(dry, text);
    rows.set(at, head);
    return rows;
  }

  private static Optional<List<List<String>>> scaled(RandomReport truth, int at, Random random) {
    List<List<String>> rows = new ArrayList<>(truth.rows());
    int dry = column(rows.get(at), DM);
    int line = at + 1 + random.nextInt(rows.size() - at - 1);
    List<String> row = new ArrayList<>(rows.get(line));
    String number = row.get(dry);
    int mark = Math.max(number.indexOf('.'), number.indexOf(','));
    if (mark < 1 || number.startsWith("0")) {
      return Optional.empty();
    }
    char[] text = number.toCharArray();
    text[mark] = text[mark + 1];
    text[mark + 1] = number.charAt(mark);
    String moved = new String(text).replaceFirst("[.,](?![0-9])", "");
    row.set(dry, moved);
    rows.set(line, row);
    return Optional.of(rows);
  }

  private static Optional<List<List<String>>> strayMark(RandomReport truth, Random random) {
    List<List<String>> rows = new ArrayList<>(truth.rows());
    int line = 3 + random.nextInt(rows.size() - 3);
    List<String> row = new ArrayList<>(rows.get(line));
    for (int c = 1; c < row.size(); c++) {
      if (row.get(c).matches("[0-9]+[.,][0-9]{1,2}")) {
        boolean comma = row.get(c).indexOf(',') > 0;
        row.set(c, comma ? row.get(c).replace(',', '.') : row.get(c).replace('.', ','));
        rows.set(line, row);
        return Optional.of(rows);
      }
    }
    return Optional.empty();
  }

  private static Optional<List<List<String>>> blankStarch(RandomReport truth) {
    List<List<String>> rows = new ArrayList<>();
    boolean found = false;
    for (List<String> row : truth.rows()) {
      if (row.get(0).matches("(?i)(starch|st\u00E4rke|amidon).*")) {
        found = true;
        List<String> blank = new ArrayList<>();
        for (String cell : row) {
          blank.add(cell.matches("[0-9].*") ? "" : cell);
        }
        rows.add(blank);
      } else {
        rows.add(row);
      }
    }
    return found ? Optional.of(rows) : Optional.empty();
  }
}
