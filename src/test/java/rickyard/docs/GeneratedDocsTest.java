package rickyard.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The pages that list numbers are what the tables and the code say. With {@code
 * -Drickyard.docs.write=true} they are written, else compared.
 */
class GeneratedDocsTest {
  private static final boolean WRITES = Boolean.getBoolean("rickyard.docs.write");
  private static final Path DOCS = Path.of("docs");
  private static final Pattern SHARE =
      Pattern.compile("Of the \\d+ rows of numbers and rules in them [^.;]*");

  @Test
  void thePageOfFormulasIsCurrent() throws IOException {
    hold("formulas.md", new FormulasPage().text());
  }

  @Test
  void thePageOfTablesIsCurrent() throws IOException {
    hold("tables.md", new TablesPage().text());
  }

  @Test
  void thePageOfAgreementIsCurrent() throws IOException {
    hold("requirement-agreement.md", new AgreementPage().text());
  }

  /** README says in one sentence how much rests on memory. */
  @Test
  void theShareInReadmeIsThatOfTheTables() throws IOException {
    Path readme = Path.of("README.md");
    String text = Files.readString(readme, StandardCharsets.UTF_8);
    String share = new TablesPage().share();
    Matcher found = SHARE.matcher(text);
    assertTrue(found.find(), "README.md must say how much of the tables rests on memory");
    if (WRITES) {
      Files.writeString(readme, found.replaceFirst(Matcher.quoteReplacement(share)));
    } else {
      assertEquals(share, found.group());
    }
  }

  private static void hold(String name, String expected) throws IOException {
    Path page = DOCS.resolve(name);
    if (WRITES) {
      Files.writeString(page, expected, StandardCharsets.UTF_8);
    } else {
      assertEquals(
          expected,
          Files.readString(page, StandardCharsets.UTF_8),
          name + " is not current: write it again with -Drickyard.docs.write=true");
    }
  }
}
