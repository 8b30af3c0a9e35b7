package rickyard.morning.remote;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.aopalliance.intercept.MethodInterceptor;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.step.Step;
import org.springframework.beans.factory.support.DefaultListableBeanFactory;
import org.springframework.integration.channel.QueueChannel;
import org.springframework.integration.endpoint.PollingConsumer;
import org.springframework.messaging.MessageHandler;
import org.springframework.scheduling.concurrent.ThreadPoolTaskScheduler;
import org.springframework.scheduling.support.PeriodicTrigger;
import org.springframework.transaction.TransactionManager;
import org.springframework.transaction.interceptor.MatchAlwaysTransactionAttributeSource;
import org.springframework.transaction.interceptor.TransactionInterceptor;
import rickyard.ledger.Channel;
import rickyard.ledger.Hold;

/**
 * Takes parts from the channel, several at a time, and does them.
 *
 * <p>A part is in hand for one transaction of the channel: when its worker dies, the message is
 * there again and another does the rest of it. A message that comes back again and again stops
 * this, or it would go round for ever.
 */
public final class PartConsumers implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(PartConsumers.class);
  private static final Duration POLL = Duration.ofMillis(200);
  private static final int ATTEMPTS = 5;

  private final ThreadPoolTaskScheduler scheduler = new ThreadPoolTaskScheduler();
  private final List<PollingConsumer> consumers = new ArrayList<>();
  private final AtomicInteger failed = new AtomicInteger();
  private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();

  /**
   * Prepares the taking; takes nothing yet.
   *
   * @param channel open as long as this is
   * @param reader see {@link rickyard.ledger.Task#reader()}
   * @param repository of the run's job
   * @param steps the step that does a part while it is held
   * @param most parts at a time, from 1
   */
  public PartConsumers(
      Channel channel,
      String reader,
      JobRepository repository,
      Function<Hold, Step> steps,
      int most) {
    scheduler.setPoolSize(most);
    scheduler.setThreadNamePrefix("part-");
    scheduler.setDaemon(true);
    scheduler.initialize();
    QueueChannel queue = PartChannel.of(channel, reader);
    for (int i = 0; i < most; i++) {
      Hold hold = channel.hold();
      consumers.add(consumer(channel, queue, hold, new PartTaker(repository, hold, steps)));
    }
  }

  private PollingConsumer consumer(
      Channel channel, QueueChannel queue, Hold hold, MessageHandler taker) {
    MessageHandler counting =
        message -> {
          taker.handleMessage(message);
          failed.set(0);
        };
    TransactionInterceptor transaction =
        new TransactionInterceptor(
            (TransactionManager) channel.transactions(),
            new MatchAlwaysTransactionAttributeSource());
    MethodInterceptor entry = call -> hold.isInside() ? call.proceed() : null;
    PollingConsumer consumer = new PollingConsumer(queue, counting);
    consumer.setBeanFactory(new DefaultListableBeanFactory());
    consumer.setBeanClassLoader(PartConsumers.class.getClassLoader());
    consumer.setTaskScheduler(scheduler);
    consumer.setTrigger(new PeriodicTrigger(POLL));
    consumer.setReceiveTimeout(0);
    consumer.setAdviceChain(List.of(transaction, entry));
    consumer.setErrorHandler(this::failed);
    consumer.afterPropertiesSet();
    return consumer;
  }

  private void failed(Throwable thrown) {
    LOG.warn("a part was not taken", thrown);
    if (failed.incrementAndGet() >= ATTEMPTS) {
      failure.compareAndSet(null, thrown);
    }
  }

  public void start() {
    consumers.forEach(PollingConsumer::start);
  }

  /** Why nothing more can be taken; empty as long as all is well. */
  public Optional<Throwable> failure() {
    return Optional.ofNullable(failure.get());
  }

  /** Takes no more; does not wait for what is in hand. */
  @Override
  public void close() {
    consumers.forEach(PollingConsumer::stop);
    scheduler.shutdown();
  }
}
