package rickyard.core.remedy.share;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The same problem for the second solver: a linear program with a variable for each horse and each
 * pile that it may have; first what each rank lacks, one rank after the other, then the cost. A
 * large problem reaches the piles for anybody by way of one row for all who may have the same.
 */
final class PlainProgram {
  private final ShareProblem problem;
  private final boolean isGathered;
  private final SortedMap<Integer, Double> without = new TreeMap<>();

  PlainProgram(ShareProblem problem, boolean isGathered) {
    this.problem = problem;
    this.isGathered = isGathered;
    for (int rank : problem.needs().stream().map(Need::rank).distinct().sorted().toList()) {
      without.put(rank, solve(rank));
    }
  }

  /** Units that each rank lacks. */
  SortedMap<Integer, Double> shortByRank() {
    return without;
  }

  double cost() {
    return solve(-1);
  }

  /** Least lack of one rank with those before it as found; of cost for -1. */
  private double solve(int rank) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Map<Pile, Expression> stocks = new HashMap<>();
    for (Pile pile : problem.piles()) {
      stocks.put(
          pile, model.newExpression(pile.lot() + "@" + pile.client()).upper(Units.there(pile)));
    }
    Map<Integer, List<Variable>> lacks = new TreeMap<>();
    Map<List<Object>, Expression> gathered = new HashMap<>();
    for (Need need : problem.needs()) {
      Expression filled = model.newExpression(need.id()).level(Units.needed(need));
      Variable lack = model.newVariable("short " + need.id()).lower(0);
      lack.weight(rank == need.rank() ? 1 : 0);
      filled.set(lack, 1);
      lacks.computeIfAbsent(need.rank(), r -> new ArrayList<>()).add(lack);
      for (Pile pile : problem.piles()) {
        boolean isOwn = need.now().contains(pile.lot()) || !pile.client().isEmpty();
        if (mayHave(need, pile) && (isOwn || !isGathered)) {
          Variable taken = model.newVariable(need.id() + " of " + pile.lot() + pile.client());
          taken.lower(0).weight(rank < 0 ? Ledgered.unitCost(problem, need, pile) : 0);
          filled.set(taken, 1);
          stocks.get(pile).set(taken, 1);
        }
      }
      if (isGathered) {
        Variable any = model.newVariable(need.id() + " of any").lower(0);
        filled.set(any, 1);
        gathered
            .computeIfAbsent(
                List.of(need.limited(), need.may()), k -> gather(model, need, stocks, rank))
            .set(any, 1);
      }
    }
    without.forEach(
        (before, units) -> {
          Expression kept = model.newExpression("rank " + before).upper(units * (1 + 1e-12) + 1e-9);
          lacks.get(before).forEach(lack -> kept.set(lack, 1));
        });
    Optimisation.Result result = model.minimise();
    if (!result.getState().isOptimal()) {
      throw new IllegalStateException("second solver: " + result.getState());
    }
    return result.getValue();
  }

  private static boolean mayHave(Need need, Pile pile) {
    return need.may().contains(pile.lot())
        && (pile.client().isEmpty() || pile.client().equals(need.client()));
  }

  private Expression gather(
      ExpressionsBasedModel model, Need need, Map<Pile, Expression> stocks, int rank) {
    Need moved =
        new Need("", "", need.rank(), need.limited(), 0, need.may(), new java.util.TreeSet<>());
    Expression gathered = model.newExpression(need.limited() + " " + need.may()).level(0);
    for (Pile pile : problem.piles()) {
      if (pile.client().isEmpty() && need.may().contains(pile.lot())) {
        Variable taken = model.newVariable("any " + need.limited() + need.may() + pile.lot());
        taken.lower(0).weight(rank < 0 ? Ledgered.unitCost(problem, moved, pile) : 0);
        gathered.set(taken, -1);
        stocks.get(pile).set(taken, 1);
      }
    }
    return gathered;
  }
}
