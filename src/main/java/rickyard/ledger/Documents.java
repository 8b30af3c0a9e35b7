package rickyard.ledger;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.io.Serializable;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.SharedValues;

/** Turns a result into one compressed document for the database and back; own types only. */
final class Documents {
  private static final ObjectInputFilter OWN_TYPES =
      ObjectInputFilter.Config.createFilter("rickyard.**;java.base/*;!*");

  private Documents() {}

  static byte[] pack(Serializable value) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Deflater fast = new Deflater(Deflater.BEST_SPEED);
    try (ObjectOutputStream out = new Writer(new DeflaterOutputStream(bytes, fast))) {
      out.writeObject(value);
    } catch (IOException e) {
      throw new LedgerException("A result cannot be kept: " + e.getMessage(), e);
    } finally {
      fast.end();
    }
    return bytes.toByteArray();
  }

  /**
   * The document; empty where it is of another shape than this program's.
   *
   * @param shared what other documents hold as well
   */
  static <T> Optional<T> unpack(byte[] bytes, Class<T> type, SharedValues shared) {
    try (ObjectInputStream in =
        new Reader(new InflaterInputStream(new ByteArrayInputStream(bytes)), shared)) {
      in.setObjectInputFilter(OWN_TYPES);
      return Optional.of(type.cast(in.readObject()));
    } catch (IOException | ClassNotFoundException | ClassCastException e) {
      return Optional.empty();
    }
  }

  /** Stands for an optional value, which the JDK does not serialise. */
  private record Maybe(char kind, @Nullable Object value) implements Serializable {}

  private static final class Writer extends ObjectOutputStream {
    Writer(OutputStream out) throws IOException {
      super(out);
      enableReplaceObject(true);
    }

    @Override
    protected Object replaceObject(Object object) {
      if (object instanceof Optional<?> optional) {
        return new Maybe('o', optional.orElse(null));
      }
      if (object instanceof OptionalInt number) {
        return new Maybe('i', number.isPresent() ? Integer.valueOf(number.getAsInt()) : null);
      }
      if (object instanceof OptionalDouble number) {
        return new Maybe('d', number.isPresent() ? Double.valueOf(number.getAsDouble()) : null);
      }
      return object;
    }
  }

  private static final class Reader extends ObjectInputStream {
    private final SharedValues shared;

    Reader(InputStream in, SharedValues shared) throws IOException {
      super(in);
      this.shared = shared;
      enableResolveObject(true);
    }

    @Override
    protected Object resolveObject(Object object) {
      if (!(object instanceof Maybe maybe)) {
        return shared.one(object);
      }
      return switch (maybe.kind()) {
        case 'i' ->
            maybe.value() instanceof Integer number ? OptionalInt.of(number) : OptionalInt.empty();
        case 'd' ->
            maybe.value() instanceof Double number
                ? OptionalDouble.of(number)
                : OptionalDouble.empty();
        default -> shared.one(Optional.ofNullable(maybe.value()));
      };
    }
  }
}
