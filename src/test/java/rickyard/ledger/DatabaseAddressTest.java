package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.postgresql.ds.PGSimpleDataSource;

class DatabaseAddressTest {
  private static final String SHAPE =
      "--ledger takes a folder or jdbc:postgresql://HOST[:PORT]/DATABASE";
  private static final Map<String, String> ENVIRONMENT =
      Map.of(DatabaseAddress.USER, "ann", DatabaseAddress.PASSWORD, "hush");

  private static String refusal(String text) {
    return String.valueOf(
        assertThrows(IllegalArgumentException.class, () -> DatabaseAddress.parse(text, ENVIRONMENT))
            .getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"jdbc:postgresql://h/d", "jdbc:other:x", "jdbc:", "JDBC:x", "postgres://h/d"})
  void whateverHasASchemeIsMeantAsADatabase(String text) {
    assertTrue(DatabaseAddress.isMeant(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ledger", "/var/hay", "C:\\hay", "./jdbc", "a:b"})
  void foldersAreNot(String text) {
    assertFalse(DatabaseAddress.isMeant(text));
  }

  @ParameterizedTest
  @CsvSource({
    "jdbc:other://u:secret@h/d, jdbc:other",
    "postgres://u:secret@h/d, postgres:",
    "JDBC:postgresql://h/d, JDBC:postgresql"
  })
  void anotherSchemeIsRefusedAndNoMoreOfItIsQuoted(String text, String quoted) {
    assertEquals(SHAPE + ", not " + quoted, refusal(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "jdbc:postgresql:",
        "jdbc:postgresql:secret",
        "jdbc:postgresql://secret",
        "jdbc:postgresql://h/",
        "jdbc:postgresql://ann:secret@h/d",
        "jdbc:postgresql://h/d ?password=secret"
      })
  void anAddressOfAnotherShapeIsRefusedUnquoted(String text) {
    assertEquals(
        SHAPE
            + "; user and password go into RICKYARD_LEDGER_USER and RICKYARD_LEDGER_PASSWORD, or"
            + " behind a question mark",
        refusal(text));
  }

  @Test
  void aPortIsANumberAndASchemaAPlainName() {
    assertEquals(SHAPE + "; the port is a number", refusal("jdbc:postgresql://h:x/d"));
    for (String schema : new String[] {"a,b", "Hay", "a%20b", "1a", "a%3Bdrop"}) {
      assertEquals(
          "currentSchema in --ledger is one plain name in small letters, digits and _",
          refusal("jdbc:postgresql://h/d?currentSchema=" + schema));
    }
  }

  @Test
  void noTextOfItHoldsUserOrPassword() {
    DatabaseAddress address =
        DatabaseAddress.parse(
            "jdbc:postgresql://db.example:5433/hay?user=bob&password=secret", ENVIRONMENT);

    assertEquals("the PostgreSQL database hay at db.example:5433", address.words());
    assertEquals(address.words(), address.toString());
  }

  @Test
  void userAndPasswordComeFromTheAddressOrElseFromTheEnvironment() {
    PGSimpleDataSource own =
        DatabaseAddress.parse("jdbc:postgresql://h/d?user=bob&password=secret", ENVIRONMENT)
            .source("s");
    PGSimpleDataSource lent =
        DatabaseAddress.parse("jdbc:postgresql://h/d", ENVIRONMENT).source("s");

    assertEquals("bob/secret", own.getUser() + "/" + own.getPassword());
    assertEquals("ann/hush", lent.getUser() + "/" + lent.getPassword());
  }

  @Test
  void connectionsAreKeptAliveAndEndByThemselvesUnlessTheAddressSaysOtherwise() {
    PGSimpleDataSource usual = DatabaseAddress.parse("jdbc:postgresql://h/d", Map.of()).source("s");
    PGSimpleDataSource said =
        DatabaseAddress.parse(
                "jdbc:postgresql://h/d?connectTimeout=3&socketTimeout=7&options=-c%20x=1", Map.of())
            .source("s");

    assertTrue(usual.getTcpKeepAlive());
    assertEquals(10, usual.getConnectTimeout());
    assertEquals(120, usual.getSocketTimeout());
    assertTrue(usual.getOptions().contains("tcp_keepalives_idle=30"));
    assertEquals(3, said.getConnectTimeout());
    assertEquals(7, said.getSocketTimeout());
    assertEquals("-c x=1", said.getOptions());
    assertEquals("s", said.getCurrentSchema());
  }

  @Test
  void aSchemaMayBeNamed() {
    assertEquals(
        Optional.of("yard_1"),
        DatabaseAddress.parse("jdbc:postgresql://h/d?currentSchema=yard_1", Map.of()).schema());
    assertEquals(
        Optional.empty(), DatabaseAddress.parse("jdbc:postgresql://h/d", Map.of()).schema());
  }
}
