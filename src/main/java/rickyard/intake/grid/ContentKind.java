package rickyard.intake.grid;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.tika.metadata.Metadata;
import org.apache.tika.mime.MediaType;
import org.apache.tika.mime.MimeTypes;

/** What kind of document some bytes are, by content alone; unknown kinds are never tried out. */
enum ContentKind {
  PDF("pdf"),
  ZIP("zip"),
  MAIL("mail"),
  /** The box in which one mail program hides attachments from all others. */
  WRAPPED_MAIL("mail"),
  HTML("html"),
  TEXT("csv"),
  IMAGE("image"),
  WORKBOOK("workbook"),
  /** A workbook as one XML file. */
  FLAT_WORKBOOK("workbook"),
  /** The box that old office programs put their documents in. */
  COMPOUND("other"),
  DOCUMENT("document"),
  ARCHIVE("archive"),
  OTHER("other");

  private static final int HEAD = 1024;

  /** Mails carry many stations before the headers that tell. */
  private static final int MAIL_HEAD = 1 << 14;

  private static final Pattern SENDER =
      Pattern.compile("\n(received:|from:[^\n]*(\n[ \t][^\n]*)?@)");

  private static final Set<String> ARCHIVES =
      Set.of(
          "application/gzip",
          "application/x-bzip2",
          "application/x-bzip",
          "application/x-xz",
          "application/x-tar",
          "application/x-gtar",
          "application/x-7z-compressed",
          "application/x-rar-compressed",
          "application/x-rar-compressed;version=4",
          "application/x-rar-compressed;version=5",
          "application/zstd");

  private final String label;

  ContentKind(String label) {
    this.label = label;
  }

  /** The kind's name in outcomes. */
  String label() {
    return label;
  }

  Opened refused(String code, String reason) {
    return new Opened.Unreadable(label, code, reason);
  }

  /** Decides by the first bytes; text is what the detector finds no other name for. */
  static ContentKind of(byte[] bytes) {
    String head = head(bytes, HEAD);
    if (head.contains("%PDF-")) {
      return PDF;
    }
    if (starts(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
      return COMPOUND;
    }
    if (starts(bytes, 0x78, 0x9F, 0x3E, 0x22)) {
      return WRAPPED_MAIL;
    }
    String type = detected(bytes);
    if (type.equals("application/zip") || head.startsWith("PK\u0003\u0004")) {
      return ZIP;
    }
    if (type.equals("message/rfc822")) {
      return looksLikeMail(head(bytes, MAIL_HEAD)) ? MAIL : TEXT;
    }
    if (type.equals("text/html") || type.equals("application/xhtml+xml")) {
      return HTML;
    }
    if (type.startsWith("image/")) {
      return IMAGE;
    }
    return ofRest(type, head);
  }

  private static ContentKind ofRest(String type, String head) {
    if (ARCHIVES.contains(type)) {
      return ARCHIVE;
    }
    if (type.contains("msoffice") || type.contains("excel") || type.contains("spreadsheet")) {
      return WORKBOOK;
    }
    if (type.equals("application/rtf") || type.contains("msword")) {
      return DOCUMENT;
    }
    if (head.contains("office:document") && head.contains(".spreadsheet")) {
      return FLAT_WORKBOOK;
    }
    if (head.contains("progid=\"Excel.Sheet\"")) {
      return WORKBOOK;
    }
    if (type.endsWith("xml") || type.equals("application/json")) {
      return looksLikeHtml(head) ? HTML : OTHER;
    }
    // Bytes without a name may be text in a two-byte encoding; the text reader checks that.
    boolean text = type.startsWith("text/") || type.equals("application/octet-stream");
    return text ? looksLikeHtml(head) ? HTML : TEXT : OTHER;
  }

  /** The media type by magic numbers, lower case. */
  private static String detected(byte[] bytes) {
    try (InputStream in = new ByteArrayInputStream(bytes)) {
      MediaType type = MimeTypes.getDefaultMimeTypes().detect(in, new Metadata());
      return type.toString().toLowerCase(Locale.ROOT);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** A table may begin with a word and a colon too: a mail names its sender and something more. */
  private static boolean looksLikeMail(String head) {
    String lower = "\n" + head.toLowerCase(Locale.ROOT).replace("\r", "");
    int blank = lower.indexOf("\n\n", 1);
    String headers = blank < 0 ? lower : lower.substring(0, blank);
    return SENDER.matcher(headers).find()
        && (headers.contains("\ndate:")
            || headers.contains("\nsubject:")
            || headers.contains("\nmime-version:")
            || headers.contains("\nmessage-id:")
            || headers.contains("\nreturn-path:"));
  }

  private static boolean looksLikeHtml(String head) {
    String lower = head.replace("\0", "").toLowerCase(Locale.ROOT);
    return lower.contains("<html") || lower.contains("<!doctype html") || lower.contains("<table");
  }

  private static boolean starts(byte[] bytes, int... mark) {
    for (int at = 0; at < mark.length; at++) {
      if (at >= bytes.length || (bytes[at] & 0xFF) != mark[at]) {
        return false;
      }
    }
    return true;
  }

  private static String head(byte[] bytes, int length) {
    return new String(bytes, 0, Math.min(length, bytes.length), StandardCharsets.ISO_8859_1);
  }
}
