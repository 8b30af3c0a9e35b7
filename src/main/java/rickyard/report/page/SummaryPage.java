package rickyard.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.exceptions.TemplateEngineException;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.standard.expression.OGNLVariableExpressionEvaluator;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;

/**
 * summary.html: one page that needs nothing else, works without its script and loads nothing. Its
 * policy names its own style and script by digest; whatever a report held is text.
 */
public final class SummaryPage {
  private static final TemplateEngine ENGINE = engine();

  private SummaryPage() {}

  /**
   * Writes the page, UTF-8, as it is made: the page of a season is long.
   *
   * @throws IOException if the stream does not take it
   */
  public static void write(MorningView view, CoOpView coOp, List<String> cautions, OutputStream out)
      throws IOException {
    String style = resource("summary.css");
    String script = resource("summary.js");
    Context context = new Context(Locale.ROOT);
    context.setVariable("s", Summary.of(view, cautions));
    context.setVariable("coop", CoOpPages.of(view, coOp));
    context.setVariable("style", style);
    context.setVariable("script", script);
    context.setVariable("policy", policy(style, script));
    try {
      ENGINE.process("summary/page", context, new OutputStreamWriter(out, StandardCharsets.UTF_8));
    } catch (TemplateEngineException e) {
      throw unwritten(e);
    }
  }

  /** What the stream said, where it was the stream and not the template. */
  private static IOException unwritten(TemplateEngineException failed) {
    for (Throwable cause = failed; cause != null; cause = cause.getCause()) {
      if (cause instanceof IOException unwritten) {
        return unwritten;
      }
    }
    throw failed;
  }

  private static String policy(String style, String script) {
    return "default-src 'none'; style-src '"
        + digest(style)
        + "'; script-src '"
        + digest(script)
        + "'; img-src data:; base-uri 'none'; form-action 'none'";
  }

  private static String digest(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String resource(String name) {
    try (InputStream in = SummaryPage.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TemplateEngine engine() {
    ClassLoaderTemplateResolver resolver =
        new ClassLoaderTemplateResolver(SummaryPage.class.getClassLoader());
    resolver.setPrefix("templates/");
    resolver.setSuffix(".html");
    resolver.setTemplateMode(TemplateMode.HTML);
    resolver.setCharacterEncoding(StandardCharsets.UTF_8.name());
    resolver.setCacheable(true);
    StandardDialect dialect = new StandardDialect();
    dialect.setVariableExpressionEvaluator(new Chains(new OGNLVariableExpressionEvaluator(true)));
    TemplateEngine engine = new TemplateEngine();
    engine.setDialect(dialect);
    engine.setTemplateResolver(resolver);
    return engine;
  }
}
