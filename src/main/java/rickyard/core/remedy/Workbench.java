package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * Turns a support into a weighable ration: the optimiser's amounts, the balancer that follows from
 * them, then the neighbouring steps of the scale, each checked by the diet code.
 */
final class Workbench {
  private static final int MOST_BALANCER_ROUNDS = 12;
  private static final int LOWEST_NEIGHBOUR = -1;
  private static final int HIGHEST_NEIGHBOUR = 2;
  private static final double NOTHING_KG = 1e-6;

  /** Prices above that of the optimum up to which weighable amounts are looked for. */
  private static final double LEAST_FARTHER = 0.5;

  private static final double MOST_FARTHER = 16;

  private final RemedyRequest request;
  private final Portions portions;
  private final LabelDoses doses;

  Workbench(RemedyRequest request) {
    this.request = request;
    this.doses = new LabelDoses(request);
    this.portions = new Portions(request);
  }

  /** Exact amounts of a support with the balancer that goes with them. */
  static final class Exact {
    private final MixSpec spec;
    private final double[] dmKg;

    Exact(MixSpec spec, double[] dmKg) {
      this.spec = spec;
      this.dmKg = dmKg.clone();
    }

    MixSpec spec() {
      return spec;
    }

    /** Kg of dry matter per free item. */
    double[] dmKg() {
      return dmKg.clone();
    }
  }

  /**
   * The optimum in exact amounts. The balancer depends on the share of fortified forage and the
   * forage on the balancer: both are found in turns until they agree; where they never quite do,
   * the scale and the diet code decide.
   */
  Optional<Exact> exact(MixSpec start) {
    MixSpec spec = start;
    Optional<Exact> last = Optional.empty();
    for (int round = 0; round < MOST_BALANCER_ROUNDS; round++) {
      Optional<double[]> found = new MixModel(request, spec).solve();
      if (found.isEmpty()) {
        return Optional.empty();
      }
      last = Optional.of(new Exact(spec, found.get()));
      List<Serving> fixed = balanced(start, found.get());
      if (distance(fixed, spec.fixed()) < 1e-9) {
        return last;
      }
      spec = start.withFixed(fixed);
    }
    return last;
  }

  /** The fixed part of a support with its balancers set for the chosen amounts. */
  private List<Serving> balanced(MixSpec spec, double[] dmKg) {
    List<Serving> whole = new ArrayList<>();
    for (int i = 0; i < dmKg.length; i++) {
      whole.add(spec.free().get(i).at(dmKg[i]));
    }
    whole.addAll(spec.fixed());
    List<Serving> adjusted = FortifiedShare.withBalancers(request, whole);
    return adjusted.subList(dmKg.length, adjusted.size());
  }

  private static double distance(List<Serving> a, List<Serving> b) {
    double most = 0;
    for (int i = 0; i < a.size(); i++) {
      most = Math.max(most, Math.abs(a.get(i).kg() - b.get(i).kg()));
    }
    return most;
  }

  /** The best weighable ration near the optimum; empty if the support has none. */
  Optional<Draft> best(MixSpec spec) {
    return portions.best(known(spec), this::exact).flatMap(e -> nearby(e.spec(), e.dmKg()));
  }

  /** An item of which a limit's content is unknown may stay away, but not be fed. */
  private MixSpec known(MixSpec spec) {
    MixSpec known = spec;
    for (int i = 0; i < spec.free().size(); i++) {
      FreeItem item = spec.free().get(i);
      if (!request.isKnown(item.item())) {
        known = known.with(i, item.between(item.leastDmKg(), 0));
      }
    }
    return known;
  }

  /** A ration in chosen amounts, rounded to the nearest step of the scale and checked. */
  Draft nearest(MixSpec spec, double[] dmKg) {
    double[] rounded = new double[dmKg.length];
    for (int i = 0; i < rounded.length; i++) {
      rounded[i] = weighable(spec.free().get(i), dmKg[i]);
    }
    MixFigures figures = new MixFigures(request, spec);
    return draft(spec, rounded, figures.score(rounded), figures.score(dmKg));
  }

  /** The nearest weighable dry matter; today's amount stays as it is. */
  private double weighable(FreeItem item, double dmKg) {
    boolean isToday = Math.abs(dmKg - request.todayDmKg(item)) < NOTHING_KG;
    double kg = request.steps().nearestKg(dmKg / item.item().dryMatterFraction());
    return isToday ? dmKg : kg * item.item().dryMatterFraction();
  }

  private Optional<Draft> nearby(MixSpec spec, double[] dmKg) {
    List<double[]> choices = new ArrayList<>(List.of(new double[0]));
    for (int i = 0; i < dmKg.length; i++) {
      choices = extended(choices, steps(spec.free().get(i), dmKg[i]));
    }
    MixModel model = new MixModel(request, spec);
    MixFigures figures = new MixFigures(request, spec);
    List<double[]> ordered =
        choices.stream()
            .map(x -> new Neighbour(x, !model.isMet(x), figures.score(x)))
            .sorted(Comparator.comparing(Neighbour::isBeyond).thenComparingDouble(Neighbour::score))
            .limit(request.settings().largestNumberOfChecks())
            .map(Neighbour::dmKg)
            .toList();
    if (ordered.isEmpty()) {
      return Optional.empty();
    }
    Function<double[], Draft> drafts = drafts(spec, figures, figures.score(dmKg));
    DoubleFunction<List<double[]>> cheaper = score -> cheaper(spec, model, figures, score);
    Draft first = drafts.apply(ordered.get(0));
    Optional<Draft> near = firstEnough(drafts, ordered);
    return Optional.of(
        near.map(d -> firstEnough(drafts, cheaper.apply(d.score())).orElse(d))
            .or(() -> farther(drafts, cheaper, first.score()))
            .orElse(first));
  }

  /** A weighable choice beside the optimum. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Neighbour(double[] dmKg, boolean isBeyond, double score) {}

  /** Weighable choices of a support below a score, the best first. */
  private List<double[]> cheaper(MixSpec spec, MixModel model, MixFigures figures, double score) {
    return new ScaleGrid(request, spec, model, figures)
        .better(score).stream().limit(request.settings().largestNumberOfChecks()).toList();
  }

  /** Where nothing beside the optimum is enough: what is, at a price that rises step by step. */
  private static Optional<Draft> farther(
      Function<double[], Draft> drafts, DoubleFunction<List<double[]>> cheaper, double score) {
    for (double more = LEAST_FARTHER; more <= MOST_FARTHER; more *= 2) {
      Optional<Draft> found = firstEnough(drafts, cheaper.apply(score + more));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** Each choice of a support is drafted and checked once. */
  private Function<double[], Draft> drafts(MixSpec spec, MixFigures figures, double ideal) {
    Map<List<Double>, Draft> known = new HashMap<>();
    return x ->
        known.computeIfAbsent(
            Arrays.stream(x).boxed().toList(), key -> draft(spec, x, figures.score(x), ideal));
  }

  private static Optional<Draft> firstEnough(
      Function<double[], Draft> drafts, List<double[]> ordered) {
    return ordered.stream().map(drafts).filter(d -> d.diet().isEnough()).findFirst();
  }

  private static List<double[]> extended(List<double[]> choices, List<Double> values) {
    List<double[]> longer = new ArrayList<>();
    for (double[] choice : choices) {
      for (double value : values) {
        double[] x = Arrays.copyOf(choice, choice.length + 1);
        x[choice.length] = value;
        longer.add(x);
      }
    }
    return longer;
  }

  /** Weighable dry matter around an amount, inside the bounds of the item. */
  private List<Double> steps(FreeItem item, double dmKg) {
    double fraction = item.item().dryMatterFraction();
    double kg = dmKg / fraction;
    double today = request.todayDmKg(item) / fraction;
    List<Double> values = new ArrayList<>();
    for (int n = LOWEST_NEIGHBOUR; n <= HIGHEST_NEIGHBOUR; n++) {
      double neighbour = request.steps().neighbourKg(kg, n);
      if (portions.isPractical(item, neighbour * fraction)) {
        addWithin(values, item, neighbour);
      }
    }
    if (Math.abs(kg - today) < NOTHING_KG) {
      addWithin(values, item, today);
    }
    if (values.isEmpty()) {
      // the bounds hold no step of the scale: what is fed today needs none, and none can be given
      addWithin(values, item, today);
      addWithin(values, item, 0);
    }
    return values;
  }

  private static void addWithin(List<Double> values, FreeItem item, double kg) {
    double dm = kg * item.item().dryMatterFraction();
    if (dm >= item.leastDmKg() - NOTHING_KG
        && dm <= item.mostDmKg() + NOTHING_KG
        && !values.contains(dm)) {
      values.add(dm);
    }
  }

  private Draft draft(MixSpec spec, double[] dmKg, double score, double ideal) {
    List<Serving> balanced = FortifiedShare.withBalancers(request, spec.ration(dmKg));
    List<Serving> ration = new ArrayList<>();
    for (Serving a : balanced) {
      boolean isChanged = Math.abs(a.kg() - request.todayKg(a.item())) > NOTHING_KG;
      ration.add(a.item().isBalancer() && isChanged ? a.withKg(doseKg(a, balanced)) : a);
    }
    List<Serving> fed = ration.stream().filter(a -> a.kg() > 0).toList();
    List<Candidate> added =
        spec.free().stream()
            .map(FreeItem::item)
            .filter(c -> fed.stream().anyMatch(a -> a.item().isSameAs(c)))
            .filter(c -> request.ration().stream().noneMatch(a -> a.item().isSameAs(c)))
            .toList();
    return new Draft(fed, added, checked(fed), score, ideal);
  }

  /** A weighable amount of a balancer; none where what is left of it is not worth weighing. */
  private double doseKg(Serving a, List<Serving> ration) {
    double kg = doses.weighedKg(a.item(), a.kg(), ration);
    return kg < portions.leastKg(a.item(), a.fedAsForage()) - NOTHING_KG ? 0 : kg;
  }

  /** The diet code's word, and what stock and labels say against it. */
  CheckedDiet checked(List<Serving> fed) {
    CheckedDiet diet = request.check().check(fed);
    List<String> obstacles = new ArrayList<>(diet.obstacles());
    obstacles.addAll(new Supplies(request).against(fed));
    obstacles.addAll(doses.against(fed));
    return new CheckedDiet(diet.limits(), obstacles, diet.shortfalls(), diet.newlyShort());
  }
}
