package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.matrix.store.RawStore;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * A small linear program: minimise the sum of cost times variable under linear rows.
 *
 * <p>Single-threaded, and repeated bit for bit for the same rows in the same order. The optimiser
 * works in double; whoever uses a solution checks it against the rows again. It is given the bare
 * matrices: its general model first turns every figure into decimals, which takes many times as
 * long as to solve so small a program.
 */
final class LinearProgram {
  private final List<double[]> variables = new ArrayList<>();
  private final List<double[]> most = new ArrayList<>();
  private final List<Double> mostBounds = new ArrayList<>();
  private final List<double[]> equal = new ArrayList<>();
  private final List<Double> equalBounds = new ArrayList<>();

  /** Adds a variable and says its place. */
  int variable(double lower, double upper, double cost) {
    variables.add(new double[] {lower, upper, cost});
    return variables.size() - 1;
  }

  /** Adds a row; coefficients past the end of the array are 0, infinite bounds are none. */
  void row(double[] coefficients, double lower, double upper) {
    if (lower == upper) {
      equal.add(coefficients.clone());
      equalBounds.add(lower);
      return;
    }
    if (upper < Double.POSITIVE_INFINITY) {
      most.add(coefficients.clone());
      mostBounds.add(upper);
    }
    if (lower > Double.NEGATIVE_INFINITY) {
      most.add(Arrays.stream(coefficients).map(c -> -c).toArray());
      mostBounds.add(-lower);
    }
  }

  int size() {
    return variables.size();
  }

  /** The solution in the order of the variables; empty if no point satisfies the rows. */
  Optional<double[]> minimise() {
    double[] lower = column(0);
    double[] upper = column(1);
    LinearSolver.Builder solver = LinearSolver.newBuilder(column(2));
    if (!most.isEmpty()) {
      solver.inequalities(matrix(most), vector(mostBounds));
    }
    if (!equal.isEmpty()) {
      solver.equalities(matrix(equal), vector(equalBounds));
    }
    Optimisation.Result result = solver.lower(lower).upper(upper).build().solve();
    if (!result.getState().isFeasible()) {
      return Optional.empty();
    }
    double[] x = new double[variables.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = Math.min(upper[i], Math.max(lower[i], result.doubleValue(i)));
    }
    return Optional.of(x);
  }

  private double[] column(int part) {
    return variables.stream().mapToDouble(v -> v[part]).toArray();
  }

  private RawStore matrix(List<double[]> rows) {
    int width = variables.size();
    return RawStore.wrap(
        rows.stream().map(row -> Arrays.copyOf(row, width)).toArray(double[][]::new));
  }

  private static R064Store vector(List<Double> values) {
    return R064Store.FACTORY.column(values.stream().mapToDouble(Double::doubleValue).toArray());
  }
}
