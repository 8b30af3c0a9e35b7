package rickyard.intake.grid.ocr;

import static java.util.Objects.requireNonNull;

import java.io.File;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rickyard.intake.grid.UnreadableException;

/**
 * The text recogniser of this machine.
 *
 * @param program its file
 * @param identity version and languages: another recogniser may read another thing
 * @param languages the languages it is asked for, joined by +
 */
public record Recogniser(Path program, String identity, String languages) implements Serializable {
  /** The environment variable that names the program's file, or {@code none} to use none. */
  public static final String SETTING = "RICKYARD_OCR";

  private static final String NAME = "tesseract";

  /** The languages of the dictionary; a recogniser may lack some. */
  private static final List<String> KNOWN = List.of("eng", "deu", "fra", "spa", "nld");

  private static final Pattern LANGUAGE = Pattern.compile("[a-z]{3}");
  private static final Duration SHORT = Duration.ofSeconds(10);
  private static final Duration LONG = Duration.ofSeconds(60);
  private static final int MOST_ANSWERED = 8 << 20;

  public Recogniser {
    requireNonNull(program, "program");
    requireNonNull(identity, "identity");
    requireNonNull(languages, "languages");
  }

  /** A path is not serialisable, its name is. */
  private Object writeReplace() {
    return new Told(program.toString(), identity, languages);
  }

  /** A recogniser on its way to another process of this machine. */
  private record Told(String program, String identity, String languages) implements Serializable {
    private Object readResolve() {
      return new Recogniser(Path.of(program), identity, languages);
    }
  }

  /** The recogniser that the setting or the search path names; empty if there is none. */
  public static Optional<Recogniser> find() {
    return find(
        Optional.ofNullable(System.getenv(SETTING)), Optional.ofNullable(System.getenv("PATH")));
  }

  static Optional<Recogniser> find(Optional<String> setting, Optional<String> searchPath) {
    if (setting.filter(s -> !s.isBlank()).isPresent()) {
      return setting
          .filter(s -> !s.equals("none"))
          .map(Path::of)
          .filter(Files::isExecutable)
          .flatMap(Recogniser::asked);
    }
    for (String folder : searchPath.orElse("").split(Pattern.quote(File.pathSeparator), -1)) {
      for (String name : List.of(NAME, NAME + ".exe")) {
        Path program = Path.of(folder, name);
        if (!folder.isBlank() && Files.isRegularFile(program) && Files.isExecutable(program)) {
          return asked(program);
        }
      }
    }
    return Optional.empty();
  }

  /** Asks a program what it is; one that does not answer is none. */
  private static Optional<Recogniser> asked(Path program) {
    try {
      String version = first(answer(program, "--version"));
      List<String> installed =
          answer(program, "--list-langs")
              .lines()
              .map(String::strip)
              .filter(l -> LANGUAGE.matcher(l).matches() && !l.equals("osd"))
              .sorted()
              .toList();
      List<String> wanted = new ArrayList<>(KNOWN);
      wanted.retainAll(installed);
      if (wanted.isEmpty()) {
        return Optional.empty();
      }
      String languages = String.join("+", wanted);
      return Optional.of(new Recogniser(program, version + " " + languages, languages));
    } catch (UnreadableException silent) {
      return Optional.empty();
    }
  }

  private static String answer(Path program, String question) {
    return Running.of(
        List.of(program.toString(), question), Optional.empty(), SHORT, MOST_ANSWERED);
  }

  private static String first(String text) {
    return text.lines().findFirst().orElse("").strip();
  }

  /**
   * Reads one picture.
   *
   * @return the recogniser's table of words
   * @throws UnreadableException code {@code ocr-failed} where it fails, hangs or answers too much
   */
  String read(Picture picture) {
    return Running.of(
        List.of(
            program.toString(),
            "stdin",
            "stdout",
            "-l",
            languages,
            "--dpi",
            String.valueOf(picture.dpi()),
            "--psm",
            "6",
            "tsv"),
        Optional.of(picture.bytes()),
        LONG,
        MOST_ANSWERED);
  }
}
