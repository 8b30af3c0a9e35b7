package rickyard.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a server says, in sentences; the server itself is not needed. */
class ServerFaultsTest {
  private static final String LOST =
      "The connection to the PostgreSQL database hay at db.example was lost; nothing is"
          + " half-written, the same command goes on where it stopped.";
  private final ServerFaults faults =
      new ServerFaults(DatabaseAddress.parse("jdbc:postgresql://db.example/hay", Map.of()));

  private String sentence(Throwable failure) {
    return faults.of(failure).map(Throwable::getMessage).orElse("none");
  }

  private static Throwable deep(SQLException e) {
    return new IllegalStateException("the step failed", new IllegalStateException(e));
  }

  @ParameterizedTest
  @ValueSource(strings = {"08006", "08003", "57P01", "57P02", "57P03"})
  void aLostConnectionIsNoDamage(String state) {
    assertEquals(LOST, sentence(deep(new SQLException("secret", state))));
  }

  @Test
  void norIsAPoolThatGetsNone() {
    assertEquals(LOST, sentence(deep(new SQLTransientConnectionException("secret"))));
  }

  @ParameterizedTest
  @CsvSource({
    "28P01, The server does not let Rickyard into",
    "28000, The server does not let Rickyard into",
    "3D000, There is no such database as",
    "42501, The user has not the rights that Rickyard needs in",
    "25006, The server lets nothing be written into",
    "53300, The server has no connection left for",
    "53100, The server of",
    "55P03, Something else uses or depends on Rickyard's tables in"
  })
  void aRefusalSaysWhatToDo(String state, String start) {
    String sentence = sentence(deep(new SQLException("secret", state)));

    assertTrue(sentence.startsWith(start + " the PostgreSQL database hay at db.example"), sentence);
    assertTrue(sentence.endsWith(", then run the same command again."), sentence);
  }

  @ParameterizedTest
  @ValueSource(strings = {"42P01", "42703", "23505", "22P02"})
  void whatIsWrongWithTheTablesIsLeftToARebuild(String state) {
    assertEquals(Optional.empty(), faults.of(deep(new SQLException("x", state))));
  }

  @Test
  void whatTheLedgerSaidAlreadyStays() {
    LedgerException said = LedgerException.held("held");

    assertSame(said, faults.of(new IllegalStateException(said)).orElseThrow());
  }

  @Test
  void noAnswerAtTheBeginningIsNoLoss() {
    assertEquals(
        "There is no answer from the PostgreSQL database hay at db.example; see that the server"
            + " runs and that --ledger names its host and port, then run the same command again.",
        faults.atConnecting(new SQLException("secret", "08001")).getMessage());
    assertEquals(
        "The server does not open the PostgreSQL database hay at db.example (its code is 0A000);"
            + " ask whoever keeps it, then run the same command again.",
        faults.atConnecting(new SQLException("secret", "0A000")).getMessage());
    for (String state : List.of("28P01", "08004")) {
      assertEquals(
          "The server does not let Rickyard into the PostgreSQL database hay at db.example: wrong or"
              + " no user or password; put them into RICKYARD_LEDGER_USER and"
              + " RICKYARD_LEDGER_PASSWORD, then run the same command again.",
          faults.atConnecting(new SQLException("secret", state)).getMessage());
    }
  }
}
