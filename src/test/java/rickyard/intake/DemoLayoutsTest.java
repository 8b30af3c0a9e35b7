package rickyard.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Layout;
import rickyard.core.forage.Report;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/** The demo's reports by their layouts: one laboratory's are the same, two laboratories' differ. */
class DemoLayoutsTest {
  private static final Path INBOX = Path.of("fixtures", "office", "inbox");
  private static final Map<String, List<Report>> REPORTS = new TreeMap<>();

  @BeforeAll
  static void readAll() throws IOException {
    Intake intake =
        new Intake(
            new DocumentReader(),
            new Interpreter(DictionaryTables.load(Optional.empty())),
            ReadLimits.DEFAULT);
    try (var files = Files.list(INBOX)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        REPORTS.put(
            name,
            intake.read(Files.readAllBytes(file), name).documents().stream()
                .flatMap(d -> d.report().stream())
                .toList());
      }
    }
  }

  private static Layout layout(String file) {
    return REPORTS.get(file).get(0).layout();
  }

  @Test
  void reportsOfOneLayoutAreSeenAsTheSameInEveryKindOfFile() {
    for (List<String> same :
        List.of(
            List.of("CV-54990.pdf", "CV-55120.pdf", "CV-55138.pdf"),
            List.of("brindlecote-2026-0298.csv", "brindlecote-2026-0311.csv"),
            List.of("dunnockfield_26-118.csv", "dunnockfield_26-131.csv"),
            List.of("MD26-0077.txt", "MD26-0081.txt"),
            List.of("record-9013.txt", "record-9051.txt"),
            List.of("sablewick_S26-0399.pdf", "sablewick_S26-0420-preliminary.pdf"),
            List.of("certificate_7790.pdf", "certificate_7794.pdf"),
            List.of("yarrowhythe-3302.pdf", "yarrowhythe-3307.pdf"),
            List.of("pellowick-26-20551.csv", "march-results.zip"))) {
      Set<String> ids = new TreeSet<>();
      same.forEach(file -> ids.add(layout(file).id()));
      assertEquals(1, ids.size(), same::toString);
    }
  }

  @Test
  void twoLaboratoriesNeverShareALayout() {
    Map<String, String> labById = new TreeMap<>();
    REPORTS.values().stream()
        .flatMap(List::stream)
        .map(Report::layout)
        .filter(l -> !l.isNone())
        .forEach(l -> assertEquals(l.lab(), labById.computeIfAbsent(l.id(), id -> l.lab())));

    assertTrue(labById.size() >= 10, labById::toString);
  }

  @Test
  void columnsThatChangedPlacesAreAnotherLayout() {
    assertTrue(
        !layout("pellowick-26-20551.csv").id().equals(layout("pellowick-26-20590.csv").id()));
  }
}
