package rickyard.docs;

import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rickyard.core.quantity.Cites;

/** Every method that says where its formula comes from. */
public final class CitedMethods {
  private static final Pattern COMMENT = Pattern.compile("/\\*\\*(.*?)\\*/", Pattern.DOTALL);
  private static final Pattern CODE =
      Pattern.compile("\\{@code ([^{}]*(?:\\{[^{}]*\\}[^{}]*)*)\\}");

  /**
   * One citation of one method.
   *
   * @param method class and method, without the program's own package
   * @param formula as its comment prints it, or that of its class; empty where neither does
   */
  public record Cited(String method, String formula, String source, String locator) {}

  private CitedMethods() {}

  public static List<Cited> all() {
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("rickyard")
            .stream()
            .flatMap(c -> c.getMethods().stream())
            .flatMap(CitedMethods::of)
            .distinct()
            .sorted(
                Comparator.comparing(Cited::method)
                    .thenComparing(Cited::source)
                    .thenComparing(Cited::locator))
            .toList();
  }

  private static Stream<Cited> of(JavaMethod method) {
    Stream<Cites> one =
        method.isAnnotatedWith(Cites.class)
            ? Stream.of(method.getAnnotationOfType(Cites.class))
            : Stream.empty();
    Stream<Cites> several =
        method.isAnnotatedWith(Cites.List.class)
            ? Stream.of(method.getAnnotationOfType(Cites.List.class).value())
            : Stream.empty();
    String owner = method.getOwner().getName();
    String name = owner.replaceFirst("^rickyard\\.", "") + "." + method.getName();
    return Stream.concat(one, several)
        .map(c -> new Cited(name, formula(owner, method.getName()), c.source(), c.locator()));
  }

  private static String formula(String owner, String method) {
    String file = owner.replaceFirst("\\$.*", "").replace('.', '/') + ".java";
    String text = source(Path.of("src", "main", "java").resolve(file));
    return ofMethod(text, method).or(() -> ofClass(text)).orElse("");
  }

  private static String source(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The formula of the comment right before a method's citation. */
  private static Optional<String> ofMethod(String text, String method) {
    Matcher comments = COMMENT.matcher(text);
    while (comments.find()) {
      String head = text.substring(comments.end(), Math.min(text.length(), comments.end() + 600));
      boolean isCited = head.strip().startsWith("@Cites");
      if (isCited && head.split("[{;]\\s*\\n", 2)[0].contains(" " + method + "(")) {
        return code(comments.group(1));
      }
    }
    return Optional.empty();
  }

  private static Optional<String> ofClass(String text) {
    Matcher comments = COMMENT.matcher(text);
    return comments.find() ? code(comments.group(1)) : Optional.empty();
  }

  /** The first piece of code with a relation in it. */
  private static Optional<String> code(String comment) {
    Matcher pieces = CODE.matcher(comment.replaceAll("\\s*\\n\\s*\\* ?", " "));
    while (pieces.find()) {
      String piece = pieces.group(1).strip();
      if (piece.matches("(?s).*[=<>≤≥·+*].*")) {
        return Optional.of(piece);
      }
    }
    return Optional.empty();
  }
}
