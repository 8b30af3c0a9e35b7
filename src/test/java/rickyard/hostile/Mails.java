package rickyard.hostile;

import static rickyard.hostile.HostileFile.honest;
import static rickyard.hostile.HostileFile.notTaken;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/** Mails: headers, boundaries, encodings and names that are not what they should be. */
final class Mails {
  private static final String HEAD =
      String.join(
          "\r\n",
          "From: Sender <sender@sender.example>",
          "To: office@querrow.example",
          "Subject: results",
          "Date: Sat, 14 Mar 2026 08:12:00 +0000",
          "MIME-Version: 1.0",
          "");

  private Mails() {}

  static List<HostileFile> all(Paper paper) {
    List<HostileFile> files = new ArrayList<>(shapes(paper));
    files.addAll(names(paper));
    files.addAll(contents(paper));
    return files;
  }

  private static String base64(String text) {
    return Base64.getMimeEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String mixed(String boundary, String... parts) {
    StringBuilder out = new StringBuilder(HEAD);
    out.append("Content-Type: multipart/mixed; boundary=\"" + boundary + "\"\r\n\r\n");
    for (String part : parts) {
      out.append("--" + boundary + "\r\n" + part + "\r\n");
    }
    return out + "--" + boundary + "--\r\n";
  }

  private static String attached(String name, String csv) {
    return "Content-Type: text/csv; name=\""
        + name
        + "\"\r\nContent-Disposition: attachment; "
        + "filename=\""
        + name
        + "\"\r\nContent-Transfer-Encoding: base64\r\n\r\n"
        + base64(csv);
  }

  private static List<HostileFile> shapes(Paper paper) {
    String nested = HEAD + "Content-Type: text/csv\r\n\r\n" + paper.csv();
    for (int level = 0; level < 50; level++) {
      nested = HEAD + "Content-Type: message/rfc822\r\n\r\n" + nested;
    }
    StringBuilder boxes =
        new StringBuilder(HEAD + "Content-Type: multipart/mixed; boundary=b0\r\n");
    for (int level = 0; level < 400; level++) {
      boxes.append(
          "\r\n--b"
              + level
              + "\r\nContent-Type: multipart/mixed; boundary=b"
              + (level + 1)
              + "\r\n");
    }
    String part = "Content-Type: text/plain\r\n\r\nx";
    String[] thousands = new String[5000];
    java.util.Arrays.fill(thousands, part);
    String whole = mixed("one", attached("r.csv", paper.csv()));
    return List.of(
        honest("mail", "nested-50.eml", "50 mails in one another", nested),
        notTaken("mail", "nested-boxes.eml", "400 multiparts in one another", boxes.toString()),
        notTaken("mail", "thousands.eml", "5,000 parts", mixed("p", thousands)),
        honest(
            "mail",
            "no-end.eml",
            "the last boundary is missing",
            whole.substring(0, whole.length() - 9)),
        honest(
            "mail",
            "no-boundary.eml",
            "a multipart that names no boundary",
            whole.replace("; boundary=\"one\"", "")),
        honest(
            "mail",
            "other-boundary.eml",
            "a boundary that never comes",
            whole.replace("boundary=\"one\"", "boundary=\"two\"")),
        honest(
            "mail",
            "boundary-loop.eml",
            "inner and outer boundary alike",
            mixed(
                "same",
                "Content-Type: multipart/mixed; boundary=\"same\"\r\n\r\n--same\r\n"
                    + attached("r.csv", paper.csv())
                    + "\r\n--same--")),
        honest(
            "mail",
            "empty-boundary.eml",
            "a boundary of no characters",
            whole.replace("boundary=\"one\"", "boundary=\"\"")),
        honest(
            "mail",
            "cut.eml",
            "breaks off in the attachment",
            whole.substring(0, whole.length() * 3 / 4)),
        notTaken("mail", "headers-only.eml", "no body", HEAD + "\r\n"),
        notTaken(
            "mail",
            "long-header.eml",
            "a header of 3 million characters",
            HEAD + "X-Long: " + "a".repeat(3_000_000) + "\r\n\r\nhello"),
        notTaken(
            "mail",
            "many-headers.eml",
            "50,000 headers",
            HEAD + "X-H: 1\r\n".repeat(50_000) + "\r\nhello"));
  }

  private static List<HostileFile> names(Paper paper) {
    List<HostileFile> files = new ArrayList<>();
    List<String> names =
        List.of(
            "../../../../tmp/rickyard-escape-mail.csv",
            "/etc/rickyard-escape.csv",
            "=?utf-8?B?Li4vLi4vLi4vdG1wL3JpY2t5YXJkLWVzY2FwZQ==?=",
            "a\\r\\nBcc: all@everyone.example.csv",
            "=?utf-8?Q?a=0D=0ABcc:=20all@everyone.example?=",
            "=HYPERLINK(1).csv",
            "<img src=x onerror=alert(1)>.csv",
            "report.pdf");
    for (int at = 0; at < names.size(); at++) {
      files.add(
          honest(
              "mail",
              "attachment-name-" + at + ".eml",
              "an attachment's name that wants out",
              mixed("n", attached(names.get(at), paper.csv()))));
    }
    files.add(
        honest(
            "mail",
            "subject.eml",
            "line breaks hidden in the subject",
            mixed("s", attached("r.csv", paper.csv()))
                .replace(
                    "Subject: results",
                    "Subject: =?utf-8?Q?a=0D=0ABcc:_all=40everyone.example?=")));
    return files;
  }

  private static List<HostileFile> contents(Paper paper) {
    String csv = paper.csv();
    String lie = Paper.csv("X", Paper.LIE_WSC, Paper.LIE_STARCH);
    return List.of(
        notTaken(
            "mail",
            "base64.eml",
            "an attachment whose base64 is broken",
            mixed("b", attached("r.csv", csv).replaceAll("[AEIOUaeiou]", "*!"))),
        honest(
            "mail",
            "base64-blanks.eml",
            "base64 with blanks in it",
            mixed("b", attached("r.csv", paper.csv()).replace("\r\n\r\n", "\r\n\r\n \r\n\t"))),
        honest(
            "mail",
            "two-types.eml",
            "two content types",
            mixed("t", "Content-Type: application/pdf\r\n" + attached("r.csv", paper.csv()))),
        honest(
            "mail",
            "wrong-type.eml",
            "a table that says it is a picture",
            mixed("t", attached("r.png", paper.csv()).replace("text/csv", "image/png"))),
        honest(
            "mail",
            "charset.eml",
            "text that says it is UTF-16",
            HEAD + "Content-Type: text/plain; charset=utf-16\r\n\r\n" + paper.csv()),
        honest(
            "mail",
            "charset-name.eml",
            "a charset that nobody knows",
            HEAD + "Content-Type: text/plain; charset=\"../../x y\"\r\n\r\n" + paper.csv()),
        honest(
            "mail",
            "charset-7.eml",
            "UTF-7",
            HEAD + "Content-Type: text/plain; charset=utf-7\r\n\r\n" + paper.csv()),
        honest(
            "mail",
            "quoted.eml",
            "quoted-printable that breaks off",
            HEAD
                + "Content-Type: text/csv\r\nContent-Transfer-Encoding: quoted-printable\r\n\r\n"
                + paper.csv()
                + "=4"),
        honest(
            "mail",
            "alternative.eml",
            "plain and HTML forms that differ",
            mixed(
                "a",
                "Content-Type: multipart/alternative; boundary=\"i\"\r\n\r\n--i\r\n"
                    + "Content-Type: text/plain\r\n\r\n"
                    + lie.replace("R-X", "R-plain").replace(",X,", "," + paper.lot() + ",")
                    + "\r\n--i\r\nContent-Type: text/html\r\n\r\n"
                    + paper.html("", "", "")
                    + "\r\n--i--")),
        honest(
            "mail",
            "outside-body.eml",
            "a body that lies elsewhere",
            HEAD
                + "Content-Type: message/external-body; access-type=local-file; "
                + "name=\"/etc/passwd\"\r\n\r\n"),
        notTaken(
            "mail",
            "uuencode.eml",
            "another way of packing",
            HEAD + "\r\nbegin 644 ../../tmp/rickyard-escape\r\n#0V%T\r\n`\r\nend\r\n"),
        honest(
            "mail",
            "nul.eml",
            "zero bytes in the head",
            HEAD.replace("results", "res\u0000ults")
                + "Content-Type: text/csv\r\n\r\n"
                + paper.csv()));
  }
}
