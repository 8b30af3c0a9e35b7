package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import org.h2.jdbcx.JdbcConnectionPool;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;

/** The database of an office as a file in a folder of its own. */
final class FileDatabase extends Database {
  private final Path folder;
  private final JdbcConnectionPool pool;

  private FileDatabase(Path folder, JdbcConnectionPool pool, int before) {
    super(pool, before);
    this.folder = folder;
    this.pool = pool;
  }

  /** H2 would take 64 MiB for each GiB that the program may use; what is read is read once. */
  private static final int CACHE_KIB = 16 << 10;

  /**
   * Opens it, makes it where there is none, and migrates it.
   *
   * @throws RuntimeException of the database or of its migration, where it is damaged, foreign or
   *     of a later version
   */
  static FileDatabase open(Path folder) {
    try {
      DurableFiles.privateFolder(folder);
      ClosedMark.lift(folder);
    } catch (IOException e) {
      throw new IllegalStateException("not a folder that can be written: " + folder, e);
    }
    String url =
        "jdbc:h2:file:"
            + folder.resolve("rickyard").toAbsolutePath()
            + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
            + ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;CACHE_SIZE="
            + CACHE_KIB;
    JdbcConnectionPool pool = JdbcConnectionPool.create(url, "rickyard", "");
    boolean opened = false;
    try {
      int before = version(new JdbcTemplate(pool), "public");
      if (before < Head.FORMAT) {
        migrations(pool).load().migrate();
      }
      opened = true;
      return new FileDatabase(folder, pool, before);
    } finally {
      if (!opened) {
        pool.dispose();
      }
    }
  }

  @Override
  String kind() {
    return "H2";
  }

  /** H2's commits wait in memory, a kill can lose them. */
  @Override
  Optional<Sharing> sharing() {
    return Optional.empty();
  }

  @Override
  void checkpoint() {
    jdbc().execute("CHECKPOINT SYNC");
  }

  @Override
  Optional<LedgerException> lost() {
    return Optional.empty();
  }

  @Override
  public void close() {
    try {
      jdbc().execute("SHUTDOWN");
    } catch (DataAccessException e) {
      if (!(e.getCause() instanceof SQLException)) {
        throw e;
      }
    } finally {
      pool.dispose();
    }
    ClosedMark.set(folder);
  }
}
