package rickyard.ledger;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/** Turns a result into one compressed document for the database and back; own types only. */
final class Documents {
  private static final ObjectInputFilter OWN_TYPES =
      ObjectInputFilter.Config.createFilter("rickyard.**;java.base/*;!*");

  private Documents() {}

  static byte[] pack(Serializable value) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      Deflater fast = new Deflater(Deflater.BEST_SPEED);
      try (ObjectOutputStream out = new ObjectOutputStream(new DeflaterOutputStream(bytes, fast))) {
        out.writeObject(value);
      } finally {
        fast.end();
      }
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new LedgerException("A result cannot be kept: " + e.getMessage(), e);
    }
  }

  static <T> T unpack(byte[] bytes, Class<T> type) {
    try (ObjectInputStream in =
        new ObjectInputStream(new InflaterInputStream(new ByteArrayInputStream(bytes)))) {
      in.setObjectInputFilter(OWN_TYPES);
      return type.cast(in.readObject());
    } catch (IOException | ClassNotFoundException | ClassCastException e) {
      throw new LedgerException("A result in the ledger is damaged: " + e.getMessage(), e);
    }
  }
}
