package rickyard.report.letter;

import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import java.util.regex.Pattern;

/** Whether a register's text is one address of a mailbox, and nothing more. */
public final class Address {
  private static final Pattern PLAIN =
      Pattern.compile("[A-Za-z0-9.!#$%&'*+/=?^_`{|}~-]{1,64}@[A-Za-z0-9.-]{1,190}");

  private Address() {}

  /** The address; empty where the text is anything else. */
  public static String of(String raw) {
    String text = raw.strip();
    if (!PLAIN.matcher(text).matches()) {
      return "";
    }
    try {
      return new InternetAddress(text, true).getAddress();
    } catch (AddressException e) {
      return "";
    }
  }
}
