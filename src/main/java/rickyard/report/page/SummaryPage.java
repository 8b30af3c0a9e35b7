package rickyard.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
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

  /** The page's bytes, UTF-8, of a morning that shared nothing out. */
  public static byte[] bytes(MorningView view, List<String> cautions) {
    return bytes(view, CoOpView.none(), cautions);
  }

  /** The page's bytes, UTF-8. */
  public static byte[] bytes(MorningView view, CoOpView coOp, List<String> cautions) {
    String style = resource("summary.css");
    String script = resource("summary.js");
    Context context = new Context(Locale.ROOT);
    context.setVariable("s", Summary.of(view, cautions));
    context.setVariable("coop", CoOpPages.of(view, coOp));
    context.setVariable("style", style);
    context.setVariable("script", script);
    context.setVariable("policy", policy(style, script));
    return ENGINE.process("summary/page", context).getBytes(StandardCharsets.UTF_8);
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
