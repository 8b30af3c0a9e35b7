package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;
import rickyard.report.about.AboutCard;

/** What is said on the telephone about a horse, a client and a lot. */
class OfficeAboutEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final Path SKELETON = Path.of("src", "test", "resources", "skeleton-office");

  @TempDir static Path folder;
  private static OfficeAbout office;

  @BeforeAll
  static void openOnce() throws IOException {
    office = open("office", "laminitis-past");
  }

  private static OfficeAbout open(String name, String condition) throws IOException {
    Path copy = folder.resolve(name);
    BuiltJar.copy(SKELETON, copy);
    Path horses = copy.resolve("registers/horses.csv");
    String text = Files.readString(horses, StandardCharsets.UTF_8);
    Files.writeString(horses, text.replace("laminitis-past", condition), StandardCharsets.UTF_8);
    return OfficeAbout.open(SmallOffice.folders(copy), DAY, "kg", Progress.silent());
  }

  private static List<AboutCard> about(String name) {
    return office.of(name);
  }

  private static String words(AboutCard card, String label) {
    return card.lines().stream()
        .filter(l -> l.label().equals(label))
        .map(AboutCard.Line::words)
        .collect(Collectors.joining("\n"));
  }

  @Test
  void aHorseHasRationVerdictToldHayAndNumber() {
    AboutCard moss = about("Moss").get(0);

    assertEquals("555-0122", moss.phone());
    assertTrue(words(moss, "ration").startsWith("SK-1 11.2 kg, "), words(moss, "ration"));
    assertEquals("no limit applies", words(moss, "verdict"));
    assertEquals("never", words(moss, "told"));
    // 900 kg opened on 4 February, 11.2 kg a day for 40 days: 452 kg, 40 days
    assertEquals("SK-1 for moss: 40 days, until 2026-04-24", words(moss, "hay"));
    assertEquals(40.0, moss.hayDays());

    AboutCard pip = about("pip").get(0);
    assertEquals(
        "2026-02-10: clears the chosen limit, by quillow (on the hay fed then)",
        words(pip, "told"));
    assertTrue(words(pip, "verdict").contains("chance of being over"), words(pip, "verdict"));
    assertFalse(pip.limitId().isEmpty());
  }

  @Test
  void aHorseThatAVeterinarianMustSeeFirstHasNoKilograms() throws IOException {
    AboutCard pip = open("acute", "laminitis-acute").of("pip").get(0);
    assertEquals("VET FIRST: no amounts without a veterinary plan", words(pip, "ration"));
    assertFalse(pip.toString().contains(" kg"), pip.toString());
  }

  @Test
  void aClientHasItsHorsesTheMostUrgentFirstAndItsHay() {
    AboutCard dell = about("dell end").get(0);

    assertEquals("client", dell.kind());
    assertEquals("dell@dell.example", words(dell, "mail"));
    assertTrue(words(dell, "Pip").contains(";"), dell.toString());
    // Pip is told to stay on SK-1: 400 kg opened on 22 January, 4.8 kg a day for 53 days
    assertEquals("SK-1 for pip: 30 days, until 2026-04-14", words(dell, "hay"));
  }

  @Test
  void aLotHasItsFigureItsStandingAndWhoEatsIt() {
    AboutCard lot = about("sk-1").get(0);

    assertEquals("lot", lot.kind());
    assertTrue(words(lot, "NSC").startsWith("WSC + starch "), words(lot, "NSC"));
    assertEquals("Moss", words(lot, "fed to"));
    assertEquals(
        "Dell End, SK-1 for pip: 30 days, until 2026-04-14\n"
            + "The Rise, SK-1 for moss: 40 days, until 2026-04-24",
        words(lot, "hay"));
    assertFalse(words(lot, "ID").isEmpty());
  }

  @Test
  void aNameThatMeansSeveralListsThemAndOneThatMeansNothingSaysSo() {
    assertEquals(List.of("SK-1", "SK-2", "SK-3"), about("sk").stream().map(AboutCard::id).toList());
    assertEquals(List.of("moss"), about("oss").stream().map(AboutCard::id).toList());
    assertThrows(UsageException.class, () -> about("nobody"));
  }
}
