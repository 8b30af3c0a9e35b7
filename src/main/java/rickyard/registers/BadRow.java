package rickyard.registers;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;
import rickyard.tables.TableProblem;

/**
 * A row that cannot be used, and the thing that cannot be judged because of it.
 *
 * <p>One wrong cell may concern several things (a lot and the horses that are fed it): one of these
 * for each, all with the same problem.
 *
 * @param concern horse, lot, feed, client, answer or decision
 * @param id key of that thing as the register writes it; empty where the key itself is missing
 * @param clientId the client concerned, as far as it can be read; empty otherwise
 * @param problem file, row, column, what was expected and what was found
 */
public record BadRow(Concern concern, String id, String clientId, TableProblem problem) {
  static final Comparator<BadRow> ORDER =
      Comparator.comparing(BadRow::concern)
          .thenComparing(BadRow::id)
          .thenComparing(b -> b.problem().file())
          .thenComparing(b -> b.problem().row())
          .thenComparing(b -> b.problem().column())
          .thenComparing(b -> b.problem().code())
          .thenComparing(b -> b.problem().expected())
          .thenComparing(BadRow::clientId);

  public BadRow {
    requireNonNull(concern, "concern");
    requireNonNull(id, "id");
    requireNonNull(clientId, "clientId");
    requireNonNull(problem, "problem");
  }

  /** One sentence with file, row, column, what was expected and what was found. */
  public String message() {
    return problem.message();
  }
}
