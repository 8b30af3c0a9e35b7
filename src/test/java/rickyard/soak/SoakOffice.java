package rickyard.soak;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rickyard.BuiltJar;

/** Offices made from the fixtures, large enough that there is something to interrupt. */
final class SoakOffice {
  static final String DAY = "2026-03-16";
  static final String NEXT_DAY = "2026-03-17";

  private static final Path DEMO = Path.of("fixtures", "office");
  private static final Path SKELETON = Path.of("src", "test", "resources", "skeleton-office");
  private static final Path REPORTS = Path.of("fixtures", "laboratories", "reports");

  /** Beside the demo's 40: mails, archives, workbooks, tables, pages of other laboratories. */
  private static final List<String> MORE =
      List.of(
          "Fwd_ Your results TH-8117.eml",
          "Results TH-8123.eml",
          "Your results TH-8102.eml",
          "hay from the creek field.eml",
          "two reports and a table.eml",
          "Hessbruck_Berichte.zip",
          "march reports.zip",
          "Hollin Gate HG-310.xlsx",
          "Informe_LFSQ_7741.xlsx",
          "Kestrelmoor lots Feb.xlsx",
          "ravensike 4410.xls",
          "Uitslag Z26-088.ods",
          "results_PM60113.html",
          "SBHT20718.txt",
          "thornquay_utf16.txt",
          "thornquay-feb.csv",
          "merrin_export_20260219.csv",
          "Aldermere 771.pdf",
          "CFS 58812 Dorrowby.pdf",
          "scan0007.pdf");

  private static final List<String> TWELVE =
      List.of(
          "CV-54990.pdf",
          "CV-54990-amended.pdf",
          "MD26-0083.xlsx",
          "brindlecote-2026-0298.csv",
          "empty.csv",
          "invoice-2231.pdf",
          "lab-results-WIL-2.eml",
          "march-results.zip",
          "record-9013.txt",
          "sablewick_S26-0420-preliminary.pdf",
          "scan2mail-copy.csv",
          "summer-price-list.csv");

  private static final int EVERY_NTH_HORSE = 4;

  private SoakOffice() {}

  /** The demo office with 60 files in its inbox and every fourth of its horses. */
  static Path sixty(Path office) throws IOException {
    BuiltJar.copy(DEMO, office);
    for (String name : MORE) {
      Files.copy(REPORTS.resolve(name), office.resolve("inbox").resolve(name));
    }
    try (Stream<Path> files = Files.list(office.resolve("inbox"))) {
      long count = files.count();
      if (count != 60) {
        throw new IllegalStateException(count + " files in the inbox");
      }
    }
    keepSomeHorses(office.resolve("registers"));
    return office;
  }

  private static void keepSomeHorses(Path registers) throws IOException {
    List<String> horses = Files.readAllLines(registers.resolve("horses.csv"));
    List<String> kept = new ArrayList<>(horses.subList(0, 1));
    Set<String> ids = new HashSet<>();
    for (int i = 1; i < horses.size(); i += EVERY_NTH_HORSE) {
      kept.add(horses.get(i));
      ids.add(horses.get(i).split(",", 2)[0]);
    }
    Files.write(registers.resolve("horses.csv"), kept);
    List<String> rations = Files.readAllLines(registers.resolve("rations.csv"));
    List<String> fed = new ArrayList<>(rations.subList(0, 1));
    rations.stream().skip(1).filter(r -> ids.contains(r.split(",", 2)[0])).forEach(fed::add);
    Files.write(registers.resolve("rations.csv"), fed);
  }

  /** Three horses and twelve files: tables, PDF, a workbook, a mail, an archive, three refused. */
  static Path twelve(Path office) throws IOException {
    BuiltJar.copy(SKELETON.resolve("registers"), office.resolve("registers"));
    Files.createDirectories(office.resolve("inbox"));
    for (String name : TWELVE) {
      Files.copy(DEMO.resolve("inbox").resolve(name), office.resolve("inbox").resolve(name));
    }
    return office;
  }

  /** Three horses and three files. */
  static Path three(Path office) throws IOException {
    BuiltJar.copy(SKELETON, office);
    return office;
  }

  static Path out(Path office) {
    return office.resolve("mornings").resolve(DAY);
  }
}
