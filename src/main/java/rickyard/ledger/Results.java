package rickyard.ledger;

import java.io.Serializable;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import rickyard.core.forage.SharedValues;

/**
 * What was made of the originals, kept so that it is not made twice. Each result is under a seal of
 * its key and its content: one that was altered on the disk counts as not there and is made again.
 */
public final class Results {
  private final JdbcTemplate jdbc;
  private final SharedValues shared = new SharedValues();

  Results(Database database) {
    this(database.jdbc());
  }

  Results(JdbcTemplate jdbc) {
    this.jdbc = jdbc;
  }

  /** Whether this reader has read a document; its reading may still turn out to be damaged. */
  public boolean hasReading(String sha256, String reader) {
    Integer found =
        jdbc.queryForObject(
            "SELECT COUNT(*) FROM reading WHERE sha256 = ? AND reader = ?",
            Integer.class,
            sha256,
            reader);
    return found != null && found > 0;
  }

  /** What a reader made of a document, if this reader has read it before. */
  public <T> Optional<T> reading(String sha256, String reader, Class<T> type) {
    return jdbc
        .query(
            "SELECT document, seal FROM reading WHERE sha256 = ? AND reader = ?",
            (row, n) -> new Sealed(row.getBytes(1), row.getString(2)),
            sha256,
            reader)
        .stream()
        .filter(s -> s.seal().equals(seal(s.document(), sha256, reader)))
        .findFirst()
        .flatMap(s -> Documents.unpack(s.document(), type, shared));
  }

  /** Keeps what a reader made of a document. */
  public void keepReading(String sha256, String reader, Serializable document) {
    byte[] bytes = Documents.pack(document);
    jdbc.update("DELETE FROM reading WHERE sha256 = ? AND reader = ?", sha256, reader);
    jdbc.update(
        "INSERT INTO reading (sha256, reader, document, seal) VALUES (?, ?, ?, ?)",
        sha256,
        reader,
        bytes,
        seal(bytes, sha256, reader));
  }

  /**
   * The result of a step of a morning, if it is there.
   *
   * @param identity of the morning, so that a result of another morning of this number is not used
   */
  public <T> Optional<T> step(int morning, String identity, String name, Class<T> type) {
    return jdbc
        .query(
            "SELECT document, seal FROM stage WHERE morning = ? AND name = ?",
            (row, n) -> new Sealed(row.getBytes(1), row.getString(2)),
            morning,
            name)
        .stream()
        .filter(s -> s.seal().equals(seal(s.document(), identity, name)))
        .findFirst()
        .flatMap(s -> Documents.unpack(s.document(), type, shared));
  }

  /** Keeps the result of a step of a morning. */
  public void keepStep(int morning, String identity, String name, Serializable document) {
    byte[] bytes = Documents.pack(document);
    jdbc.update("DELETE FROM stage WHERE morning = ? AND name = ?", morning, name);
    jdbc.update(
        "INSERT INTO stage (morning, name, document, seal) VALUES (?, ?, ?, ?)",
        morning,
        name,
        bytes,
        seal(bytes, identity, name));
  }

  /** Drops the steps of a morning that is not gone on with. */
  void forgetSteps(int morning) {
    jdbc.update("DELETE FROM stage WHERE morning = ?", morning);
  }

  /** Drops the steps of the mornings before one. */
  void forgetStepsBefore(int morning) {
    jdbc.update("DELETE FROM stage WHERE morning < ?", morning);
  }

  private static String seal(byte[] document, String... keys) {
    Seal seal = new Seal();
    for (String key : keys) {
      seal.add(key);
    }
    return seal.add(document).hex();
  }

  /** A document as it lies in the database. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Sealed(byte[] document, String seal) {
    Sealed {
      document = document == null ? new byte[0] : document;
      seal = seal == null ? "" : seal;
    }
  }
}
