package rickyard.post;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.tables.UnusableTablesException;

class MailSettingsTest {
  private static final String GOOD =
      "host=mail.example.invalid\nfrom=office@example.invalid\nfrom-name=Das B\u00fcro\n"
          + "adviser.ada=ada@example.invalid\n";

  @TempDir Path config;

  private MailSettings load(String text) throws IOException {
    Files.writeString(config.resolve("mail.properties"), text);
    return MailSettings.load(
        Optional.of(config), Map.of("RICKYARD_MAIL_USER", "u", "RICKYARD_MAIL_PASSWORD", "secret"));
  }

  @Test
  void whatIsNotSaidIsPrivateAndOnTheUsualPort() throws IOException {
    MailSettings settings = load(GOOD);

    assertEquals(MailSettings.Security.STARTTLS, settings.security());
    assertEquals(587, settings.port());
    assertEquals(465, load(GOOD + "security=tls\n").port());
    assertEquals("Das B\u00fcro", settings.fromName());
    assertEquals(Map.of("ada", "ada@example.invalid"), settings.advisers());
    assertEquals("u", settings.user());
    assertEquals("secret", settings.password());
    assertFalse(settings.toString().contains("secret"), settings.toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "host=x|config/mail.properties, column \"from\": expected a line from=..., found \"\"",
        "port=0x1F|column \"port\": expected a number from 1 to 65535, found \"0x1F\"",
        "port=70000|column \"port\": expected a number from 1 to 65535, found \"70000\"",
        "security=none|column \"security\": expected starttls or tls for a server elsewhere",
        "security=maybe|column \"security\": expected starttls, tls or none, found \"maybe\"",
        "adviser.bob=bob at home|column \"adviser.bob\": expected one e-mail address",
        "password=secret|column \"password\": expected host, port, security, from, from-name or",
        "from-name=x\\r\\nBcc: all@example.invalid|column \"from-name\": expected one line of text"
      })
  void whatIsWrongIsNamedWithTheKeyAndTheRemedy(String lineAndMessage) {
    String[] parts = lineAndMessage.split("\\|", -1);
    String text = parts[0].equals("host=x") ? parts[0] : GOOD + parts[0] + "\n";

    String message = assertThrows(UnusableTablesException.class, () -> load(text)).getMessage();

    assertTrue(message.contains(parts[1]), message);
  }

  @Test
  void withoutTheFileThereIsNoSending() {
    assertTrue(
        assertThrows(
                UnusableTablesException.class,
                () -> MailSettings.load(Optional.of(config), Map.of()))
            .getMessage()
            .contains("config/mail.properties: expected the file, with host and from"));
  }
}
