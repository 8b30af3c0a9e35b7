package rickyard.morning;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole mornings of an office that changes its templates. */
class OfficeTemplatesEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  @TempDir Path office;

  private Path out() {
    return office.resolve("mornings").resolve(DAY.toString());
  }

  private void office() {
    SmallOffice small = new SmallOffice(office);
    small.lots(List.of("L-1"));
    small.write("inbox/note.txt", "no report\n");
    small.write(
        "registers/clients.csv",
        "client_id,name,email,phone,adviser,units,language\n"
            + "quarry,Quarry Fold,q@quarry.example,555-0190,ostrel,kg,de\n");
    small.write(
        "registers/horses.csv",
        "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
            + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
            + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to\n"
            + "Nan,quarry,Nan,pony,2014-05,260,scale,2026-02-09,,,maintenance,average,,5,"
            + "insulin-dysregulation,2,no,0,no,none,,,\n");
  }

  private void run() {
    OfficeFolders folders = SmallOffice.folders(office);
    folders.check();
    new Morning(
            folders,
            new Options("kg", new TreeSet<>(List.of("data", "page", "sheets", "letters"))),
            1,
            Progress.silent(),
            ledger -> {})
        .run(Optional.of(DAY), DAY);
  }

  private SortedMap<String, String> outputs() {
    try (Stream<Path> files = Files.walk(out())) {
      SortedMap<String, String> read = new TreeMap<>();
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        read.put(out().relativize(file).toString(), Files.readString(file, UTF_8));
      }
      return read;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aBrokenTemplateLeavesTheLastOutputsAndTheNextRunGoesOn() throws IOException {
    office();
    run();
    SortedMap<String, String> before = outputs();
    assertTrue(before.containsKey("sheets/+n+an.html"), before.keySet().toString());
    assertTrue(before.get("letters/quarry.eml").contains("Guten Tag Quarry Fold,"));
    assertTrue(before.get("run.json").contains("\"letters\" : 1"), before.get("run.json"));

    Path template = office.resolve("config/templates/letter/letter.txt");
    Files.createDirectories(template.getParent());
    Files.writeString(template, "Hallo\n[(${l.gretting()})]\n", UTF_8);
    for (int attempt = 0; attempt < 2; attempt++) {
      MorningFailedException failure = assertThrows(MorningFailedException.class, this::run);
      assertTrue(
          failure.getMessage().startsWith("config/templates/letter/letter.txt, line 2: "),
          failure.getMessage());
      assertEquals(before, outputs());
    }

    Files.writeString(template, "Hallo\n[(${l.greeting()})]\n", UTF_8);
    run();
    assertTrue(outputs().get("letters/quarry.eml").contains("Hallo\r\nGuten Tag Quarry Fold,"));
  }

  @Test
  void aFileThatIsNoTemplateIsNamed() throws IOException {
    office();
    Path template = office.resolve("config/templates/letters.html");
    Files.createDirectories(template.getParent());
    Files.writeString(template, "x", UTF_8);
    UsageException refused = assertThrows(UsageException.class, this::run);
    assertTrue(
        refused.getMessage().startsWith("config/templates/letters.html is no template; "),
        refused.getMessage());
    assertFalse(Files.exists(out()));
  }
}
