package rickyard.morning.remote;

import java.util.List;
import org.springframework.batch.integration.partition.StepExecutionRequest;
import org.springframework.integration.channel.QueueChannel;
import org.springframework.integration.jdbc.store.JdbcChannelMessageStore;
import org.springframework.integration.jdbc.store.channel.PostgresChannelMessageStoreQueryProvider;
import org.springframework.integration.store.MessageGroupQueue;
import org.springframework.messaging.MessageHeaders;
import org.springframework.messaging.support.GenericMessage;
import rickyard.ledger.Channel;

/** The channel on which a run lays parts of a step and workers take them. */
final class PartChannel {
  private static final String GROUP = "parts";

  /** All that a message consists of; nothing else is ever made of the bytes. */
  private static final List<String> ALLOWED =
      List.of(
          StepExecutionRequest.class.getName(),
          GenericMessage.class.getName(),
          MessageHeaders.class.getName(),
          "java.util.HashMap",
          "java.util.UUID");

  private PartChannel() {}

  /**
   * The channel of one reader: who reads otherwise does not see its messages.
   *
   * @param reader what makes one reader another
   */
  static QueueChannel of(Channel channel, String reader) {
    JdbcChannelMessageStore store = new JdbcChannelMessageStore(channel.source());
    store.setChannelMessageStoreQueryProvider(new PostgresChannelMessageStoreQueryProvider());
    store.setRegion(reader);
    store.addAllowedPatterns(ALLOWED.toArray(new String[0]));
    store.afterPropertiesSet();
    return new QueueChannel(new MessageGroupQueue(store, GROUP));
  }
}
