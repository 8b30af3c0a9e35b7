package rickyard.post;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Against a real server: what is taken, what is refused, what is in doubt, and privacy. */
class SmtpTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-16T06:30:00Z"), ZoneOffset.UTC);
  private static final String ID = "0123456789abcdef0123456789abcdef";
  private static final String EML =
      "Message-ID: <"
          + ID
          + "@rickyard.invalid>\r\nX-Unsent: 1\r\nDate: Mon, 16 Mar 2026 12:00:00 +0000\r\n"
          + "To: Mill Farm <mill@example.invalid>\r\nSubject: =?UTF-8?Q?Heu_f=C3=BCr_Flint?=\r\n"
          + "MIME-Version: 1.0\r\nContent-Type: text/plain; charset=UTF-8\r\n\r\n"
          + "Weigh 4.5 kg.\r\n.\r\nA line with a dot alone stood above.\r\n";

  @TempDir Path folder;

  private static MailSettings settings(int port, MailSettings.Security security) {
    return new MailSettings(
        "localhost",
        port,
        security,
        "office@example.invalid",
        "The office",
        new TreeMap<>(),
        "",
        "");
  }

  private static Message message(String to) {
    return new Message(
        ID,
        Message.Kind.LETTER,
        "mill",
        "letters/mill.eml",
        to,
        new Eml(EML.getBytes(StandardCharsets.UTF_8)));
  }

  private static Smtp plain(MailServer server, String... more) {
    Properties properties = new Properties();
    for (int i = 0; i < more.length; i += 2) {
      properties.setProperty(more[i], more[i + 1]);
    }
    return new Smtp(settings(server.port(), MailSettings.Security.NONE), properties, CLOCK);
  }

  @Test
  void theDraftArrivesWithASenderADateAndItsOwnContent() throws Exception {
    try (MailServer server = new MailServer();
        Smtp smtp = plain(server)) {
      smtp.carry(message("mill@example.invalid"));

      MimeMessage mail = server.taken().get(0);
      assertEquals("<" + ID + "@rickyard.invalid>", mail.getMessageID());
      assertEquals(new InternetAddress("office@example.invalid", "The office"), mail.getFrom()[0]);
      assertEquals("Mill Farm <mill@example.invalid>", mail.getHeader("To")[0]);
      assertEquals("Heu für Flint", mail.getSubject());
      assertNull(mail.getHeader("X-Unsent"));
      assertEquals(CLOCK.instant(), mail.getSentDate().toInstant());
      ByteArrayOutputStream body = new ByteArrayOutputStream();
      try (InputStream in = mail.getRawInputStream()) {
        in.transferTo(body);
      }
      assertArrayEquals(
          EML.substring(EML.indexOf("\r\n\r\n") + 4).getBytes(StandardCharsets.UTF_8),
          body.toByteArray());
    }
  }

  @Test
  void anAlertGetsTheAdvisersAddress() throws Exception {
    String draft = EML.replaceFirst("To: [^\r]*\r\n", "");
    try (MailServer server = new MailServer();
        Smtp smtp = plain(server)) {
      smtp.carry(
          new Message(
              ID,
              Message.Kind.ALERT,
              "ada",
              "alerts/ada.eml",
              "ada@example.invalid",
              new Eml(draft.getBytes(StandardCharsets.UTF_8))));

      assertEquals("ada@example.invalid", server.taken().get(0).getHeader("To")[0]);
    }
  }

  @Test
  void anAddressOrAMessageThatTheServerRefusesIsNoDoubtAndTheNextGoes() throws Exception {
    try (MailServer server = new MailServer();
        Smtp smtp = plain(server)) {
      server.onRecipient(
          to -> {
            if (to.startsWith("gone")) {
              throw new MailServer.Refuse(550);
            }
          });
      Carrier.RefusedException gone =
          assertThrows(
              Carrier.RefusedException.class, () -> smtp.carry(message("gone@example.invalid")));
      assertTrue(gone.getMessage().contains("no such mailbox"), gone.getMessage());
      server.beforeTaken(
          mail -> {
            throw new MailServer.Refuse(452);
          });
      assertThrows(
          Carrier.RefusedException.class, () -> smtp.carry(message("mill@example.invalid")));
      assertEquals(0, server.taken().size());
      server.beforeTaken(mail -> {});

      smtp.carry(message("mill@example.invalid"));

      assertEquals(1, server.taken().size());
    }
  }

  @Test
  void anAnswerThatDoesNotComeAfterTheContentIsADoubt() throws Exception {
    try (MailServer server = new MailServer();
        Smtp smtp = plain(server, "mail.smtp.timeout", "300")) {
      server.afterTaken(mail -> sleep());

      assertThrows(
          Carrier.InDoubtException.class, () -> smtp.carry(message("mill@example.invalid")));

      assertEquals(1, server.taken().size());
    }
  }

  private static void sleep() {
    try {
      TimeUnit.SECONDS.sleep(2);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void aServerThatIsNotThereIsARefusalOfAll() throws Exception {
    int free;
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      free = socket.getLocalPort();
    }
    try (Smtp smtp =
        new Smtp(settings(free, MailSettings.Security.NONE), new Properties(), CLOCK)) {
      assertTrue(
          assertThrows(
                  Carrier.RefusedException.class, () -> smtp.carry(message("mill@example.invalid")))
              .isOfAll());
    }
  }

  @Test
  void aServerWithoutStartTlsGetsNothing() throws Exception {
    try (MailServer server = new MailServer();
        Smtp smtp =
            new Smtp(
                settings(server.port(), MailSettings.Security.STARTTLS), new Properties(), CLOCK)) {
      assertThrows(
          Carrier.RefusedException.class, () -> smtp.carry(message("mill@example.invalid")));
      assertEquals(0, server.taken().size());
    }
  }

  @Test
  void withStartTlsItGoesToAServerWhoseCertificateIsTrustedAndNoOther() throws Exception {
    KeyStore keys = keys();
    KeyManagerFactory own = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    own.init(keys, "changeit".toCharArray());
    SSLContext tls = SSLContext.getInstance("TLS");
    tls.init(own.getKeyManagers(), null, null);
    TrustManagerFactory trusted =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trusted.init(keys);
    SSLContext trusting = SSLContext.getInstance("TLS");
    trusting.init(null, trusted.getTrustManagers(), null);
    MailSettings.Security security = MailSettings.Security.STARTTLS;
    try (MailServer server = MailServer.withStartTls(tls)) {
      try (Smtp stranger = new Smtp(settings(server.port(), security), new Properties(), CLOCK)) {
        assertThrows(
            Carrier.RefusedException.class, () -> stranger.carry(message("mill@example.invalid")));
      }
      assertEquals(0, server.taken().size());
      Properties more = new Properties();
      more.put("mail.smtp.ssl.socketFactory", trusting.getSocketFactory());
      try (Smtp smtp = new Smtp(settings(server.port(), security), more, CLOCK)) {
        smtp.carry(message("mill@example.invalid"));
      }
      assertEquals(1, server.taken().size());
    }
  }

  /** A certificate for localhost, made by the JDK's own tool. */
  private KeyStore keys() throws Exception {
    Path store = folder.resolve("keys.p12");
    Process keytool =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-alias",
                "mail",
                "-keyalg",
                "EC",
                "-dname",
                "CN=localhost",
                "-ext",
                "san=dns:localhost",
                "-storetype",
                "PKCS12",
                "-keystore",
                store.toString(),
                "-storepass",
                "changeit")
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("keytool.txt").toFile())
            .start();
    assertEquals(0, keytool.waitFor(), () -> "keytool");
    KeyStore keys = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(store)) {
      keys.load(in, "changeit".toCharArray());
    }
    return keys;
  }
}
