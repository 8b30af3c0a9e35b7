package rickyard.registers;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.tables.TableProblem;

class RegistersHostileInputTest {
  @TempDir private Path folder;

  private List<String> fatal(String file, byte[] bytes) {
    return new OfficeFolder(folder)
        .with(file, bytes).load().fatal().stream().map(TableProblem::message).toList();
  }

  private List<String> fatal(String file, String text) {
    return fatal(file, text.getBytes(UTF_8));
  }

  @Test
  void anEmptyFileIsNoTable() {
    String expected = "answers.csv: expected a header row, found \"an empty file\"";

    assertEquals(List.of(expected), fatal("answers.csv", ""));
    assertEquals(List.of(expected), fatal("answers.csv", "\uFEFF"));
    assertEquals(List.of(expected), fatal("answers.csv", "\n\n , \n"));
  }

  @Test
  void aHeaderAloneIsARegisterWithoutRows() {
    Loaded loaded =
        new OfficeFolder(folder).with("answers.csv", "question_id,answer,by,on,note").load();

    assertTrue(loaded.isClean());
    assertTrue(loaded.office().answers().isEmpty());
  }

  @Test
  void anotherEncodingIsRefusedWithTheRowOfTheFirstStrangeByte() {
    byte[] latin = OfficeFolder.CLIENTS.replace("Birch Farm", "Bürch").getBytes(ISO_8859_1);

    assertEquals(
        List.of(
            "clients.csv, row 3: expected text in UTF-8 (save the table as CSV UTF-8), found"
                + " \"byte fc in another encoding\""),
        fatal("clients.csv", latin));
    assertEquals(
        List.of(
            "clients.csv, row 1: expected text in UTF-8 (save the table as CSV UTF-8), found"
                + " \"text in UTF-16\""),
        fatal("clients.csv", OfficeFolder.CLIENTS.getBytes(UTF_16)));
  }

  @Test
  void aNulIsRefused() {
    assertEquals(
        List.of(
            "clients.csv, row 2: expected text in UTF-8 (save the table as CSV UTF-8), found"
                + " \"a NUL character\""),
        fatal("clients.csv", OfficeFolder.CLIENTS.replace("Ash", "A\0h")));
  }

  @Test
  void aColumnTwiceIsRefused() {
    assertEquals(
        List.of(
            "clients.csv, row 1, column \"name\": expected each column once, found \"name twice\""),
        fatal("clients.csv", OfficeFolder.CLIENTS.replace("phone", "Name")));
  }

  @Test
  void anOpenQuoteIsRefused() {
    assertEquals(
        List.of(
            "clients.csv, row 3: expected a CSV table with paired quotes, found \"a quote left"
                + " open\""),
        fatal("clients.csv", OfficeFolder.CLIENTS.replace("Birch Farm", "\"Birch Farm")));
  }

  @Test
  void lineEndsOfAllKindsAndAByteOrderMarkReadTheSame() {
    Office plain = new OfficeFolder(folder).load().office();
    for (String end : List.of("\r\n", "\r")) {
      Office other =
          new OfficeFolder(folder)
              .with("horses.csv", "\uFEFF" + OfficeFolder.HORSES.replace("\n", end))
              .load()
              .office();
      assertEquals(plain.horses(), other.horses());
    }
  }

  @Test
  void quotesMayHoldDelimitersAndLineEnds() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with(
                "decisions.csv",
                """
                date,about,kind,value,start_on,by,why
                2026-05-09,H1,told,,,Ash,"first, ""second\""
                third"
                2026-05-10,H2,told,,,Ash,
                """)
            .load();

    assertTrue(loaded.isClean());
    assertEquals("first, \"second\"\nthird", loaded.office().decisions().get(0).why());
    assertEquals(3, loaded.office().decisions().get(1).row());
  }

  @Test
  void aRowWithTooFewOrTooManyCellsTakesOnlyItsHorse() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with(
                "rations.csv",
                """
                horse_id,item,batch,amount,unit,fed,meals,prepared,since
                H1,L1,,8.5,kg,forage,3,soaked
                H2,L1,,8,5,kg,forage,3,soaked,2026-01-01
                H3,L1,,8,kg,forage,3,soaked,2026-01-01,,
                """)
            .load();

    assertEquals(List.of("H1", "H2"), loaded.concerned(Concern.HORSE));
    assertEquals(1, loaded.office().rations().size());
  }

  @Test
  void aHugeCellIsABadRowAndItsMessageStaysShort() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with(
                "lots.csv",
                OfficeFolder.LOTS.replace("co-op,haylage", "co-op," + "x".repeat(3_000_000)))
            .load();

    assertEquals(List.of("L2"), loaded.concerned(Concern.LOT));
    assertTrue(loaded.badRows().stream().allMatch(b -> b.message().length() < 300));
  }

  @Test
  void controlCharactersAndFormulasInKeysAreNoWayOut() {
    Loaded loaded =
        new OfficeFolder(folder)
            .with(
                "lots.csv",
                OfficeFolder.LOTS
                    + "\"L3\n\u001b[2J\",C1,straw,,,,,,,,,,\n'=1+1,C1,straw,,,,,,,,,,\n")
            .load();

    assertEquals(
        List.of(
            "lots.csv, row 4, column \"lot_id\": expected at most 200 characters on one line, found"
                + " \"L3\\u000a\\u001b[2J\""),
        loaded.badRows().stream().map(BadRow::message).toList());
    assertTrue(loaded.office().findLot("=1+1").isPresent());
  }

  @Test
  void aFolderInTheWayOfARegisterIsNamed() throws IOException {
    OfficeFolder office = new OfficeFolder(folder).without("answers.csv");
    Files.createDirectory(folder.resolve("answers.csv"));

    assertEquals(
        List.of("answers.csv: expected a file, found \"something else\""),
        office.load().fatal().stream().map(TableProblem::message).toList());
  }

  @Test
  void oneUnreadableRegisterDoesNotDrownTheOthersInErrors() {
    Loaded loaded = new OfficeFolder(folder).with("lots.csv", "\0").load();

    assertEquals(1, loaded.fatal().size());
    assertEquals(List.of(), loaded.badRows());
  }

  @Test
  void aHundredThousandRowsLoadInBoundedTime() {
    StringBuilder horses = new StringBuilder(OfficeFolder.HORSES);
    StringBuilder rations = new StringBuilder(OfficeFolder.RATIONS);
    for (int i = 0; i < 100_000; i++) {
      String id = "X" + i;
      horses.append(id).append(",C1,N,horse,,500,scale,,,,maintenance,,,5,,,,,,,,,\n");
      rations.append(i % 2 == 0 ? id : "Y" + i).append(",L1,,8,kg,forage,,,2026-01-01\n");
    }
    OfficeFolder office =
        new OfficeFolder(folder)
            .with("horses.csv", horses.toString())
            .with("rations.csv", rations.toString());

    Loaded loaded = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> office.load());

    assertEquals(100_004, loaded.office().horses().size());
    assertTrue(loaded.isUsable());
  }

  @Test
  void randomBytesAndRandomDamageNeverThrow() {
    long seed = 20260511L;
    Random random = new Random(seed);
    String[] files = {"horses.csv", "lots.csv", "feeds.csv", "rations.csv", "decisions.csv"};
    String[] texts = {
      OfficeFolder.HORSES,
      OfficeFolder.LOTS,
      OfficeFolder.FEEDS,
      OfficeFolder.RATIONS,
      OfficeFolder.DECISIONS
    };
    OfficeFolder office = new OfficeFolder(folder);
    for (int i = 0; i < 400; i++) {
      int which = random.nextInt(files.length);
      byte[] bytes = texts[which].getBytes(UTF_8);
      int hits = 1 + random.nextInt(6);
      for (int h = 0; h < hits; h++) {
        bytes[random.nextInt(bytes.length)] =
            (byte)
                (random.nextBoolean()
                    ? random.nextInt(256)
                    : ",;\t\n\r\"'=-9.".charAt(random.nextInt(11)));
      }
      office.with(files[which], bytes);
      Loaded loaded = office.load();
      assertFalse(loaded.office().files().isEmpty(), "seed " + seed + ", round " + i);
      office.with(files[which], texts[which]);
    }
  }
}
