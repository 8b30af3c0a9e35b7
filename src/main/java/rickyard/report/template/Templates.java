package rickyard.report.template;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.IEngineConfiguration;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.exceptions.TemplateProcessingException;
import org.thymeleaf.templateresolver.AbstractConfigurableTemplateResolver;
import org.thymeleaf.templateresource.ITemplateResource;
import rickyard.report.text.BrokenTemplateException;

/**
 * The templates of what is printed and written, each the office's own where it has one.
 *
 * <p>Values are put in as text: {@code th:text} in pages, {@code [(…)]} in plain letters.
 */
public final class Templates {
  /** Every template that an office may change. */
  public static final List<String> NAMES =
      List.of(
          "alert/alert.html",
          "alert/alert.txt",
          "letter/letter.html",
          "letter/letter.txt",
          "print/print.css",
          "print/summary.html",
          "sheet/horse.html",
          "sheet/sheet.css");

  private final SortedMap<String, String> office;
  private final TemplateEngine engine = new TemplateEngine();

  /**
   * Templates with the office's changes.
   *
   * @param office text by name; names that are none of {@link #NAMES} are passed over
   */
  public Templates(SortedMap<String, String> office) {
    this.office = Collections.unmodifiableSortedMap(new TreeMap<>(office));
    engine.setTemplateResolver(new Resolver());
  }

  /**
   * Fills a template.
   *
   * @throws BrokenTemplateException if the office's template cannot be used
   */
  public String fill(String name, Map<String, Object> values) {
    try {
      return engine.process(name, new Context(Locale.ROOT, values));
    } catch (TemplateProcessingException e) {
      throw broken(name, e);
    }
  }

  /** A file as it is, for example a style. */
  public String text(String name) {
    String own = office.get(name);
    if (own != null) {
      return own;
    }
    try (InputStream in = Templates.class.getResourceAsStream("/templates/" + name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private RuntimeException broken(String name, TemplateProcessingException failure) {
    TemplateProcessingException nearest = failure;
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof TemplateProcessingException inner && inner.getLine() != null) {
        nearest = inner;
      }
    }
    String file = nearest.hasTemplateName() ? nearest.getTemplateName() : name;
    if (!office.containsKey(file) && !office.containsKey(name)) {
      return failure;
    }
    Integer line = nearest.getLine();
    return new BrokenTemplateException(
        office.containsKey(file) ? file : name, line == null ? 0 : line, what(nearest), failure);
  }

  /** What is wrong, without the place that the library adds. */
  private static String what(TemplateProcessingException failure) {
    String message = String.valueOf(failure.getMessage());
    int place = message.indexOf(" (template: ");
    return place < 0 ? message : message.substring(0, place);
  }

  /** Finds the office's template, then the built-in one. */
  private final class Resolver extends AbstractConfigurableTemplateResolver {
    Resolver() {
      setHtmlTemplateModePatterns(Set.of("*.html"));
      setTextTemplateModePatterns(Set.of("*.txt"));
      setCacheable(true);
    }

    @Override
    protected ITemplateResource computeTemplateResource(
        IEngineConfiguration configuration,
        @Nullable String ownerTemplate,
        String template,
        String resourceName,
        @Nullable String characterEncoding,
        @Nullable Map<String, Object> attributes) {
      return new Resource(template, text(template));
    }
  }

  /** A template that is there already, with the name that errors give. */
  private record Resource(String name, String text) implements ITemplateResource {
    @Override
    public String getDescription() {
      return name;
    }

    @Override
    public String getBaseName() {
      return name;
    }

    @Override
    public boolean exists() {
      return true;
    }

    @Override
    public Reader reader() {
      return new StringReader(text);
    }

    @Override
    public ITemplateResource relative(String relativeLocation) {
      throw new IllegalArgumentException("no template lies beside another: " + relativeLocation);
    }
  }
}
