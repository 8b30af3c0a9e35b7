package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LayoutTableTest {
  private static final String HEADER = "layout_words,what,about,value,source,status\n";

  @TempDir Path config;

  private void office(String rows) {
    try {
      Files.writeString(config.resolve("layouts.csv"), HEADER + rows);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private List<String> problems(String row) {
    office(row);
    return assertThrows(
            UnusableTablesException.class, () -> DictionaryTables.load(Optional.of(config)))
        .problems()
        .stream()
        .map(TableProblem::message)
        .toList();
  }

  @Test
  void theBuiltInTableIsSound() {
    assertEquals(List.of(), LayoutTable.file(Optional.empty()).problems());
  }

  @Test
  void aRowOfTheOfficeMakesAnotherReader() {
    String before = DictionaryTables.load(Optional.empty()).digest();
    office("Brook Vale Forage Laboratory,basis,*,dm,letter of the laboratory,office\n");

    assertNotEquals(before, DictionaryTables.load(Optional.of(config)).digest());
  }

  @Test
  void aRowThatCannotBeUsedIsNamedWithItsCell() {
    String file = "office config/layouts.csv, row 2, column ";
    assertEquals(
        List.of(
            file
                + "\"what\": expected basis, unit, date-order, decimal-mark, carbohydrate or"
                + " nitrate-form, found \"bases\""),
        problems("Brook Vale,bases,*,dm,letter,office\n"));
    assertEquals(
        List.of(file + "\"value\": expected one of af, dm, found \"dry\""),
        problems("Brook Vale,basis,*,dry,letter,office\n"));
    assertEquals(
        List.of(file + "\"about\": expected a code, or * for all, found \"SUGGAR\""),
        problems("Brook Vale,basis,SUGGAR,dm,letter,office\n"));
    assertEquals(
        List.of(file + "\"about\": expected a code of analytes.csv, found \"*\""),
        problems("Brook Vale,carbohydrate,*,NSC_WSC,letter,office\n"));
    assertEquals(
        List.of(file + "\"value\": expected one of NSC_WSC, NSC_ESC, found \"WSC\""),
        problems("Brook Vale,carbohydrate,NSC,WSC,letter,office\n"));
    assertEquals(
        List.of(
            file
                + "\"layout_words\": expected words of the page that tell the layout, found"
                + " \";;\""),
        problems(";;,basis,*,dm,letter,office\n"));
    assertEquals(
        List.of(file + "\"source\": expected a source, found \"\""),
        problems("Brook Vale,basis,*,dm,,office\n"));
  }
}
