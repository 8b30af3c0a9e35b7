package rickyard.intake.grid;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.james.mime4j.MimeException;
import org.apache.james.mime4j.codec.DecodeMonitor;
import org.apache.james.mime4j.dom.Body;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.SingleBody;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.apache.james.mime4j.message.DefaultMessageWriter;
import org.apache.james.mime4j.stream.MimeConfig;

/**
 * Takes a mail apart: its body, its attachments, mails inside it as mails of their own.
 *
 * <p>Of a body sent in two forms the HTML one counts, because a table keeps its columns there.
 */
final class MailParts {
  /** Fewer lines than these may begin with 'greater than' and mean it. */
  private static final int LEAST_QUOTED = 3;

  private static final Pattern QUOTED = Pattern.compile("(?m)^(?:> ?)+");

  private final ReadLimits limits;

  MailParts(ReadLimits limits) {
    this.limits = limits;
  }

  Opened open(byte[] bytes) {
    try {
      DefaultMessageBuilder builder = new DefaultMessageBuilder();
      builder.setMimeEntityConfig(
          new MimeConfig.Builder()
              .setMaxLineLen(1 << 20)
              .setMaxHeaderLen(1 << 20)
              .setMaxHeaderCount(10_000)
              .setMaxContentLen(limits.bytes())
              .build());
      builder.setDecodeMonitor(DecodeMonitor.SILENT);
      Message message = builder.parseMessage(new ByteArrayInputStream(bytes));
      List<Part> parts = new ArrayList<>();
      take(message, parts, 0);
      message.dispose();
      if (parts.isEmpty()) {
        throw new UnreadableException("empty", "The mail has neither a body nor attachments.");
      }
      return new Opened.Parts(ContentKind.MAIL.label(), parts);
    } catch (IOException | MimeException broken) {
      throw new UnreadableException(
          "damaged",
          "The mail is damaged and cannot be taken apart; save its attachments by hand.");
    }
  }

  private void take(Entity entity, List<Part> parts, int level) throws IOException, MimeException {
    if (level > 50) {
      throw new UnreadableException("too-deep", "The mail is nested too deeply to be read.");
    }
    Body body = entity.getBody();
    if (body instanceof Multipart multipart) {
      for (Entity inner : chosen(multipart)) {
        take(inner, parts, level + 1);
      }
    } else if (body != null) {
      byte[] content = unquoted(entity, content(body));
      if (content.length > 0) {
        if (parts.size() == limits.parts()) {
          throw PartName.tooMany(limits);
        }
        parts.add(new Part(name(entity, parts.size() + 1), content));
      }
    }
  }

  /** All parts; of alternatives that are mere bodies the HTML one where there is one. */
  private static List<Entity> chosen(Multipart multipart) {
    List<Entity> all = multipart.getBodyParts();
    if (!"alternative".equalsIgnoreCase(multipart.getSubType())) {
      return all;
    }
    Optional<Entity> html = all.stream().filter(e -> holds(e, "text/html")).findFirst();
    return html.isEmpty()
        ? all
        : all.stream().filter(e -> e == html.get() || !holds(e, "text/plain")).toList();
  }

  private static boolean holds(Entity entity, String type) {
    if (entity.getFilename() != null) {
      return false;
    }
    if (entity.getBody() instanceof Multipart inner) {
      return "related".equalsIgnoreCase(inner.getSubType())
          && inner.getBodyParts().stream().anyMatch(e -> holds(e, type));
    }
    return type.equalsIgnoreCase(entity.getMimeType());
  }

  private static String name(Entity entity, int number) {
    String given = entity.getFilename();
    if (given != null && !given.isBlank()) {
      return PartName.of(given, number);
    }
    String type = entity.getMimeType() == null ? "" : entity.getMimeType();
    String ending =
        switch (type.toLowerCase(Locale.ROOT)) {
          case "text/plain" -> ".txt";
          case "text/html" -> ".html";
          case "message/rfc822" -> ".eml";
          case "application/pdf" -> ".pdf";
          default -> "";
        };
    return (ending.equals(".txt") || ending.equals(".html") ? "body-" : "part-") + number + ending;
  }

  /** A forwarded table stands behind marks of quotation; without them it is the table again. */
  private static byte[] unquoted(Entity entity, byte[] content) {
    boolean body = entity.getFilename() == null && "text/plain".equals(entity.getMimeType());
    // Bytes beyond ASCII stay what they are: only marks and blanks at the head of a line go.
    String text = body ? new String(content, StandardCharsets.ISO_8859_1) : "";
    if (text.lines().filter(line -> line.startsWith(">")).count() < LEAST_QUOTED) {
      return content;
    }
    return QUOTED.matcher(text).replaceAll("").getBytes(StandardCharsets.ISO_8859_1);
  }

  private byte[] content(Body body) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    if (body instanceof Message message) {
      new DefaultMessageWriter().writeMessage(message, out);
    } else if (body instanceof SingleBody single) {
      try (InputStream in = single.getInputStream()) {
        in.transferTo(out);
      }
    }
    byte[] raw = out.toByteArray();
    return body instanceof TextBody text ? inUtf8(raw, text) : raw;
  }

  /**
   * Text in the charset that the mail states, re-written as UTF-8 with its mark, so that the next
   * reader need not guess; text that does not fit the stated charset stays as it came.
   */
  private static byte[] inUtf8(byte[] raw, TextBody body) {
    String stated = body.getMimeCharset();
    if (stated == null || stated.isBlank() || !isSupported(stated)) {
      return raw;
    }
    Charset charset = Charset.forName(stated);
    if (charset.equals(StandardCharsets.US_ASCII) || charset.equals(StandardCharsets.UTF_8)) {
      return raw;
    }
    String text = new String(raw, charset);
    if (text.indexOf(CellText.UNKNOWN) >= 0) {
      return raw;
    }
    String marked = text.startsWith("\uFEFF") ? text : "\uFEFF" + text;
    return marked.getBytes(StandardCharsets.UTF_8);
  }

  private static boolean isSupported(String charset) {
    try {
      return Charset.isSupported(charset);
    } catch (IllegalArgumentException badName) {
      return false;
    }
  }
}
