package rickyard.ledger;

import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Optional;

/** What a database server refuses or cannot do, as a sentence; nothing of it is damage. */
final class ServerFaults {
  private static final int DEPTH = 30;
  private static final String AGAIN = ", then run the same command again.";

  private final DatabaseAddress address;

  ServerFaults(DatabaseAddress address) {
    this.address = address;
  }

  /** The sentence for a failure that came from the server's state and not from the tables. */
  Optional<LedgerException> of(Throwable failure) {
    Throwable at = failure;
    for (int i = 0; at != null && i < DEPTH; i++) {
      if (at instanceof LedgerException said) {
        return Optional.of(said);
      }
      if (at instanceof SQLException sql) {
        Optional<String> sentence = sentence(sql);
        if (sentence.isPresent()) {
          return Optional.of(new LedgerException(sentence.get(), failure));
        }
      }
      at = at.getCause();
    }
    return Optional.empty();
  }

  /** The same while the very first connection is made: then nothing was lost. */
  LedgerException atConnecting(SQLException e) {
    String state = String.valueOf(e.getSQLState());
    if (state.equals("08001") || state.equals("08006") || state.startsWith("57P")) {
      return new LedgerException(
          "There is no answer from "
              + address.words()
              + "; see that the server runs and that --ledger names its host and port"
              + AGAIN,
          e);
    }
    Optional<String> sentence = state.startsWith("08") ? Optional.empty() : sentence(e);
    return (state.equals("08004") ? Optional.of(notLetIn()) : sentence)
        .map(words -> new LedgerException(words, e))
        .orElseGet(
            () ->
                new LedgerException(
                    "The server does not open "
                        + address.words()
                        + " (its code is "
                        + state
                        + ")"
                        + "; ask whoever keeps it"
                        + AGAIN,
                    e));
  }

  LedgerException lost(Throwable cause) {
    return new LedgerException(lostSentence(), cause);
  }

  /** The same for a worker, which leaves nothing to go on with. */
  LedgerException worker(Throwable cause) {
    return new LedgerException(
        "The connection to "
            + address.words()
            + " was lost; what this worker had in hand is read by another or by the run itself."
            + " Start it again when the server is back.",
        cause);
  }

  private String lostSentence() {
    return "The connection to "
        + address.words()
        + " was lost; nothing is half-written, the same command goes on where it stopped.";
  }

  private String notLetIn() {
    return "The server does not let Rickyard into "
        + address.words()
        + ": wrong or no user or password; put them into "
        + DatabaseAddress.USER
        + " and "
        + DatabaseAddress.PASSWORD
        + AGAIN;
  }

  private Optional<String> sentence(SQLException e) {
    if (e instanceof SQLTransientConnectionException) {
      return Optional.of(lostSentence());
    }
    String state = String.valueOf(e.getSQLState());
    if (state.startsWith("08") || state.startsWith("57P")) {
      return Optional.of(lostSentence());
    }
    if (state.startsWith("28")) {
      return Optional.of(notLetIn());
    }
    return Optional.ofNullable(
        switch (state) {
          case "3D000" ->
              "There is no such database as "
                  + address.words()
                  + "; let its keeper make it with CREATE DATABASE"
                  + AGAIN;
          case "42501" ->
              "The user has not the rights that Rickyard needs in "
                  + address.words()
                  + "; let its keeper GRANT CREATE ON DATABASE to that user, or make a schema that"
                  + " the user owns and name it in --ledger with ?currentSchema=NAME"
                  + AGAIN;
          case "25006" ->
              "The server lets nothing be written into "
                  + address.words()
                  + " (it is a copy, or set to be read only); name the one that can be written"
                  + AGAIN;
          case "53300" ->
              "The server has no connection left for "
                  + address.words()
                  + "; Rickyard needs up to 11, with workers up to 16"
                  + AGAIN;
          case "53100", "53200" ->
              "The server of "
                  + address.words()
                  + " is out of disk or memory; let its keeper make room"
                  + AGAIN;
          case "55P03", "57014", "2BP01" ->
              "Something else uses or depends on Rickyard's tables in "
                  + address.words()
                  + "; end or remove that"
                  + AGAIN;
          default -> null;
        });
  }
}
