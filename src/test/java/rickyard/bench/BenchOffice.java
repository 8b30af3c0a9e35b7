package rickyard.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/**
 * An office of any size for benchmarks: a report of one page for each lot, a lot for each horse in
 * turn. One horse in ten is insulin dysregulated and is fed a lot over its limit: it needs another
 * ration. Everything is invented and the same for the same sizes.
 *
 * <p>{@code BenchOffice FOLDER REPORTS HORSES [pdf|csv]}
 */
public final class BenchOffice {
  /** One row of a report: its label, its unit, its decimals, its range on dry matter. */
  private record Row(String label, String unit, int decimals, double low, double high) {}

  private static final List<Row> ROWS =
      List.of(
          new Row("Crude protein", "%", 1, 7, 13),
          new Row("Soluble protein", "% CP", 0, 28, 45),
          new Row("Lysine", "%", 2, 0.28, 0.42),
          new Row("ADF", "%", 1, 30, 38),
          new Row("NDF", "%", 1, 50, 62),
          new Row("Lignin", "%", 1, 3.5, 6.5),
          new Row("WSC", "%", 1, 4, 7),
          new Row("ESC", "%", 1, 2.5, 3.9),
          new Row("Starch", "%", 1, 0.4, 1.2),
          new Row("Crude fat", "%", 1, 1.6, 2.8),
          new Row("Ash", "%", 1, 5, 9),
          new Row("DE", "Mcal/kg", 2, 1.9, 2.3),
          new Row("Calcium", "%", 2, 0.35, 0.6),
          new Row("Phosphorus", "%", 2, 0.2, 0.3),
          new Row("Magnesium", "%", 2, 0.13, 0.24),
          new Row("Potassium", "%", 2, 1.2, 2.2),
          new Row("Sodium", "%", 3, 0.01, 0.09),
          new Row("Chloride", "%", 2, 0.2, 0.7),
          new Row("Sulphur", "%", 2, 0.12, 0.2),
          new Row("Iron", "mg/kg", 0, 80, 240),
          new Row("Zinc", "mg/kg", 0, 18, 38),
          new Row("Copper", "mg/kg", 0, 4, 9),
          new Row("Manganese", "mg/kg", 0, 40, 120));

  private static final int EVERY = 10;
  private static final int FOR_SALE = 4;
  private static final PDType1Font FONT = new PDType1Font(FontName.HELVETICA);

  private BenchOffice() {}

  public static void main(String[] args) throws IOException {
    Path office = Path.of(args[0]);
    int reports = Integer.parseInt(args[1]);
    int horses = Integer.parseInt(args[2]);
    make(office, reports, horses, args.length < 4 || args[3].equals("pdf"));
  }

  /** Makes the office in a folder that is empty or not there. */
  public static void make(Path office, int reports, int horses, boolean pdf) throws IOException {
    Path inbox = Files.createDirectories(office.resolve("inbox"));
    Path registers = Files.createDirectories(office.resolve("registers"));
    for (int i = 0; i < reports; i++) {
      if (pdf) {
        Files.write(inbox.resolve("report-%05d.pdf".formatted(i)), page(i));
      } else {
        Files.writeString(inbox.resolve("report-%05d.csv".formatted(i)), table(i));
      }
    }
    registers(registers, reports, horses);
  }

  private static String lot(int i) {
    return "L%05d".formatted(i);
  }

  private static boolean isRich(int lot) {
    return lot % EVERY == 0;
  }

  private static double dm(int lot) {
    return 86 + lot % 60 / 10.0;
  }

  private static double value(int lot, int row) {
    Row r = ROWS.get(row);
    double at = new Random(lot * 1_000_003L + row * 7_919L).nextDouble();
    boolean sugar = isRich(lot) && (r.label().equals("WSC") || r.label().equals("ESC"));
    return r.low() + at * (r.high() - r.low()) + (sugar ? 7.5 : 0);
  }

  private static String text(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  private static double asFed(int lot, int row, double dry) {
    return ROWS.get(row).unit().endsWith("CP") ? dry : dry * dm(lot) / 100;
  }

  private static String table(int lot) {
    StringBuilder text = new StringBuilder("Lot,Sampled,Report,Analyte,Unit,As fed,Dry matter\n");
    String head = lot(lot) + ",2026-02-" + "%02d".formatted(1 + lot % 28) + ",B-" + lot + ",";
    text.append(head).append("Dry matter,%,").append(text(dm(lot), 1)).append(",100\n");
    for (int row = 0; row < ROWS.size(); row++) {
      Row r = ROWS.get(row);
      double dry = value(lot, row);
      text.append(head)
          .append(r.label())
          .append(',')
          .append(r.unit())
          .append(',')
          .append(text(asFed(lot, row, dry), r.decimals()))
          .append(',')
          .append(text(dry, r.decimals()))
          .append('\n');
    }
    return text.toString();
  }

  private static byte[] page(int lot) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(PDRectangle.A4);
      document.addPage(page);
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        put(out, 50, 800, 14, "Bench forage testing");
        put(out, 50, 776, 10, "Report: B-" + lot);
        put(out, 250, 776, 10, "Lot: " + lot(lot));
        put(out, 50, 760, 10, "Sampled: 2026-02-" + "%02d".formatted(1 + lot % 28));
        put(out, 250, 760, 10, "Material: grass hay");
        put(out, 50, 730, 10, "Determination");
        put(out, 230, 730, 10, "Unit");
        put(out, 330, 730, 10, "As fed");
        put(out, 430, 730, 10, "Dry matter");
        float y = 712;
        put(out, 50, y, 10, "Dry matter");
        put(out, 230, y, 10, "%");
        put(out, 330, y, 10, text(dm(lot), 1));
        for (int row = 0; row < ROWS.size(); row++) {
          Row r = ROWS.get(row);
          double dry = value(lot, row);
          y -= 18;
          put(out, 50, y, 10, r.label());
          put(out, 230, y, 10, r.unit());
          put(out, 330, y, 10, text(asFed(lot, row, dry), r.decimals()));
          put(out, 430, y, 10, text(dry, r.decimals()));
        }
      }
      document.setDocumentId((long) lot);
      java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static void put(PDPageContentStream out, float x, float y, float size, String text)
      throws IOException {
    out.beginText();
    out.setFont(FONT, size);
    out.newLineAtOffset(x, y);
    out.showText(text);
    out.endText();
  }

  private static void registers(Path folder, int reports, int horses) throws IOException {
    StringBuilder clients = new StringBuilder("client_id,name,email,phone,adviser,units\n");
    StringBuilder stable =
        new StringBuilder(
            "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
                + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
                + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd\n");
    StringBuilder rations =
        new StringBuilder("horse_id,item,batch,amount,unit,fed,meals,prepared,since\n");
    StringBuilder deliveries =
        new StringBuilder(
            "lot_id,client_id,kg,delivered_on,replaces,opens_on,opened_on,finished_on\n");
    StringBuilder lots =
        new StringBuilder(
            "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
                + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n");
    for (int i = 0; i < horses; i++) {
      int client = i / 3;
      if (i % 3 == 0) {
        clients
            .append(
                "c%05d,Yard %d,yard%d@bench.example,555-%04d,"
                    .formatted(client, client, client, client % 10_000))
            .append("adviser-")
            .append(client % 4)
            .append(",kg\n");
      }
      boolean ill = i % EVERY == 0 || i % EVERY == 5;
      stable.append(
          "h%05d,c%05d,Horse %d,horse,2012-05,%d,scale,2026-02-20,,,maintenance,average,,5,%s,2,no,0,no,none,\n"
              .formatted(i, client, i, 480 + i % 80, ill ? "insulin-dysregulation" : ""));
      String lot = lot(i % reports);
      rations.append("h%05d,%s,,9.5,kg,forage,3,dry,2026-02-01\n".formatted(i, lot));
      rations.append("h%05d,TUPPIN,,0.5,kg,bucket,2,dry,2026-02-01\n".formatted(i));
      rations.append("h%05d,SALT,,0.03,kg,bucket,2,dry,2026-02-01\n".formatted(i));
      deliveries.append("%s,c%05d,900,2026-03-01,,,2026-03-02,\n".formatted(lot, client));
    }
    for (int i = 0; i < reports; i++) {
      boolean sale = i % EVERY == 5 && i / EVERY < FOR_SALE;
      lots.append(
          "%s,%s,grass-hay,0,1,2025-07-08,%d,18,180,%s,20,2026-02-%02d,E. Roddle\n"
              .formatted(
                  lot(i),
                  sale ? "co-op" : "c%05d".formatted(Math.min(i, Math.max(0, horses - 1)) / 3),
                  sale ? 90_000 : 900,
                  sale ? "yes" : "no",
                  1 + i % 28));
    }
    write(folder, "clients.csv", clients);
    write(folder, "horses.csv", stable);
    write(folder, "rations.csv", rations);
    write(folder, "deliveries.csv", deliveries);
    write(folder, "lots.csv", lots);
    Files.copy(Path.of("fixtures/office/registers/feeds.csv"), folder.resolve("feeds.csv"));
  }

  private static void write(Path folder, String name, StringBuilder text) throws IOException {
    Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }
}
