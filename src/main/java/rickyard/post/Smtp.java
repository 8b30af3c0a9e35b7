package rickyard.post;

import jakarta.mail.MessagingException;
import jakarta.mail.SendFailedException;
import jakarta.mail.Session;
import jakarta.mail.Transport;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.UnsupportedEncodingException;
import java.time.Clock;
import java.util.Date;
import java.util.Optional;
import java.util.Properties;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPSenderFailedException;

/** A mail server, spoken to over one connection for all messages. */
public final class Smtp implements Carrier {
  private static final String UTF_8 = "UTF-8";
  private static final int CONNECT_MILLIS = 15_000;
  private static final int ANSWER_MILLIS = 60_000;
  private static final int REFUSALS_FROM = 400;
  private static final int REFUSALS_TO = 599;
  private static final int LONGEST_REASON = 200;

  private final MailSettings settings;
  private final Session session;
  private final Clock clock;
  private Optional<Transport> open = Optional.empty();

  /**
   * Prepares the way; nothing is connected yet.
   *
   * @param settings which server
   * @param more further properties of the mail library, for tests
   * @param clock dates the messages
   */
  public Smtp(MailSettings settings, Properties more, Clock clock) {
    this.settings = settings;
    this.clock = clock;
    Properties properties = properties(settings);
    properties.putAll(more);
    this.session = Session.getInstance(properties);
  }

  private static Properties properties(MailSettings settings) {
    String prefix = protocol(settings);
    Properties p = new Properties();
    p.setProperty("mail." + prefix + ".connectiontimeout", String.valueOf(CONNECT_MILLIS));
    p.setProperty("mail." + prefix + ".timeout", String.valueOf(ANSWER_MILLIS));
    p.setProperty("mail." + prefix + ".writetimeout", String.valueOf(ANSWER_MILLIS));
    p.setProperty("mail." + prefix + ".ssl.checkserveridentity", "true");
    p.setProperty("mail." + prefix + ".auth", String.valueOf(!settings.user().isEmpty()));
    if (settings.security() == MailSettings.Security.STARTTLS) {
      p.setProperty("mail.smtp.starttls.enable", "true");
      p.setProperty("mail.smtp.starttls.required", "true");
    }
    return p;
  }

  private static String protocol(MailSettings settings) {
    return settings.security() == MailSettings.Security.TLS ? "smtps" : "smtp";
  }

  @Override
  public void carry(Message message) throws RefusedException, InDoubtException {
    Transport transport = connected();
    MimeMessage mail;
    InternetAddress[] to;
    try {
      mail = mail(message);
      to = new InternetAddress[] {new InternetAddress(message.to(), true)};
    } catch (MessagingException | UnsupportedEncodingException e) {
      throw new RefusedException("the draft cannot be read as mail", false, e);
    }
    try {
      transport.sendMessage(mail, to);
    } catch (MessagingException e) {
      if (isRefusal(e)) {
        throw new RefusedException(reason(e), false, e);
      }
      close();
      throw new InDoubtException(reason(e), e);
    }
  }

  private Transport connected() throws RefusedException {
    if (open.isPresent() && open.get().isConnected()) {
      return open.get();
    }
    try {
      Transport transport = session.getTransport(protocol(settings));
      if (settings.user().isEmpty()) {
        transport.connect(settings.host(), settings.port(), null, null);
      } else {
        transport.connect(settings.host(), settings.port(), settings.user(), settings.password());
      }
      open = Optional.of(transport);
      return transport;
    } catch (MessagingException e) {
      // Nothing of a message went over the line.
      throw new RefusedException(
          settings.host() + ":" + settings.port() + ": " + reason(e), true, e);
    }
  }

  /** The draft with a sender and a date: its other headers and its content stay as they are. */
  private MimeMessage mail(Message message)
      throws MessagingException, UnsupportedEncodingException {
    MimeMessage mail = new MimeMessage(session, message.eml().open());
    mail.removeHeader("X-Unsent");
    mail.setFrom(
        settings.fromName().isEmpty()
            ? new InternetAddress(settings.from(), true)
            : new InternetAddress(settings.from(), settings.fromName(), UTF_8));
    if (mail.getHeader("To") == null) {
      mail.setHeader("To", message.to());
    }
    mail.setSentDate(Date.from(clock.instant()));
    return mail;
  }

  /** Whether the server answered no: to the sender, the address or the message. */
  private static boolean isRefusal(MessagingException failure) {
    Optional<MessagingException> at = Optional.of(failure);
    while (at.isPresent()) {
      int code = code(at.get());
      if (code >= REFUSALS_FROM && code <= REFUSALS_TO) {
        return true;
      }
      at = next(at.get());
    }
    return false;
  }

  private static Optional<MessagingException> next(MessagingException failure) {
    return failure.getNextException() instanceof MessagingException m
        ? Optional.of(m)
        : Optional.empty();
  }

  private static int code(MessagingException failure) {
    if (failure instanceof SMTPSendFailedException s) {
      return s.getReturnCode();
    }
    if (failure instanceof SMTPAddressFailedException s) {
      return s.getReturnCode();
    }
    return failure instanceof SMTPSenderFailedException s ? s.getReturnCode() : 0;
  }

  private static String reason(MessagingException failure) {
    MessagingException last =
        failure instanceof SendFailedException ? next(failure).orElse(failure) : failure;
    String text = String.valueOf(last.getMessage()).replaceAll("\\p{Cntrl}+", " ").strip();
    return text.length() > LONGEST_REASON ? text.substring(0, LONGEST_REASON) + "…" : text;
  }

  @Override
  public void close() {
    open.ifPresent(
        transport -> {
          try {
            transport.close();
          } catch (MessagingException e) {
            // What was taken is taken; a farewell that fails changes nothing.
            return;
          }
        });
    open = Optional.empty();
  }
}
