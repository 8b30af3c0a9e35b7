package rickyard.report.letter;

import jakarta.activation.DataHandler;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.ContentType;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Properties;

/**
 * Drafts as mail programs keep them: to be opened, looked through and sent by a person. Identity,
 * boundaries and date come from the content and the morning's day; there is no sender.
 */
final class Eml {
  private static final String UTF_8 = "UTF-8";
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE, d MMM uuuu HH:mm:ss '+0000'", Locale.ENGLISH);
  private static final int ID_LENGTH = 32;

  private Eml() {}

  /** Writes the draft; the stream stays open. */
  static void write(Draft draft, OutputStream out) throws IOException {
    try {
      message(draft).writeTo(out);
    } catch (MessagingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static MimeMessage message(Draft draft) throws MessagingException, IOException {
    String id = identity(draft);
    MimeMessage message = new Named("<" + id + "@rickyard.invalid>");
    message.setHeader("X-Unsent", "1");
    message.setHeader("Date", date(draft.day()));
    if (!draft.to().isEmpty()) {
      message.setRecipient(
          Message.RecipientType.TO, new InternetAddress(draft.to(), header(draft.toName()), UTF_8));
    }
    message.setSubject(header(draft.subject()), UTF_8);
    message.setContent(content(draft, id));
    message.saveChanges();
    return message;
  }

  /** What looks like an encoded word would be decoded by whoever reads it. */
  private static String header(String text) {
    return text.replace("=?", "= ?");
  }

  private static MimeMultipart content(Draft draft, String id)
      throws MessagingException, IOException {
    MimeMultipart texts = new Parts("alternative", "=_text_" + id);
    texts.addBodyPart(text(draft.plain(), "plain"));
    texts.addBodyPart(text(draft.html(), "html"));
    if (draft.attachments().isEmpty()) {
      return texts;
    }
    MimeMultipart all = new Parts("mixed", "=_all_" + id);
    MimeBodyPart first = new MimeBodyPart();
    first.setContent(texts);
    all.addBodyPart(first);
    for (Attachment attachment : draft.attachments()) {
      all.addBodyPart(file(attachment));
    }
    return all;
  }

  private static MimeBodyPart text(String text, String kind) throws MessagingException {
    MimeBodyPart part = new MimeBodyPart();
    part.setText(text, UTF_8, kind);
    part.setHeader("Content-Transfer-Encoding", "quoted-printable");
    return part;
  }

  private static MimeBodyPart file(Attachment attachment) throws MessagingException, IOException {
    MimeBodyPart part = new MimeBodyPart();
    part.setDataHandler(
        new DataHandler(new ByteArrayDataSource(attachment.bytes().get(), attachment.type())));
    part.setFileName(attachment.name());
    part.setDisposition("attachment");
    part.setHeader("Content-Transfer-Encoding", "base64");
    return part;
  }

  /** Noon of Greenwich is the same day nearly everywhere. */
  private static String date(LocalDate day) {
    return DATE.format(day.atTime(12, 0).atOffset(ZoneOffset.UTC));
  }

  /**
   * The content of a draft in 32 hexadecimal digits: address, words, attachments and day. Its
   * Message-ID is made of them.
   */
  static String identity(Draft draft) {
    try {
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      add(sha256, draft.day().toString());
      add(sha256, draft.to());
      add(sha256, draft.toName());
      add(sha256, draft.subject());
      add(sha256, draft.plain());
      add(sha256, draft.html());
      for (Attachment attachment : draft.attachments()) {
        add(sha256, attachment.name());
        add(sha256, attachment.bytes().get());
      }
      return HexFormat.of().formatHex(sha256.digest()).substring(0, ID_LENGTH);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void add(MessageDigest digest, String text) {
    add(digest, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Lengths keep two different drafts from giving one text. */
  private static void add(MessageDigest digest, byte[] bytes) {
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
    digest.update(bytes);
  }

  /** A message that keeps its name. */
  private static final class Named extends MimeMessage {
    private final String id;

    Named(String id) {
      super(Session.getInstance(new Properties()));
      this.id = id;
    }

    @Override
    protected void updateMessageID() throws MessagingException {
      setHeader("Message-ID", id);
    }
  }

  /** Parts with a boundary of our own. */
  private static final class Parts extends MimeMultipart {
    Parts(String kind, String boundary) {
      super(kind);
      ContentType type = new ContentType("multipart", kind, null);
      type.setParameter("boundary", boundary);
      contentType = type.toString();
    }
  }
}
