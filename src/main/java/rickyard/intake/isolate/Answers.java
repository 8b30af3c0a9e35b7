package rickyard.intake.isolate;

import java.io.IOException;
import java.io.InputStream;
import java.io.InvalidClassException;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.io.Serializable;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rickyard.intake.ReadFile;

/** What a child says about a file, as bytes and back. */
final class Answers {
  private static final int DEPTH = 60;

  /** Types of our own that make up an answer: records and enums whose constructors only check. */
  private static final Set<String> PACKAGES =
      Set.of("rickyard.core.forage", "rickyard.core.quantity");

  private static final Set<String> TYPES =
      Set.of(
          "rickyard.intake.ReadFile",
          "rickyard.intake.ReadDocument",
          Maybe.class.getName(),
          "java.lang.Enum",
          "java.lang.Integer",
          "java.lang.Number",
          "java.lang.Object",
          "java.lang.Record",
          "java.lang.String",
          "java.time.LocalDate",
          "java.time.Ser",
          "java.util.CollSer",
          "java.util.Collections$UnmodifiableCollection",
          "java.util.Collections$UnmodifiableSet",
          "java.util.Collections$UnmodifiableSortedSet",
          "java.util.ImmutableCollections$List12",
          "java.util.ImmutableCollections$ListN",
          "java.util.Optional",
          "java.util.OptionalInt",
          "java.util.TreeSet");

  private Answers() {}

  static void write(ReadFile file, OutputStream out) throws IOException {
    ObjectOutputStream objects = new Writer(out);
    objects.writeObject(file);
    objects.flush();
  }

  /**
   * Reads an answer of a child that may have been taken over.
   *
   * @param most bytes, and places in lists, that it may have
   * @throws IOException if it ends too early, is too large, or holds any other type
   */
  static ReadFile read(InputStream in, long most) throws IOException {
    try {
      ObjectInputStream objects = new Reader(in);
      objects.setObjectInputFilter(new Allowed(most));
      return (ReadFile) objects.readObject();
    } catch (ClassNotFoundException | RuntimeException | StackOverflowError wrong) {
      throw new InvalidClassException(String.valueOf(wrong.getMessage()));
    }
  }

  /** Stands for an optional value, which the JDK does not serialise. */
  private record Maybe(boolean number, @Nullable Object value) implements Serializable {}

  private static final class Writer extends ObjectOutputStream {
    Writer(OutputStream out) throws IOException {
      super(out);
      enableReplaceObject(true);
    }

    @Override
    protected Object replaceObject(Object object) {
      if (object instanceof Optional<?> optional) {
        return new Maybe(false, optional.orElse(null));
      }
      if (object instanceof OptionalInt number) {
        return new Maybe(true, number.isPresent() ? Integer.valueOf(number.getAsInt()) : null);
      }
      return object;
    }
  }

  private static final class Reader extends ObjectInputStream {
    Reader(InputStream in) throws IOException {
      super(in);
      enableResolveObject(true);
    }

    @Override
    protected Object resolveObject(Object object) {
      if (!(object instanceof Maybe maybe)) {
        return object;
      }
      if (maybe.number()) {
        return maybe.value() instanceof Integer n ? OptionalInt.of(n) : OptionalInt.empty();
      }
      return Optional.ofNullable(maybe.value());
    }
  }

  /** Lets only known types through, so many bytes, and lists no longer in sum than those bytes. */
  private static final class Allowed implements ObjectInputFilter {
    private final long most;
    private long places;

    private Allowed(long most) {
      this.most = most;
    }

    @Override
    public Status checkInput(FilterInfo info) {
      places += Math.max(0, info.arrayLength());
      if (info.depth() > DEPTH || info.streamBytes() > most || places > most / 8) {
        return Status.REJECTED;
      }
      Class<?> type = info.serialClass();
      return type == null || isKnown(type) ? Status.ALLOWED : Status.REJECTED;
    }

    private static boolean isKnown(Class<?> type) {
      Class<?> bare = type;
      while (bare.isArray()) {
        bare = bare.getComponentType();
      }
      if (bare.isPrimitive() || TYPES.contains(bare.getName())) {
        return true;
      }
      return PACKAGES.contains(bare.getPackageName()) && (bare.isRecord() || bare.isEnum());
    }
  }
}
