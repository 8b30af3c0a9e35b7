package rickyard.intake.isolate;

import java.io.IOException;
import java.io.InputStream;
import java.io.InvalidClassException;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.Report;
import rickyard.core.forage.Sample;
import rickyard.core.forage.SharedValues;
import rickyard.intake.ReadDocument;
import rickyard.intake.ReadFile;

/**
 * What a child says about a file, as bytes and back.
 *
 * <p>For each document: the document with the first samples of its report, how many more portions
 * of samples there are, and these. After each portion both sides forget what they have seen, so
 * that a report of some hundred thousand samples needs no more room on its way than one portion.
 */
final class Answers {
  private static final int DEPTH = 60;

  /** Samples of one portion. */
  private static final int PORTION = 500;

  /** Types of our own that make up an answer: records and enums whose constructors only check. */
  private static final Set<String> PACKAGES =
      Set.of("rickyard.core.forage", "rickyard.core.quantity");

  private static final Set<String> TYPES =
      Set.of(
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
    objects.writeInt(file.documents().size());
    for (ReadDocument document : file.documents()) {
      Optional<Report> report = document.report();
      List<Sample> samples = report.map(Report::samples).orElse(List.of());
      int first = Math.min(PORTION, samples.size());
      objects.writeObject(with(document, report.map(r -> with(r, samples.subList(0, first)))));
      objects.writeInt((samples.size() - first + PORTION - 1) / PORTION);
      for (int from = first; from < samples.size(); from += PORTION) {
        objects.reset();
        int to = Math.min(from + PORTION, samples.size());
        objects.writeObject(samples.subList(from, to).toArray(new Sample[0]));
      }
    }
    objects.flush();
  }

  private static ReadDocument with(ReadDocument document, Optional<Report> report) {
    return new ReadDocument(
        document.part(),
        document.sha256(),
        document.bytes(),
        document.kind(),
        document.container(),
        report,
        document.code(),
        document.reason());
  }

  private static Report with(Report report, List<Sample> samples) {
    return new Report(
        report.document(),
        report.lab(),
        report.reportNo(),
        report.revision(),
        report.replaces(),
        report.status(),
        report.reportedOn(),
        samples,
        report.notes(),
        report.layout());
  }

  /**
   * Reads an answer of a child that may have been taken over.
   *
   * @param most bytes, and places in lists, that it may have
   * @param shared what earlier answers said as well
   * @throws IOException if it ends too early, is too large, or holds any other type
   */
  static ReadFile read(InputStream in, long most, SharedValues shared) throws IOException {
    try {
      ObjectInputStream objects = new Reader(in, shared);
      objects.setObjectInputFilter(new Allowed(most));
      int count = objects.readInt();
      List<ReadDocument> documents = new ArrayList<>();
      while (documents.size() < count) {
        documents.add(document(objects));
      }
      return new ReadFile(documents);
    } catch (ClassNotFoundException | RuntimeException | StackOverflowError wrong) {
      throw new InvalidClassException(String.valueOf(wrong.getMessage()));
    }
  }

  private static ReadDocument document(ObjectInputStream objects)
      throws IOException, ClassNotFoundException {
    ReadDocument document = (ReadDocument) objects.readObject();
    int portions = objects.readInt();
    if (portions == 0) {
      return document;
    }
    Report first = document.report().orElseThrow();
    List<Sample> samples = new ArrayList<>(first.samples());
    for (int portion = 0; portion < portions; portion++) {
      samples.addAll(List.of((Sample[]) objects.readObject()));
    }
    return with(document, Optional.of(with(first, samples)));
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

  /** Reads objects; what is often said, as a relation with its words, is kept once. */
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
      if (maybe.number()) {
        return maybe.value() instanceof Integer n ? OptionalInt.of(n) : OptionalInt.empty();
      }
      return shared.one(Optional.ofNullable(maybe.value()));
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
