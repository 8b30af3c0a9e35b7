package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import java.util.function.Function;
import rickyard.core.forage.Report;

/** What the reader makes of a document. */
public sealed interface Interpretation extends Serializable {

  /** One of two results for the two kinds. */
  <T> T fold(Function<Understood, T> onUnderstood, Function<NotUnderstood, T> onNotUnderstood);

  /**
   * A report with at least one figure, settled or not.
   *
   * @param report samples, readings and doubts
   * @param untaken what stands on the page and was not taken as a value, with the reason
   */
  record Understood(Report report, List<Untaken> untaken) implements Interpretation {
    public Understood {
      requireNonNull(report, "report");
      untaken = List.copyOf(untaken);
    }

    @Override
    public <T> T fold(
        Function<Understood, T> onUnderstood, Function<NotUnderstood, T> onNotUnderstood) {
      return onUnderstood.apply(this);
    }
  }

  /** A document in which no figure could be found; {@code code} is stable. */
  record NotUnderstood(String code, String reason) implements Interpretation {
    public NotUnderstood {
      requireNonNull(code, "code");
      requireNonNull(reason, "reason");
    }

    @Override
    public <T> T fold(
        Function<Understood, T> onUnderstood, Function<NotUnderstood, T> onNotUnderstood) {
      return onNotUnderstood.apply(this);
    }
  }
}
