package rickyard.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** The journal: {@code journal/<n>.json}, one per morning, never changed once the next exists. */
public final class Journal {
  private static final Pattern NAME = Pattern.compile("([1-9][0-9]{0,8})\\.json");
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(tools.jackson.databind.MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .build();

  private final Path folder;

  Journal(Path folder) {
    this.folder = folder;
  }

  public void write(JournalEntry entry) {
    try {
      DurableFiles.write(
          folder.resolve(entry.number() + ".json"),
          JSON.writeValueAsString(entry).getBytes(StandardCharsets.UTF_8));
    } catch (IOException | JacksonException e) {
      throw new LedgerException("The journal cannot be written: " + e.getMessage(), e);
    }
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
      throw new LedgerException("The journal cannot be listed: " + e.getMessage(), e);
    }
    return List.copyOf(numbers);
  }

  /**
   * Reads one morning.
   *
   * @throws LedgerException if the entry is there and damaged, naming the file
   */
  public Optional<JournalEntry> find(int number) {
    Path file = folder.resolve(number + ".json");
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try {
      JournalEntry entry =
          JSON.readValue(Files.readString(file, StandardCharsets.UTF_8), JournalEntry.class);
      if (entry.number() != number) {
        throw new LedgerException(
            "The journal file " + file.getFileName() + " belongs to another morning.");
      }
      if (entry.format() > JournalEntry.FORMAT) {
        throw new LedgerException(
            "The journal was written by a newer Rickyard; use that version for this office.");
      }
      return Optional.of(entry);
    } catch (IOException | JacksonException e) {
      throw new LedgerException(
          "The journal file "
              + file.getFileName()
              + " is damaged and cannot be read. Put it back from a backup of the ledger.",
          e);
    }
  }
}
