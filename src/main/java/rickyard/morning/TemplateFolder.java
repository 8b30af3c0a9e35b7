package rickyard.morning;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import rickyard.ledger.Originals;
import rickyard.report.template.Templates;
import rickyard.report.text.BrokenTemplateException;
import rickyard.report.text.Languages;

/**
 * The office's own templates and texts, read once at the start: {@code config/templates}.
 *
 * @param files text by name, folders with {@code /}
 */
record TemplateFolder(SortedMap<String, String> files) {
  private static final String FOLDER = "templates";
  private static final long LARGEST = 1L << 20;
  private static final int DEEPEST = 4;

  TemplateFolder {
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /**
   * Reads the folder.
   *
   * @throws UsageException if a file is there that is no template, or one cannot be read
   */
  static TemplateFolder read(Optional<Path> officeConfig) {
    SortedMap<String, String> files = new TreeMap<>();
    Optional<Path> folder = officeConfig.map(c -> c.resolve(FOLDER)).filter(Files::isDirectory);
    if (folder.isPresent()) {
      try (Stream<Path> found = Files.walk(folder.get(), DEEPEST)) {
        for (Path file : found.filter(f -> !Files.isDirectory(f)).sorted().toList()) {
          add(files, name(folder.get(), file), file);
        }
      } catch (IOException e) {
        throw new UsageException("The folder config/templates cannot be read: " + e.getMessage());
      }
    }
    return new TemplateFolder(files);
  }

  private static String name(Path folder, Path file) {
    StringBuilder name = new StringBuilder();
    for (Path step : folder.relativize(file)) {
      name.append(name.length() == 0 ? "" : "/").append(step);
    }
    return name.toString();
  }

  private static void add(Map<String, String> files, String name, Path file) throws IOException {
    if (isLeftover(String.valueOf(file.getFileName()))) {
      return;
    }
    if (!Templates.NAMES.contains(name) && !Languages.FILE.matcher(name).matches()) {
      throw new UsageException(
          "config/templates/"
              + name
              + " is no template; the templates are "
              + String.join(", ", Templates.NAMES)
              + " and texts_LANGUAGE.properties.");
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > LARGEST) {
      throw new UsageException("config/templates/" + name + " is no file of at most 1 MiB.");
    }
    files.put(name, text(name, Files.readAllBytes(file)));
  }

  /** Files that systems and editors leave beside others. */
  private static boolean isLeftover(String name) {
    return name.startsWith(".")
        || name.endsWith("~")
        || name.equals("Thumbs.db")
        || name.equals("desktop.ini");
  }

  private static String text(String name, byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new BrokenTemplateException(name, 0, "it is not UTF-8 text", e);
    }
  }

  /** Digests by name, for the morning's identity. */
  SortedMap<String, String> digests() {
    SortedMap<String, String> digests = new TreeMap<>();
    files.forEach(
        (name, text) ->
            digests.put(
                FOLDER + "/" + name, Originals.sha256(text.getBytes(StandardCharsets.UTF_8))));
    return digests;
  }
}
