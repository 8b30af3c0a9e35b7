package rickyard.ledger;

import java.sql.SQLException;
import org.flywaydb.core.api.FlywayException;
import org.h2.mvstore.MVStoreException;
import org.springframework.dao.DataAccessException;
import org.springframework.transaction.TransactionException;

/** Tells a fault of the database from any other. */
final class DatabaseFaults {
  private static final int DEPTH = 30;

  /** H2's word for a file that another process has open. */
  private static final int IN_USE = 90020;

  private DatabaseFaults() {}

  /** Whether another program has the database open: nothing is damaged. */
  static boolean isInUse(Throwable failure) {
    Throwable at = failure;
    for (int i = 0; at != null && i < DEPTH; i++) {
      if (at instanceof SQLException sql && sql.getErrorCode() == IN_USE) {
        return true;
      }
      at = at.getCause();
    }
    return false;
  }

  static boolean isOne(Throwable failure) {
    if (Exhausted.sentence(failure).isPresent()) {
      return false;
    }
    Throwable at = failure;
    for (int i = 0; at != null && i < DEPTH; i++) {
      if (at instanceof LedgerException) {
        return false;
      }
      if (at instanceof SQLException
          || at instanceof DataAccessException
          || at instanceof TransactionException
          || at instanceof FlywayException
          || at instanceof MVStoreException) {
        return true;
      }
      at = at.getCause();
    }
    return false;
  }
}
