package rickyard.cli;

import ch.qos.logback.classic.pattern.ClassicConverter;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.IThrowableProxy;
import ch.qos.logback.classic.spi.StackTraceElementProxy;
import org.jspecify.annotations.Nullable;

/**
 * What an event may say in the log: our own words, which are codes and hashes; of an exception, its
 * class and where it was, never its message, which may quote a name or a cell.
 */
public final class CodesOnly extends ClassicConverter {
  private static final int FRAMES = 40;

  @Override
  public String convert(ILoggingEvent event) {
    StringBuilder text = new StringBuilder();
    if (event.getLoggerName().startsWith("rickyard.")) {
      text.append(event.getFormattedMessage());
    }
    text.append('\n');
    append(text, event.getThrowableProxy(), "");
    return text.toString();
  }

  private static void append(
      StringBuilder text, @Nullable IThrowableProxy thrown, String introduction) {
    if (thrown == null) {
      return;
    }
    text.append(introduction).append(thrown.getClassName()).append('\n');
    int frames = 0;
    for (StackTraceElementProxy frame : thrown.getStackTraceElementProxyArray()) {
      if (frames++ == FRAMES - thrown.getCommonFrames() && thrown.getCommonFrames() > 0) {
        break;
      }
      text.append("  ").append(frame.getSTEAsString()).append('\n');
    }
    append(text, thrown.getCause(), "caused by ");
  }
}
