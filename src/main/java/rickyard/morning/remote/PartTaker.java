package rickyard.morning.remote;

import java.util.function.Function;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.step.Step;
import org.springframework.batch.core.step.StepExecution;
import org.springframework.batch.integration.partition.StepExecutionRequest;
import org.springframework.batch.integration.partition.StepExecutionRequestHandler;
import org.springframework.messaging.Message;
import org.springframework.messaging.MessageHandler;
import rickyard.ledger.Hold;

/** Does the part that a message names, once it is this worker's alone. */
final class PartTaker implements MessageHandler {
  private final JobRepository repository;
  private final Hold hold;
  private final StepExecutionRequestHandler handler = new StepExecutionRequestHandler();

  PartTaker(JobRepository repository, Hold hold, Function<Hold, Step> steps) {
    this.repository = repository;
    this.hold = hold;
    Step step = steps.apply(hold);
    handler.setJobRepository(repository);
    handler.setStepLocator(name -> step);
  }

  @Override
  public void handleMessage(Message<?> message) {
    StepExecutionRequest request = (StepExecutionRequest) message.getPayload();
    hold.take(request.getStepExecutionId());
    if (!isOpen(request)) {
      // Its worker ended between the last word of the part and the receipt for the message.
      return;
    }
    handler.handle(request);
    if (isOpen(request)) {
      throw new IllegalStateException("the end of a part could not be noted");
    }
  }

  private boolean isOpen(StepExecutionRequest request) {
    StepExecution part = repository.getStepExecution(request.getStepExecutionId());
    return part != null && part.getStatus().isRunning();
  }
}
