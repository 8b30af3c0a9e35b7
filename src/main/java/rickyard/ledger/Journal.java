package rickyard.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The journal: {@code journal/<n>.json}, one per morning, never changed once the next exists, and
 * {@code journal/head.json}, which says how far it goes.
 *
 * <p>Each file carries the digest of its own content, and an entry that of all entries before it: a
 * file that was changed, exchanged or taken away is seen.
 */
public final class Journal {
  static final String HEAD = "head.json";
  static final String REMEDY =
      " Put it back from a backup of the ledger, then run the same command again.";
  private static final Pattern NAME = Pattern.compile("([1-9][0-9]{0,8})\\.json");
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY).build();

  private final Path folder;

  Journal(Path folder) {
    this.folder = folder;
  }

  Path file(int number) {
    return folder.resolve(number + ".json");
  }

  /** Writes the entry behind the entries that are there. */
  public void write(JournalEntry entry) {
    try {
      String past = past(digests().headMap(entry.number()));
      byte[] object = JSON.writeValueAsString(entry).getBytes(StandardCharsets.UTF_8);
      keep(file(entry.number()), SealedJson.seal(object, "," + property(past)));
    } catch (JacksonException e) {
      throw new LedgerException("A journal entry cannot be written: " + e.getMessage(), e);
    }
  }

  void write(Head head) {
    keep(folder.resolve(HEAD), SealedJson.seal(JSON.writeValueAsString(head)));
  }

  private void keep(Path file, byte[] bytes) {
    try {
      DurableFiles.privateFolder(folder);
      DurableFiles.write(file, bytes);
    } catch (IOException e) {
      throw new LedgerException(
          "The journal file " + file + " cannot be written: " + DurableFiles.why(e), e);
    }
  }

  private static String property(String past) {
    return "\"past\":\"" + past + "\"";
  }

  /** One digest for the files before an entry: their numbers and what is in them. */
  private static String past(SortedMap<Integer, String> digests) {
    Seal seal = new Seal();
    digests.forEach((number, digest) -> seal.add(number.toString()).add(digest));
    return seal.hex();
  }

  private SortedMap<Integer, String> digests() {
    SortedMap<Integer, String> digests = new TreeMap<>();
    numbers().forEach(n -> digests.put(n, digest(n)));
    return digests;
  }

  /** SHA-256 of the file of a morning; empty text where there is none. */
  String digest(int number) {
    return bytes(number).map(Originals::sha256).orElse("");
  }

  /** Numbers of the mornings in the journal, ascending. */
  public List<Integer> numbers() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    TreeSet<Integer> numbers = new TreeSet<>();
    try (Stream<Path> files = Files.list(folder)) {
      files.forEach(
          file -> {
            var match = NAME.matcher(String.valueOf(file.getFileName()));
            if (match.matches()) {
              numbers.add(Integer.valueOf(match.group(1)));
            }
          });
    } catch (IOException e) {
      throw new LedgerException(
          "The journal " + folder + " cannot be listed: " + DurableFiles.why(e), e);
    }
    return List.copyOf(numbers);
  }

  /** The head; empty if there is none that can be trusted. */
  Optional<Head> head() {
    try {
      byte[] bytes = Files.readAllBytes(folder.resolve(HEAD));
      return SealedJson.isSound(bytes)
          ? Optional.of(JSON.readValue(bytes, Head.class))
          : Optional.empty();
    } catch (IOException | JacksonException e) {
      return Optional.empty();
    }
  }

  boolean hasHead() {
    return Files.exists(folder.resolve(HEAD));
  }

  /**
   * Reads one morning.
   *
   * @throws LedgerException if the entry is there and damaged, naming the file
   */
  public Optional<JournalEntry> find(int number) {
    return bytes(number).map(bytes -> entry(number, bytes));
  }

  private Optional<byte[]> bytes(int number) {
    try {
      return Optional.of(Files.readAllBytes(file(number)));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new LedgerException(
          "The journal file " + file(number) + " cannot be read: " + DurableFiles.why(e), e);
    }
  }

  private JournalEntry entry(int number, byte[] bytes) {
    JournalEntry entry;
    try {
      if (SealedJson.isSealed(bytes) && !SealedJson.isSound(bytes)) {
        throw damaged(number);
      }
      entry = JSON.readValue(bytes, JournalEntry.class);
    } catch (JacksonException e) {
      throw damaged(number);
    }
    if (entry.format() > JournalEntry.FORMAT) {
      throw LedgerException.newer();
    }
    if (entry.number() != number) {
      throw new LedgerException(
          "The journal file " + file(number) + " belongs to another morning." + REMEDY);
    }
    if (entry.format() > 1 && !SealedJson.isSealed(bytes)) {
      throw damaged(number);
    }
    return entry;
  }

  private LedgerException damaged(int number) {
    return new LedgerException("The journal file " + file(number) + " is damaged." + REMEDY);
  }

  /**
   * Reads and checks every entry that should be there.
   *
   * @param head how far the journal goes, if that is known
   * @throws LedgerException naming the first file that is missing or damaged, unless it is the last
   */
  Survey survey(Optional<Head> head) {
    TreeSet<Integer> there = new TreeSet<>(numbers());
    there.removeIf(n -> head.isPresent() && head.get().isBegun(n));
    int last = Math.max(there.isEmpty() ? 0 : there.last(), head.map(Head::finished).orElse(0));
    SortedMap<Integer, String> sound = new TreeMap<>();
    Seal past = new Seal();
    for (int n = 1; n <= last; n++) {
      try {
        String digest = check(n, past.hexSoFar());
        sound.put(n, digest);
        past.add(String.valueOf(n)).add(digest);
      } catch (LedgerException e) {
        if (n < last || e.isNewer()) {
          throw e;
        }
        return new Survey(sound, Optional.of(e));
      }
    }
    return new Survey(sound, Optional.empty());
  }

  private String check(int number, String past) {
    byte[] bytes =
        bytes(number)
            .orElseThrow(
                () ->
                    new LedgerException(
                        "The journal file " + file(number) + " is missing." + REMEDY));
    if (!SealedJson.isSound(bytes) || !isOfThisFormat(bytes)) {
      entry(number, bytes);
    } else if (!isBehind(bytes, past)) {
      throw new LedgerException(
          "The journal file "
              + file(number)
              + " was not written after the files before it: one of them was changed or exchanged."
              + " Put the whole folder back from a backup of the ledger, then run the same command"
              + " again.");
    }
    return Originals.sha256(bytes);
  }

  private static boolean isOfThisFormat(byte[] bytes) {
    String start = "{\"format\":" + JournalEntry.FORMAT + ",";
    return new String(bytes, 0, Math.min(bytes.length, start.length()), StandardCharsets.ISO_8859_1)
        .equals(start);
  }

  private static boolean isBehind(byte[] bytes, String past) {
    int length = Math.min(bytes.length, 300);
    String end = new String(bytes, bytes.length - length, length, StandardCharsets.ISO_8859_1);
    return end.contains(property(past) + ",\"sha256\":");
  }
}
