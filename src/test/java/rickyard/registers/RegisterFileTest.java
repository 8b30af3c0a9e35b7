package rickyard.registers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RegisterFileTest {
  private static final String HEAD = "date,about,kind,value,start_on,by,why\n";
  private static final String TOLD = "2026-03-01,flint,told,clears,,ada,\"said\nby telephone\"\n";
  private static final String RELEASE = "2026-03-02,mill,release,0a,,ada,\n";

  private static RegisterFile file(String text) {
    return RegisterFile.of("decisions.csv", text.getBytes(StandardCharsets.UTF_8), text);
  }

  @Test
  void rowsAreCountedAsTheReaderCountsThemAlsoOverQuotedLines() {
    assertEquals(Optional.of(HEAD + TOLD), file(HEAD + TOLD + RELEASE).without(Set.of(3)));
    assertEquals(Optional.of(HEAD + TOLD), file(HEAD + RELEASE + TOLD).without(Set.of(2)));
  }

  @Test
  void aRowAddedWhereTheLastOneHadNoLineEndLeavesTheRestTheSame() {
    String bare = TOLD.stripTrailing();

    assertEquals(
        file(HEAD + bare).without(Set.of()), file(HEAD + bare + "\n" + RELEASE).without(Set.of(3)));
  }

  @Test
  void semicolonsSeparateTooAndBlankRowsCountForNothing() {
    String text = HEAD.replace(',', ';') + "\n" + TOLD.replace(',', ';') + "\n\n";

    assertEquals(
        file(HEAD.replace(',', ';') + TOLD.replace(',', ';')).without(Set.of()),
        file(text + RELEASE.replace(',', ';')).without(Set.of(6)));
  }

  @Test
  void aFileOfNothingButAHeaderAndWhatIsLeftOutIsAsIfItWereNotThere() {
    assertEquals(Optional.empty(), file(HEAD).without(Set.of()));
    assertEquals(Optional.empty(), file(HEAD + RELEASE).without(Set.of(2)));
  }
}
