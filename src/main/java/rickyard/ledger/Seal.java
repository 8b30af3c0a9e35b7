package rickyard.ledger;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;

/**
 * The digest that a row carries of its own content, keys included. The database does not check the
 * bytes that it reads from the disk; a seal shows a byte that changed, and a row that an altered
 * index gives for another.
 */
final class Seal {
  private final MessageDigest digest = Originals.digest();

  static String of(String... parts) {
    Seal seal = new Seal();
    for (String part : parts) {
      seal.add(part);
    }
    return seal.hex();
  }

  Seal add(String part) {
    return add(part.getBytes(StandardCharsets.UTF_8));
  }

  /** Lengths keep two different rows from giving one seal. */
  Seal add(byte[] part) {
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(0, part.length));
    digest.update(part);
    return this;
  }

  String hex() {
    return HexFormat.of().formatHex(digest.digest());
  }

  /** The digest of what was added until now; more can be added. */
  String hexSoFar() {
    try {
      return HexFormat.of().formatHex(((MessageDigest) digest.clone()).digest());
    } catch (CloneNotSupportedException e) {
      throw new IllegalStateException(e);
    }
  }
}
