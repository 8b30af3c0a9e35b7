package rickyard.second;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A ration as a vector of dry matter by food; the supply of a nutrient is the product of the row of
 * its contents with that vector, and its uncertainty the quadratic form of the gradient with the
 * covariance of all contents and amounts. All portions of one food are one entry: its content is
 * the same whatever meal it is in.
 */
final class Mixture {
  /** From content x kg of dry matter to the amount per day. */
  static final Map<String, Double> PER_KG = new LinkedHashMap<>();

  static {
    for (String code : List.of("CP", "LYS", "CA", "P", "MG", "K", "NA", "CL", "S")) {
      PER_KG.put(code, 10.0);
    }
    for (String code :
        List.of(
            "DE",
            "CO",
            "CU",
            "I",
            "FE",
            "MN",
            "SE",
            "ZN",
            "VIT_A",
            "VIT_D",
            "VIT_E",
            "THIAMIN",
            "RIBOFLAVIN")) {
      PER_KG.put(code, 1.0);
    }
  }

  private final Books books;
  private final List<Food> foods = new ArrayList<>();
  private final RealVector kgDm;
  private final RealVector uAmountDm;
  private final RealVector uDm;

  Mixture(Books books, List<Portioned> portions) {
    this.books = books;
    Map<String, double[]> byFood = new LinkedHashMap<>();
    for (Portioned p : portions) {
      if (!byFood.containsKey(p.food().key())) {
        foods.add(p.food());
      }
      double[] at = byFood.computeIfAbsent(p.food().key(), k -> new double[2]);
      at[0] += p.kg();
      at[1] += p.uKg();
    }
    this.kgDm = new ArrayRealVector(foods.size());
    this.uAmountDm = new ArrayRealVector(foods.size());
    this.uDm = new ArrayRealVector(foods.size());
    for (int j = 0; j < foods.size(); j++) {
      Food food = foods.get(j);
      double[] kg = byFood.get(food.key());
      kgDm.setEntry(j, kg[0] * food.dryMatter().best() / 100);
      uAmountDm.setEntry(j, kg[1] * food.dryMatter().best() / 100);
      uDm.setEntry(j, Math.hypot(uAmountDm.getEntry(j), kg[0] * food.dryMatter().u() / 100));
    }
  }

  double totalDm() {
    return kgDm.getL1Norm();
  }

  double forageDm() {
    double sum = 0;
    for (int j = 0; j < foods.size(); j++) {
      sum += foods.get(j).isForage() ? kgDm.getEntry(j) : 0;
    }
    return sum;
  }

  Num dryMatter() {
    String origin = "";
    for (Food food : foods) {
      origin = Num.both(origin, food.dryMatter().origin());
    }
    return Num.plain(totalDm(), 0, uDm.getNorm(), origin);
  }

  /**
   * The supply of a nutrient per day.
   *
   * @param total sum of what is known; open above if something is not
   * @param isComplete whether every food has a content
   * @param isKnown whether any has
   * @param ceiling what is held against a maximum tolerable level: reported parts with two of their
   *     uncertainties, assumed parts at their best value
   */
  record Supply(Num total, boolean isComplete, boolean isKnown, double ceiling) {}

  Supply supply(String code) {
    return supply(kgDm, uDm, PER_KG.get(code), food -> food.findSupply(code));
  }

  private Supply supply(
      RealVector kg,
      RealVector uKg,
      double perKg,
      java.util.function.Function<Food, Optional<Num>> contents) {
    List<Num> known = new ArrayList<>();
    List<Double> gradient = new ArrayList<>();
    List<Double> variances = new ArrayList<>();
    List<Double> reportedVariances = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    boolean isComplete = true;
    double ceiling = 0;
    for (int j = 0; j < foods.size(); j++) {
      if (kg.getEntry(j) == 0) {
        continue;
      }
      Optional<Num> content = contents.apply(foods.get(j));
      if (content.isEmpty()) {
        isComplete = false;
        continue;
      }
      Num c = content.get();
      known.add(c);
      weights.add(perKg * kg.getEntry(j));
      boolean isReported = c.origin().equals(Num.REPORTED) || c.origin().isEmpty();
      for (double[] term :
          new double[][] {{perKg * kg.getEntry(j), c.u()}, {perKg * c.best(), uKg.getEntry(j)}}) {
        gradient.add(term[0]);
        variances.add(term[1] * term[1]);
        reportedVariances.add(isReported ? term[1] * term[1] : 0);
      }
      ceiling += perKg * kg.getEntry(j) * (isReported && c.isBounded() ? c.upper() : c.best());
    }
    Num sum =
        Num.sum(vector(weights), known, new DiagonalMatrix(new double[known.size()]))
            .withU(root(gradient, variances));
    double top = ceiling + 2 * root(gradient, reportedVariances);
    return new Supply(isComplete ? sum : open(sum), isComplete, !known.isEmpty(), top);
  }

  private static Num open(Num sum) {
    double top = Double.POSITIVE_INFINITY;
    return new Num(sum.best(), sum.low(), top, sum.lower(), top, sum.u(), sum.origin());
  }

  private static double root(List<Double> gradient, List<Double> variances) {
    RealVector g = vector(gradient);
    DiagonalMatrix v =
        new DiagonalMatrix(variances.stream().mapToDouble(Double::doubleValue).toArray());
    return g.getDimension() == 0 ? 0 : Math.sqrt(g.dotProduct(v.operate(g)));
  }

  private static RealVector vector(List<Double> values) {
    return new ArrayRealVector(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /**
   * The content of the whole, % or mg/kg of dry matter, as it may be held against a limit: typical
   * values never count, and foods that say nothing take the high value of their role where together
   * they are less than the stated share of the dry matter.
   */
  Optional<Num> content(String code) {
    RealVector share = kgDm.mapDivide(totalDm());
    List<Num> known = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    boolean isOpen = false;
    for (int j = 0; j < foods.size(); j++) {
      if (addsNothing(code, foods.get(j))) {
        continue;
      }
      Optional<Num> c = counting(code, foods.get(j));
      isOpen |= c.isEmpty();
      if (c.isPresent()) {
        known.add(c.get());
        weights.add(share.getEntry(j));
        places.add(j);
      }
    }
    if (known.isEmpty()) {
      return Optional.empty();
    }
    DiagonalMatrix none = new DiagonalMatrix(new double[known.size()]);
    Num mean = Num.sum(vector(weights), known, none);
    List<Double> gradient = new ArrayList<>();
    List<Double> variances = new ArrayList<>();
    for (int k = 0; k < places.size(); k++) {
      gradient.add(weights.get(k));
      variances.add(known.get(k).u() * known.get(k).u());
      gradient.add((known.get(k).best() - mean.best()) / totalDm());
      variances.add(Math.pow(uAmountDm.getEntry(places.get(k)), 2));
    }
    Num mixed = mean.withU(root(gradient, variances));
    return Optional.of(isOpen ? open(mixed) : mixed);
  }

  /** Some contents come with forage alone. */
  private boolean addsNothing(String code, Food food) {
    return !food.isForage()
        && List.of(books.setting("forage_only_contents").split(";", -1)).contains(code);
  }

  private Optional<Num> counting(String code, Food food) {
    Optional<Num> given = food.findGiven(code);
    if (given.isPresent() && given.get().isBounded()) {
      return given;
    }
    double silent = 0;
    for (int j = 0; j < foods.size(); j++) {
      boolean isSilent = foods.get(j).findGiven(code).filter(Num::isBounded).isEmpty();
      silent += isSilent && !addsNothing(code, foods.get(j)) ? kgDm.getEntry(j) : 0;
    }
    boolean isSmall = 100 * silent / totalDm() < books.settingNumber("sugar_silent_pct_dm");
    double known = given.map(Num::best).orElse(0.0);
    Optional<Num> high =
        books
            .find("role-high-values", "role", food.role(), "analyte", code)
            .map(r -> Math.max(known, Double.parseDouble(r.get("value"))))
            .map(top -> Num.atMost(top, 0, Num.ASSUMED));
    return isSmall && high.isPresent() ? high : given;
  }

  /** Grams in the largest bucket meal: each bucket item by its own number of meals, all at once. */
  Supply bucketMeal(String code, List<Portioned> portions, Map<String, String> horse) {
    RealVector kg = new ArrayRealVector(foods.size());
    RealVector u = new ArrayRealVector(foods.size());
    String ofHorse = horse.get("meals_per_day");
    for (Portioned p : portions) {
      if (p.isBucket()) {
        double fallBack =
            ofHorse.isEmpty()
                ? books.settingNumber("meals_when_unknown")
                : Double.parseDouble(ofHorse);
        double meals = p.meals().isPresent() ? p.meals().getAsInt() : fallBack;
        int j = keys().indexOf(p.food().key());
        Num dm = p.food().dryMatter();
        kg.addToEntry(j, p.kg() * dm.best() / 100 / meals);
        u.addToEntry(j, Math.hypot(p.uKg() * dm.best(), p.kg() * dm.u()) / 100 / meals);
      }
    }
    return supply(kg, u, 10, food -> counting(code, food));
  }

  private List<String> keys() {
    return foods.stream().map(Food::key).toList();
  }
}
