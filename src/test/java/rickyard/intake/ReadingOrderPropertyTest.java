package rickyard.intake;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.interpret.Dictionary;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/**
 * A reader remembers what texts mean from one document to the next: whatever it has read before, a
 * document says the same as to a reader that has read nothing.
 */
class ReadingOrderPropertyTest {
  private static final Dictionary DICTIONARY = DictionaryTables.load(Optional.empty());

  /** The same texts mean other things in these: by the decimal mark, a legend, a key of columns. */
  private static final Map<String, String> CONTRARY =
      Map.of(
          "comma.csv",
          "Lot;L-1\nAnalyte;Unit;Dry matter\nWSC;%;7,25\nIron;mg/kg;1.234\nStarch;%;n.d.\n",
          "point.csv",
          "Lot,L-2\nAnalyte,Unit,Dry matter\nWSC,%,7.25\nIron,mg/kg,1.234\nStarch,%,n.d.\n",
          "legend.csv",
          "Lot,L-3\nAnalyte,Unit,Dry matter\nWSC,%,7.25\nStarch,%,n.d.\nn.d. = not determined\n",
          "key.csv",
          "Lot,L-4\nAnalyte,Unit,COL A,COL B\nDry matter,%,88.0,\nWSC,%,6.6,7.5\nStarch,%,0.9,1.0\n"
              + "COL A: as fed,,,\nCOL B: dry matter,,,\n",
          "otherkey.csv",
          "Lot,L-5\nAnalyte,Unit,COL A,COL B\nDry matter,%,,88.0\nWSC,%,7.5,6.6\nStarch,%,1.0,0.9\n"
              + "COL A: dry matter,,,\nCOL B: as fed,,,\n");

  private static Intake fresh() {
    return new Intake(new DocumentReader(), new Interpreter(DICTIONARY), ReadLimits.DEFAULT);
  }

  private static Map<String, byte[]> documents() throws IOException {
    Map<String, byte[]> all = new TreeMap<>();
    CONTRARY.forEach((name, text) -> all.put(name, text.getBytes(UTF_8)));
    try (var files = Files.list(Path.of("fixtures", "office", "inbox"))) {
      for (Path file : files.toList()) {
        all.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return all;
  }

  @Test
  void aDocumentSaysTheSameWhateverWasReadBefore() throws IOException {
    Map<String, byte[]> documents = documents();
    Map<String, ReadFile> alone = new TreeMap<>();
    documents.forEach((name, bytes) -> alone.put(name, fresh().read(bytes, name)));

    Random random = new Random(11);
    for (int round = 0; round < 3; round++) {
      List<String> order = new ArrayList<>(documents.keySet());
      Collections.shuffle(order, random);
      Intake intake = fresh();
      for (String name : order) {
        assertEquals(
            alone.get(name),
            intake.read(documents.getOrDefault(name, new byte[0]), name),
            "seed 11, round " + round + ", " + name + " of " + order);
      }
    }
  }

  @Test
  void theContraryDocumentsAreContrary() throws IOException {
    Map<String, byte[]> documents = documents();
    List<List<String>> raw = new ArrayList<>();
    for (String name : List.of("comma.csv", "point.csv", "legend.csv", "key.csv", "otherkey.csv")) {
      ReadFile read = fresh().read(documents.getOrDefault(name, new byte[0]), name);
      raw.add(
          read.documents()
              .get(0)
              .report()
              .orElseThrow()
              .samples()
              .get(0)
              .readings()
              .toString()
              .lines()
              .toList());
    }
    for (int i = 1; i < raw.size(); i++) {
      assertNotEquals(raw.get(i - 1), raw.get(i));
    }
  }
}
