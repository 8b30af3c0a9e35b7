package rickyard.cli;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.classic.spi.ConfiguratorRank;
import ch.qos.logback.core.spi.ContextAwareBase;
import ch.qos.logback.core.status.NopStatusListener;
import java.util.List;
import org.slf4j.Logger;

/**
 * How logging begins: nothing on the console, since a run says what it has to say itself; {@link
 * RunLog} adds the office's log. Said here and not in a file of the log's own language: to read one
 * takes a quarter of a morning on which nothing is new. A file named by {@code
 * -Dlogback.configurationFile} goes before.
 */
@ConfiguratorRank(ConfiguratorRank.CUSTOM_HIGH_PRIORITY)
public final class QuietLog extends ContextAwareBase implements Configurator {
  /** Damaged documents are results, not faults of the program; their libraries stay silent. */
  private static final List<String> SILENT =
      List.of("org.apache.pdfbox", "org.apache.fontbox", "org.apache.tika");

  @Override
  public ExecutionStatus configure(LoggerContext context) {
    if (System.getProperty("logback.configurationFile") != null) {
      return ExecutionStatus.INVOKE_NEXT_IF_ANY;
    }
    context.getStatusManager().add(new NopStatusListener());
    SILENT.forEach(name -> context.getLogger(name).setLevel(Level.OFF));
    context.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.OFF);
    return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
  }
}
