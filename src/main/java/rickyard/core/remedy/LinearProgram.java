package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * A small linear program: minimise the sum of cost times variable under linear rows.
 *
 * <p>Single-threaded, and repeated bit for bit for the same rows in the same order. The optimiser
 * works in double; whoever uses a solution checks it against the rows again.
 */
final class LinearProgram {
  private final List<double[]> variables = new ArrayList<>();
  private final List<double[]> rows = new ArrayList<>();
  private final List<double[]> bounds = new ArrayList<>();

  /** Adds a variable and says its place. */
  int variable(double lower, double upper, double cost) {
    variables.add(new double[] {lower, upper, cost});
    return variables.size() - 1;
  }

  /** Adds a row; coefficients past the end of the array are 0, infinite bounds are none. */
  void row(double[] coefficients, double lower, double upper) {
    rows.add(coefficients.clone());
    bounds.add(new double[] {lower, upper});
  }

  int size() {
    return variables.size();
  }

  /** The solution in the order of the variables; empty if no point satisfies the rows. */
  Optional<double[]> minimise() {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Variable[] columns = new Variable[variables.size()];
    for (int i = 0; i < columns.length; i++) {
      double[] v = variables.get(i);
      columns[i] = model.newVariable("x" + i).weight(v[2]);
      bound(columns[i], v[0], v[1]);
    }
    for (int r = 0; r < rows.size(); r++) {
      addRow(model, columns, r);
    }
    Optimisation.Result result = model.minimise();
    if (!result.getState().isFeasible()) {
      return Optional.empty();
    }
    double[] x = new double[columns.length];
    for (int i = 0; i < x.length; i++) {
      double[] v = variables.get(i);
      x[i] = Math.min(v[1], Math.max(v[0], result.doubleValue(i)));
    }
    return Optional.of(x);
  }

  private static void bound(Variable column, double lower, double upper) {
    if (lower > Double.NEGATIVE_INFINITY) {
      column.lower(lower);
    }
    if (upper < Double.POSITIVE_INFINITY) {
      column.upper(upper);
    }
  }

  private void addRow(ExpressionsBasedModel model, Variable[] columns, int r) {
    Expression row = model.newExpression("r" + r);
    double[] coefficients = rows.get(r);
    for (int i = 0; i < coefficients.length; i++) {
      if (coefficients[i] != 0) {
        row.set(columns[i], coefficients[i]);
      }
    }
    double[] b = bounds.get(r);
    if (b[0] > Double.NEGATIVE_INFINITY) {
      row.lower(b[0]);
    }
    if (b[1] < Double.POSITIVE_INFINITY) {
      row.upper(b[1]);
    }
  }
}
