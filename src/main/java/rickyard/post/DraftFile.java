package rickyard.post;

import jakarta.mail.Message.RecipientType;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A draft as it lies in a morning's folder.
 *
 * @param id 32 hexadecimal digits of its content, from its Message-ID
 * @param to its one address; empty if it has none
 * @param eml its bytes
 */
public record DraftFile(String id, String to, Eml eml) {
  private static final Pattern ID = Pattern.compile("<([0-9a-f]{32})@rickyard\\.invalid>");

  /**
   * Reads a draft.
   *
   * @throws IllegalArgumentException if the program did not write it
   */
  public static DraftFile of(Eml eml) {
    try {
      MimeMessage message = new MimeMessage(Session.getInstance(new Properties()), eml.open());
      Matcher id = ID.matcher(String.valueOf(message.getMessageID()));
      if (!id.matches()) {
        throw new IllegalArgumentException("no draft of this program");
      }
      return new DraftFile(id.group(1), to(message), eml);
    } catch (MessagingException e) {
      throw new IllegalArgumentException("no mail", e);
    }
  }

  private static String to(MimeMessage message) throws MessagingException {
    jakarta.mail.Address[] to = message.getRecipients(RecipientType.TO);
    return to != null && to.length == 1 && to[0] instanceof InternetAddress one
        ? one.getAddress()
        : "";
  }

  /** The message that it becomes. */
  public Message message(Message.Kind kind, String about, String path, String address) {
    return new Message(id, kind, about, path, address, eml);
  }
}
