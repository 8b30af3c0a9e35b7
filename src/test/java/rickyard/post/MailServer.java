package rickyard.post;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Properties;
import java.util.function.Consumer;
import javax.net.ssl.SSLContext;
import org.subethamail.smtp.MessageHandler;
import org.subethamail.smtp.RejectException;
import org.subethamail.smtp.server.SMTPServer;

/** A real SMTP server on this machine that keeps what it took and can be made to misbehave. */
public final class MailServer implements AutoCloseable {
  private final List<MimeMessage> taken = Collections.synchronizedList(new ArrayList<>());
  private final SMTPServer server;
  private volatile Consumer<String> onRecipient = to -> {};
  private volatile Consumer<MimeMessage> beforeTaken = mail -> {};
  private volatile Consumer<MimeMessage> afterTaken = mail -> {};

  /** Thrown by a hook to refuse with a code. */
  public static final class Refuse extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int code;

    public Refuse(int code) {
      super("refused");
      this.code = code;
    }
  }

  public MailServer() {
    this(SMTPServer.port(0));
  }

  public static MailServer withStartTls(SSLContext tls) {
    return new MailServer(SMTPServer.port(0).enableTLS().requireTLS().startTlsSocketFactory(tls));
  }

  private MailServer(SMTPServer.Builder builder) {
    server =
        builder
            .bindAddress(InetAddress.getLoopbackAddress())
            .messageHandlerFactory(context -> new Handler())
            .build();
    server.start();
  }

  public int port() {
    return server.getPortAllocated();
  }

  /** What was taken, oldest first. */
  public List<MimeMessage> taken() {
    return List.copyOf(taken);
  }

  /** Message-IDs of what was taken. */
  public List<String> ids() {
    return taken().stream().map(MailServer::id).toList();
  }

  public static String id(MimeMessage mail) {
    try {
      return mail.getMessageID();
    } catch (MessagingException e) {
      throw new IllegalStateException(e);
    }
  }

  public void onRecipient(Consumer<String> hook) {
    onRecipient = hook;
  }

  public void beforeTaken(Consumer<MimeMessage> hook) {
    beforeTaken = hook;
  }

  public void afterTaken(Consumer<MimeMessage> hook) {
    afterTaken = hook;
  }

  @Override
  public void close() {
    server.stop();
  }

  private final class Handler implements MessageHandler {
    @Override
    public void from(String from) {}

    @Override
    public void recipient(String to) throws RejectException {
      try {
        onRecipient.accept(to);
      } catch (Refuse e) {
        throw new RejectException(e.code, "no such mailbox");
      }
    }

    @Override
    public String data(InputStream data) throws RejectException {
      try {
        MimeMessage mail =
            new MimeMessage(
                Session.getInstance(new Properties()),
                new ByteArrayInputStream(data.readAllBytes()));
        beforeTaken.accept(mail);
        taken.add(mail);
        afterTaken.accept(mail);
        return "taken";
      } catch (Refuse e) {
        throw new RejectException(e.code, "not today");
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      } catch (MessagingException e) {
        throw new IllegalStateException(e);
      }
    }

    @Override
    public void done() {}
  }
}
