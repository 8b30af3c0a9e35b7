package rickyard.post;

import java.io.ByteArrayInputStream;
import java.io.InputStream;

/** The bytes of a draft. */
public final class Eml {
  private final byte[] bytes;

  /** Takes the bytes, which nobody changes afterwards. */
  public Eml(byte[] bytes) {
    this.bytes = bytes.clone();
  }

  InputStream open() {
    return new ByteArrayInputStream(bytes);
  }
}
