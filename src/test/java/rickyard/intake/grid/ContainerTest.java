package rickyard.intake.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContainerTest {

  static byte[] zip(Object... namesAndBytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (int at = 0; at < namesAndBytes.length; at += 2) {
        zip.putNextEntry(new ZipEntry((String) namesAndBytes[at]));
        zip.write((byte[]) namesAndBytes[at + 1]);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return out.toByteArray();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void aZipGivesItsFilesWithCleanNames() {
    byte[] table = utf8("a,b\nc,d\n");
    List<Part> parts =
        Looking.parts(
            Looking.open(
                zip(
                    "one.csv",
                    table,
                    "../../etc/passwd",
                    table,
                    "C:\\x\\y.csv",
                    table,
                    "..",
                    table)));
    assertEquals(
        List.of("one.csv", "etc/passwd", "C_/x/y.csv", "part-4"),
        parts.stream().map(Part::name).toList());
    assertEquals(new Part("one.csv", table), parts.get(0));
  }

  @Test
  void aMailGivesBodyAndAttachments() {
    String attached = Base64.getEncoder().encodeToString(utf8("ADF;36,2\nNDF;50,1\n"));
    String mail =
        """
        From: lab@example.org
        To: office@example.org
        Date: Mon, 2 Nov 2026 08:00:00 +0000
        Subject: your hay
        MIME-Version: 1.0
        Content-Type: multipart/mixed; boundary="outer"

        --outer
        Content-Type: multipart/alternative; boundary="inner"

        --inner
        Content-Type: text/plain; charset=utf-8

        ADF 36.2
        --inner
        Content-Type: text/html; charset=windows-1252
        Content-Transfer-Encoding: quoted-printable

        <p>Gr=FC=DFe</p><table><tr><td>ADF</td><td></td><td>36.2</td></tr></table>
        --inner--
        --outer
        Content-Type: application/octet-stream; name="r.csv"
        Content-Disposition: attachment; filename="../r.csv"
        Content-Transfer-Encoding: base64

        %s
        --outer--
        """
            .formatted(attached);
    Opened opened = Looking.open(mail.replace("\n", "\r\n"));
    assertEquals("mail", opened.kind());
    List<Part> parts = Looking.parts(opened);
    assertEquals(List.of("body-1.html", "r.csv"), parts.stream().map(Part::name).toList());
    assertEquals(
        "1: 1=Grüße\n2: 1=ADF | 3=36.2",
        Looking.rows(Looking.grid(Looking.open(parts.get(0).bytes()))));
    assertEquals(
        "1: 1=ADF | 2=36,2\n2: 1=NDF | 2=50,1",
        Looking.rows(Looking.grid(Looking.open(parts.get(1).bytes()))));
  }

  @Test
  void aTableThatBeginsLikeAMailIsATable() {
    Opened opened = Looking.open("From:,north field\nLot:,H1\nDate:,2026-05-03\nADF,36.2\n");
    assertEquals("csv", opened.kind());
  }

  @Test
  void htmlSpansKeepColumnsAndHiddenRowsDoNotCount() {
    Opened opened =
        Looking.open(
            """
            <html><body><h1>Report</h1>Lot H1<br>cut 1
            <table><tr><th rowspan=2>Analyte</th><th colspan=2>Result</th></tr>
            <tr><th>As fed</th><th>Dry</th></tr>
            <tr><td>ADF</td><td>&nbsp;</td><td>36.2</td></tr>
            <tr style="display: none"><td>NSC</td><td>1</td><td>2</td></tr></table>
            </body></html>
            """);
    Grid grid = Looking.grid(opened);
    assertEquals(
        "1: 1=Report\n2: 1=Lot H1\n3: 1=cut 1\n4: 1=Analyte | 2=Result\n5: 2=As fed | 3=Dry\n6: 1=ADF | 3=36.2",
        Looking.rows(grid));
    assertEquals(List.of("hidden-text"), grid.cautions());
    assertEquals(299, grid.pages().get(0).rows().get(3).cells().get(1).right());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "class=h",
        "class='x g'",
        "style='position:absolute; left:-9999px'",
        "style='text-indent: -9999px'",
        "style='height:0;overflow:hidden'",
        "style='transform:scale(0)'",
        "style='FONT-SIZE: 0'",
        "style='color: #FFF'",
        "style='color:white;background:white'"
      })
  void whatAPagesStylesHideIsLeftOut(String way) {
    Opened opened =
        Looking.open(
            "<html><head><style>p{color:red} .h{display:none} td>b{} /* .v{*/ @media screen{.g {"
                + " visibility : hidden}}</style></head><body><table><tr><td>ADF</td><td>36.2</td>"
                + "</tr><tr "
                + way
                + "><td>Starch</td><td>0.3</td></tr></table></body></html>");
    Grid grid = Looking.grid(opened);
    assertEquals("1: 1=ADF | 2=36.2", Looking.rows(grid));
    assertEquals(List.of("hidden-text"), grid.cautions());
  }

  @Test
  void everythingInAFileIsUnfoldedOnce() {
    byte[] table = utf8("a,b\nc,d\n");
    byte[] file = zip("in.zip", zip("x.csv", table), "x.csv", table, "pic", new byte[] {0, 1});
    List<Unfolding.Leaf> leaves =
        Unfolding.of(new DocumentReader(), file, "f.zip", ReadLimits.DEFAULT);
    assertEquals(
        List.of("", "in.zip", "in.zip!x.csv", "x.csv", "pic"),
        leaves.stream().map(Unfolding.Leaf::part).toList());
    assertEquals(leaves.get(2).sha256(), leaves.get(3).sha256());
  }

  @Test
  void containersBeyondTheDepthAreRefusedByName() {
    byte[] file = utf8("a,b\nc,d\n");
    for (int level = 0; level < 6; level++) {
      file = zip("in", file);
    }
    List<Unfolding.Leaf> leaves =
        Unfolding.of(new DocumentReader(), file, "f.zip", ReadLimits.DEFAULT);
    assertEquals(5, leaves.size());
    assertEquals("too-deep", Looking.code(leaves.get(4).opened()));
    assertTrue(leaves.get(4).part().endsWith("in!in!in!in"));
  }

  private static final String HEAD =
      """
      From: lab@example.org
      Date: Mon, 2 Nov 2026 08:00:00 +0000
      Subject: hay
      MIME-Version: 1.0
      """;

  private static List<Unfolding.Leaf> leaves(String mail) {
    return Unfolding.of(
        new DocumentReader(), utf8(mail.replace("\n", "\r\n")), "m.eml", ReadLimits.DEFAULT);
  }

  @Test
  void aTableBehindMarksOfQuotationIsATable() {
    List<Unfolding.Leaf> leaves =
        leaves(
            HEAD
                + "Content-Type: text/plain; charset=iso-8859-1\n"
                + "Content-Transfer-Encoding: 8bit\n\n"
                + "see below\n\n> > Lot;GRD-9\n> > Analyte;Dry matter %\n> > ADF;36,2\n");
    assertEquals(
        "1: 1=see below\n3: 1=Lot | 2=GRD-9\n4: 1=Analyte | 2=Dry matter %\n5: 1=ADF | 2=36,2",
        Looking.rows(Looking.grid(leaves.get(1).opened())));
  }

  @Test
  void aLineThatMeansGreaterThanStaysWhatItIs() {
    List<Unfolding.Leaf> leaves =
        leaves(HEAD + "Content-Type: text/plain\n\nADF;36.2\n>60;too high\n");
    assertTrue(Looking.rows(Looking.grid(leaves.get(1).opened())).contains(">60"));
  }

  @Test
  void aForwardedMailIsAMailInAMailAndNamesAreDecoded() {
    String inner =
        HEAD
            + "Content-Type: multipart/mixed; boundary=\"in\"\n\n--in\n"
            + "Content-Type: text/csv; name=\"=?utf-8?Q?Heu_Gr=C3=BCn.csv?=\"\n"
            + "Content-Disposition: inline; filename=\"=?utf-8?Q?Heu_Gr=C3=BCn.csv?=\"\n\n"
            + "ADF;36,2\nNDF;50,1\n--in--\n";
    List<Unfolding.Leaf> leaves =
        leaves(
            HEAD
                + "Content-Type: multipart/mixed; boundary=\"out\"\n\n--out\n"
                + "Content-Type: text/plain\n\nplease see attached\n--out\n"
                + "Content-Type: message/rfc822\n\n"
                + inner
                + "\n--out--\n");
    assertEquals(
        List.of("", "body-1.txt", "part-2.eml", "part-2.eml!Heu Gr\u00FCn.csv"),
        leaves.stream().map(Unfolding.Leaf::part).toList());
  }

  @Test
  void aWinmailIsRefusedBySentence() {
    byte[] wrapped = {0x78, (byte) 0x9F, 0x3E, 0x22, 1, 2, 3, 4};
    assertTrue(Looking.reason(Looking.open(wrapped)).contains("winmail.dat"));
  }

  @Test
  void whiteOnWhiteDoesNotCountAndWhiteOnColourDoes() {
    Grid grid =
        Looking.grid(
            Looking.open(
                """
                <html><table>
                <tr><td>ADF</td><td style="color: #FFF">1</td><td><font color=white>2</font></td>
                <td>36.2</td></tr>
                <tr style="background: navy"><td style="color:white">NDF</td><td>&lt;50&nbsp;%</td></tr>
                </table></html>
                """));
    assertEquals("1: 1=ADF | 4=36.2\n2: 1=NDF | 2=<50 %", Looking.rows(grid));
    assertEquals(List.of("hidden-text"), grid.cautions());
  }
}
