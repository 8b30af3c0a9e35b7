package rickyard.cli;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.PatternLayout;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.encoder.LayoutWrappingEncoder;
import ch.qos.logback.core.rolling.FixedWindowRollingPolicy;
import ch.qos.logback.core.rolling.RollingFileAppender;
import ch.qos.logback.core.rolling.SizeBasedTriggeringPolicy;
import ch.qos.logback.core.util.FileSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.slf4j.ILoggerFactory;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.LedgerException;

/** The log of an office, {@code ledger/logs}: codes and hashes, no names, no cell contents. */
final class RunLog {
  private static Optional<Path> file = Optional.empty();

  private RunLog() {}

  /** Starts logging into an office's ledger folder; what has to lie on the disk lies there, too. */
  static void open(Path ledger) {
    System.setProperty("java.io.tmpdir", ledger.resolve("tmp").toAbsolutePath().toString());
    makeFolder(ledger.resolve("logs"));
    ILoggerFactory factory = LoggerFactory.getILoggerFactory();
    if (!(factory instanceof LoggerContext context)) {
      return;
    }
    Path log = ledger.resolve("logs").resolve("rickyard.log");
    PatternLayout layout = new PatternLayout();
    layout.setContext(context);
    layout.getInstanceConverterMap().put("codes", CodesOnly::new);
    layout.setPattern("%d{yyyy-MM-dd'T'HH:mm:ss.SSSXXX} %level %logger{30} %codes%nopex");
    layout.start();
    LayoutWrappingEncoder<ILoggingEvent> encoder = new LayoutWrappingEncoder<>();
    encoder.setContext(context);
    encoder.setLayout(layout);
    encoder.start();
    RollingFileAppender<ILoggingEvent> appender = new RollingFileAppender<>();
    appender.setContext(context);
    appender.setFile(log.toString());
    appender.setEncoder(encoder);
    FixedWindowRollingPolicy rolling = new FixedWindowRollingPolicy();
    rolling.setContext(context);
    rolling.setParent(appender);
    rolling.setFileNamePattern(ledger.resolve("logs") + "/rickyard.%i.log");
    rolling.setMinIndex(1);
    rolling.setMaxIndex(5);
    rolling.start();
    SizeBasedTriggeringPolicy<ILoggingEvent> size = new SizeBasedTriggeringPolicy<>();
    size.setContext(context);
    size.setMaxFileSize(FileSize.valueOf("2MB"));
    size.start();
    appender.setRollingPolicy(rolling);
    appender.setTriggeringPolicy(size);
    appender.start();
    ch.qos.logback.classic.Logger root = context.getLogger(Logger.ROOT_LOGGER_NAME);
    root.setLevel(Level.WARN);
    root.addAppender(appender);
    file = Optional.of(log);
  }

  private static void makeFolder(Path logs) {
    try {
      DurableFiles.privateFolder(logs);
    } catch (IOException e) {
      throw new LedgerException(
          "The log folder " + logs + " cannot be made: " + DurableFiles.why(e), e);
    }
  }

  /** Keeps the full story of a failure for whoever mends the program. */
  static void failure(Exception e) {
    LoggerFactory.getLogger(RunLog.class).error("run failed", e);
  }

  /** Where a person finds the log, as the end of a sentence. */
  static String where() {
    return file.filter(Files::isRegularFile).map(f -> " The log is " + f + ".").orElse("");
  }
}
