package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.json.JsonMapper;

/**
 * What was handed to a mail server, as files of their own in {@code ledger/post}: {@code
 * KEY.intent} is on the disk before a message goes out, {@code KEY.sent} after the server took it.
 *
 * <p>An intent without the other mark is in doubt: the message may have gone out. It is never taken
 * back here but by {@link #withdraw}, when the server is known to have refused. A damaged intent
 * still counts as one. No address is kept.
 */
public final class PostBook {
  private static final Pattern NAME = Pattern.compile("([0-9a-f]{32}(?:-[1-9][0-9]?)?)\\.(\\w+)");
  private static final String INTENT = ".intent";
  private static final String SENT = ".sent";
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY).build();

  /** The seal is a property that no attempt has. */
  private static final ObjectReader ATTEMPT =
      JSON.readerFor(Attempt.class).without(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

  private final Path folder;

  /**
   * The post book of a ledger.
   *
   * @param ledger the ledger folder, held by the caller's lock
   */
  public PostBook(Path ledger) {
    this.folder = ledger.resolve("post");
  }

  /** How far a message is. */
  public enum State {
    NEW,
    IN_DOUBT,
    SENT
  }

  /**
   * One attempt to send a message.
   *
   * @param key 32 hexadecimal digits of the message's content, from a second attempt on followed by
   *     its number
   * @param kind letter or alert
   * @param about the client or adviser, by id
   * @param path where the message lay below the morning's folder
   * @param morning the morning's day
   * @param by who released it; empty for an alert
   */
  public record Attempt(
      String key, String kind, String about, String path, String morning, String by) {

    /** The content's digits, the same for every attempt. */
    public String id() {
      int end = key.indexOf('-');
      return end < 0 ? key : key.substring(0, end);
    }
  }

  /** An attempt and how it ended. */
  public record Entry(Attempt attempt, State state) {}

  /** How far the attempt of this key is. */
  public State state(String key) {
    if (Files.exists(folder.resolve(key + SENT))) {
      return State.SENT;
    }
    return Files.exists(folder.resolve(key + INTENT)) ? State.IN_DOUBT : State.NEW;
  }

  /** To be called before a message goes out; on the disk when it returns. */
  public void intend(Attempt attempt) {
    keep(attempt.key() + INTENT, SealedJson.seal(JSON.writeValueAsString(attempt)));
  }

  /** The server took it. */
  public void sent(Attempt attempt) {
    keep(attempt.key() + SENT, SealedJson.seal(JSON.writeValueAsString(attempt)));
  }

  /** The server certainly did not take it: it may be tried again. */
  public void withdraw(Attempt attempt) {
    try {
      DurableFiles.delete(folder.resolve(attempt.key() + INTENT));
    } catch (IOException e) {
      throw trouble(folder.resolve(attempt.key() + INTENT), "removed", e);
    }
  }

  private void keep(String name, byte[] bytes) {
    Path file = folder.resolve(name);
    try {
      DurableFiles.privateFolder(folder);
      DurableFiles.write(file, bytes);
    } catch (IOException e) {
      throw trouble(file, "written", e);
    }
  }

  private static LedgerException trouble(Path file, String what, IOException e) {
    return new LedgerException(
        "The post book's file " + file + " cannot be " + what + ": " + DurableFiles.why(e), e);
  }

  /** All attempts ever made, by key. */
  public List<Entry> entries() {
    return keys().stream().map(key -> new Entry(attempt(key), state(key))).toList();
  }

  private SortedSet<String> keys() {
    SortedSet<String> keys = new TreeSet<>();
    if (!Files.isDirectory(folder)) {
      return keys;
    }
    try (Stream<Path> files = Files.list(folder)) {
      files.forEach(
          file -> {
            Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
            if (name.matches() && List.of("intent", "sent").contains(name.group(2))) {
              keys.add(name.group(1));
            }
          });
    } catch (IOException e) {
      throw new LedgerException(
          "The post book " + folder + " cannot be listed: " + DurableFiles.why(e), e);
    }
    return keys;
  }

  private Attempt attempt(String key) {
    return read(key + SENT)
        .or(() -> read(key + INTENT))
        .orElseGet(() -> new Attempt(key, "unreadable", "", "", "", ""));
  }

  private Optional<Attempt> read(String name) {
    try {
      byte[] bytes = Files.readAllBytes(folder.resolve(name));
      return SealedJson.isSound(bytes) ? Optional.of(ATTEMPT.readValue(bytes)) : Optional.empty();
    } catch (IOException | JacksonException e) {
      return Optional.empty();
    }
  }
}
