package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * A linear program {@code min c'x, Ax ≥ b, x ≥ 0} of which no answer is taken on trust: the point
 * must satisfy the rows, and a solution of the dual program {@code max b'y, A'y ≤ c, y ≥ 0} must
 * prove that nothing is cheaper. A solver that lost its way is asked again with other steps.
 */
final class CertifiedProgram {
  private static final double TOLERANCE = 2e-8;
  private static final int ULPS = 10;
  private static final double[] STEPS = {1e-10, 1e-9, 1e-8, 1e-7};
  private static final double[] NOTHINGS = {1e-12, 1e-10, 1e-9, 1e-14};

  private final double[] price;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> sides = new ArrayList<>();

  CertifiedProgram(double[] price) {
    this.price = price.clone();
  }

  CertifiedProgram(CertifiedProgram other, double[] price) {
    this(price);
    rows.addAll(other.rows);
    sides.addAll(other.sides);
  }

  /** Adds {@code row'x ≥ side}. */
  void atLeast(double[] row, double side) {
    rows.add(row.clone());
    sides.add(side);
  }

  /** A point, and the bound below every point's price that the dual proves. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Solved(double[] x, double value, double bound) {}

  /** Solved to a proven gap; throws where no attempt could be proven. */
  Solved solve() {
    for (double nothing : NOTHINGS) {
      for (double step : STEPS) {
        for (PivotSelectionRule rule : PivotSelectionRule.values()) {
          Optional<Solved> found = attempt(new SimplexSolver(step, ULPS, nothing), rule);
          if (found.isPresent()) {
            return found.get();
          }
        }
      }
    }
    throw new IllegalStateException("no attempt could be proven");
  }

  private Optional<Solved> attempt(SimplexSolver solver, PivotSelectionRule rule) {
    try {
      double[] x = run(solver, rule, primal(), price, GoalType.MINIMIZE);
      double[] b = sides.stream().mapToDouble(Double::doubleValue).toArray();
      double[] y = run(solver, rule, dual(), b, GoalType.MAXIMIZE);
      double value = dot(price, x);
      double bound = dot(b, y) - beyond(y, x);
      boolean isProven = isInside(x) && value - bound <= TOLERANCE * Math.max(1, value);
      return isProven ? Optional.of(new Solved(x, value, bound)) : Optional.empty();
    } catch (MathRuntimeException e) {
      return Optional.empty();
    }
  }

  private static double[] run(
      SimplexSolver solver,
      PivotSelectionRule rule,
      List<LinearConstraint> constraints,
      double[] objective,
      GoalType goal) {
    return solver
        .optimize(
            new LinearObjectiveFunction(objective, 0),
            new LinearConstraintSet(constraints),
            goal,
            new NonNegativeConstraint(true),
            rule)
        .getPoint();
  }

  private List<LinearConstraint> primal() {
    List<LinearConstraint> all = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      all.add(new LinearConstraint(rows.get(i), Relationship.GEQ, sides.get(i)));
    }
    return all;
  }

  private List<LinearConstraint> dual() {
    List<LinearConstraint> all = new ArrayList<>();
    for (int j = 0; j < price.length; j++) {
      double[] column = new double[rows.size()];
      for (int i = 0; i < column.length; i++) {
        column[i] = rows.get(i)[j];
      }
      all.add(new LinearConstraint(column, Relationship.LEQ, price[j]));
    }
    return all;
  }

  private boolean isInside(double[] x) {
    for (int i = 0; i < rows.size(); i++) {
      if (dot(rows.get(i), x) < sides.get(i) - TOLERANCE) {
        return false;
      }
    }
    return true;
  }

  /** What the rounding of a dual solution may be worth at amounts twice as large as found. */
  private double beyond(double[] y, double[] x) {
    double sum = 0;
    for (int j = 0; j < price.length; j++) {
      double column = 0;
      for (int i = 0; i < rows.size(); i++) {
        column += rows.get(i)[j] * Math.max(0, y[i]);
      }
      sum += Math.max(0, column - price[j]) * 2 * (1 + x[j]);
    }
    return sum;
  }

  private static double dot(double[] a, double[] b) {
    RealVector left = new ArrayRealVector(a, false);
    return left.dotProduct(new ArrayRealVector(b, false));
  }
}
