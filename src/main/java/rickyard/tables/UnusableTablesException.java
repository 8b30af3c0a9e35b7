package rickyard.tables;

import java.util.List;
import java.util.stream.Collectors;

/** Tables or registers that cannot be used; holds every problem found, not only the first. */
public final class UnusableTablesException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<TableProblem> problems;

  public UnusableTablesException(List<TableProblem> problems) {
    super(problems.stream().map(TableProblem::message).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public List<TableProblem> problems() {
    return problems;
  }
}
