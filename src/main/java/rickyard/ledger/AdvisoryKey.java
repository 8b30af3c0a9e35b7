package rickyard.ledger;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** What advisory locks on a server are taken on: numbers, made of words that no other uses. */
final class AdvisoryKey {
  /** Whether a lock on the number of the parameter is held, as it is listed by the server. */
  static final String HELD =
      "locktype = 'advisory' AND granted AND objsubid = 1"
          + " AND database = (SELECT oid FROM pg_database WHERE datname = current_database())"
          + " AND ((CAST(classid AS BIGINT) << 32) | CAST(objid AS BIGINT)) = ?";

  private AdvisoryKey() {}

  static long of(String... words) {
    byte[] text = String.join(" ", words).getBytes(StandardCharsets.UTF_8);
    return ByteBuffer.wrap(Originals.digest().digest(text)).getLong();
  }

  /** Keeps the others out while something of an office is done; held by every run. */
  static long office(String schema) {
    return of("rickyard", schema);
  }

  /** Held shared by workers inside, and by a run alone while it wants none inside. */
  static long gate(String schema) {
    return of("rickyard gate", schema);
  }

  /** Held shared while a document of a part is read; alone, to wait for the one before. */
  static long part(String schema, long part) {
    return of("rickyard part", schema, String.valueOf(part));
  }

  /** Held shared by every worker of an office. */
  static long workers(String schema) {
    return of("rickyard workers", schema);
  }

  /** Held shared by every worker whose reader is this one. */
  static long workers(String schema, String reader) {
    return of("rickyard workers", schema, reader);
  }
}
