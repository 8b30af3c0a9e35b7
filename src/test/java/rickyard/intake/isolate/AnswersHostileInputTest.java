package rickyard.intake.isolate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rickyard.bench.LongTable;
import rickyard.core.forage.SharedValues;
import rickyard.intake.ReadDocument;
import rickyard.intake.ReadFile;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.ReadingProgress;
import rickyard.tables.DictionaryTables;

/** The parent takes from a child only what an answer is made of, and only so much of it. */
class AnswersHostileInputTest {
  private static final Path INBOX = Path.of("fixtures", "office", "inbox");
  private static final long MOST = 64L << 20;
  private static boolean touched;

  /** Would run in the parent if its type were let through. */
  private static final class Trap implements Serializable {
    private static final long serialVersionUID = 1L;

    private void readObject(java.io.ObjectInputStream in) {
      touched = true;
    }
  }

  private static byte[] bytes(ReadFile file) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Answers.write(file, bytes);
    return bytes.toByteArray();
  }

  private static byte[] raw(Object object) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(object);
    }
    return bytes.toByteArray();
  }

  private static InputStream in(byte[] bytes) {
    return new ByteArrayInputStream(bytes);
  }

  private static ReadFile small() {
    return new ReadFile(
        List.of(new ReadDocument("", "0", 1, "csv", false, Optional.empty(), "empty", "Empty.")));
  }

  @Test
  void everyAnswerOfTheDemoComesBackAsItWas() throws IOException {
    var reader =
        ReaderMaker.usual(
            new ChildSetup(DictionaryTables.load(Optional.empty()), ReadLimits.DEFAULT),
            ReadingProgress.none());
    try (Stream<Path> files = Files.list(INBOX)) {
      for (Path file : files.sorted().toList()) {
        ReadFile read = reader.read(Files.readAllBytes(file), file.getFileName().toString());
        assertEquals(
            read, Answers.read(in(bytes(read)), MOST, new SharedValues()), file.toString());
      }
    }
  }

  @ParameterizedTest(name = "{0} samples")
  @ValueSource(ints = {499, 500, 501, 1_001})
  void aReportOfManySamplesComesBackAsItWas(int samples) throws IOException {
    var reader =
        ReaderMaker.usual(
            new ChildSetup(DictionaryTables.load(Optional.empty()), ReadLimits.DEFAULT),
            ReadingProgress.none());
    ReadFile read = reader.read(LongTable.wide(samples, 7), "wide.csv");
    byte[] whole = bytes(read);

    assertEquals(samples, read.documents().get(0).report().orElseThrow().samples().size());
    assertEquals(read, Answers.read(in(whole), MOST, new SharedValues()));
    byte[] cut = Arrays.copyOf(whole, whole.length - 1);
    assertThrows(IOException.class, () -> Answers.read(in(cut), MOST, new SharedValues()));
  }

  static Stream<Object> foreign() {
    return Stream.of(
        new Trap(),
        new ArrayList<>(List.of("x")),
        new java.util.HashMap<>(),
        new java.util.TreeSet<>(List.of("x")),
        new java.io.File("x"),
        "text",
        new long[1 << 20],
        new Object[] {new Trap()});
  }

  @ParameterizedTest
  @MethodSource("foreign")
  void anythingElseIsNoAnswerAndRunsNothing(Object foreign) throws IOException {
    byte[] bytes = raw(foreign);

    assertThrows(IOException.class, () -> Answers.read(in(bytes), MOST, new SharedValues()));
    assertTrue(!touched);
  }

  @Test
  void anAnswerThatBreaksOffAnywhereIsNoAnswer() throws IOException {
    byte[] whole = bytes(small());
    for (int length = 0; length < whole.length; length++) {
      byte[] part = Arrays.copyOf(whole, length);
      assertThrows(IOException.class, () -> Answers.read(in(part), MOST, new SharedValues()));
    }
  }

  @Test
  void anAnswerAboveItsLimitIsNoAnswer() throws IOException {
    byte[] whole = bytes(small());

    assertThrows(
        IOException.class, () -> Answers.read(in(whole), whole.length / 2, new SharedValues()));
  }

  @Test
  void listsThatClaimMoreThanTheLimitAreNotMade() throws IOException {
    byte[] claims = raw(new Object[40_000_000]);

    assertThrows(
        IOException.class,
        () -> Answers.read(in(Arrays.copyOf(claims, 60)), MOST, new SharedValues()));
  }

  @Test
  void changedBytesGiveAnErrorOrAnAnswerNeverAnythingElse() throws IOException {
    byte[] whole = bytes(small());
    java.util.Random random = new java.util.Random(7);
    for (int round = 0; round < 2000; round++) {
      byte[] changed = whole.clone();
      changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
      try {
        Answers.read(in(changed), MOST, new SharedValues());
      } catch (IOException expected) {
        assertTrue(!touched);
      }
    }
  }
}
