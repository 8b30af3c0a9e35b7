package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Arrays;

/** A document inside a container: its name there (never used as a path) and its bytes. */
public final class Part implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final byte[] bytes;

  public Part(String name, byte[] bytes) {
    this.name = requireNonNull(name, "name");
    this.bytes = bytes.clone();
  }

  public String name() {
    return name;
  }

  public byte[] bytes() {
    return bytes.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Part part && part.name.equals(name) && Arrays.equals(part.bytes, bytes);
  }

  @Override
  public int hashCode() {
    return 31 * name.hashCode() + Arrays.hashCode(bytes);
  }
}
