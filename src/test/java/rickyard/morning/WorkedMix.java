package rickyard.morning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Two forages in place of one, by hand: the least dry matter of the new one with which the whole
 * diet keeps its limit with the guard band, then the weighable amounts around it. Plain arithmetic;
 * nothing of the program's search is in it.
 *
 * @param old the forage that becomes less
 * @param oldKg kg as fed of it without a change; the target is its dry matter
 * @param added the forage that is new
 * @param rest what is fed besides
 * @param limit most of the whole diet, % of dry matter
 * @param z guard factor
 */
record WorkedMix(Item old, double oldKg, Item added, List<Fed> rest, double limit, double z) {
  /** Prices of a change, from config/remedy.csv. */
  private static final double OFF_TARGET = 3;

  private static final double COST = 0.001;

  /** An item: dry matter as a fraction, content and its standard uncertainty, price of a kg. */
  record Item(String name, double dm, double content, double u, double price) {}

  /** An item and kg as fed of it. */
  record Fed(Item item, double kg) {
    double dmKg() {
      return kg * item.dm();
    }
  }

  /** Mean, standard uncertainty and dry matter of a ration. */
  record Whole(double mean, double u, double dmKg) {
    double upper(double z) {
      return mean + z * u;
    }
  }

  /** Weighable amounts near the exact ones. */
  record Choice(double addedKg, double oldKg, Whole whole, double price, boolean clears) {}

  static Whole whole(List<Fed> ration) {
    double dm = ration.stream().mapToDouble(Fed::dmKg).sum();
    double mean = ration.stream().mapToDouble(f -> f.dmKg() * f.item().content()).sum() / dm;
    double variance = ration.stream().mapToDouble(f -> Math.pow(f.dmKg() * f.item().u(), 2)).sum();
    return new Whole(mean, Math.sqrt(variance) / dm, dm);
  }

  double target() {
    return oldKg * old.dm();
  }

  /** P: what the diet has over the limit with none of the new forage, kg of dry matter x %. */
  double excess() {
    return rest.stream().mapToDouble(f -> f.dmKg() * (f.item().content() - limit)).sum()
        + target() * (old.content() - limit);
  }

  /** Q: what a kilogram of dry matter of the new forage changes of it. */
  double slope() {
    return added.content() - old.content();
  }

  /** Coefficients of a·x² + b·x + c = 0, from z²·(V + x²u² + (T − x)²u²) = (P + Q·x)². */
  double[] quadratic() {
    double v = rest.stream().mapToDouble(f -> Math.pow(f.dmKg() * f.item().u(), 2)).sum();
    double t = target();
    double zz = z * z;
    double uu = old.u() * old.u();
    return new double[] {
      zz * (added.u() * added.u() + uu) - slope() * slope(),
      -2 * zz * t * uu - 2 * excess() * slope(),
      zz * (v + t * t * uu) - excess() * excess()
    };
  }

  /** The root on the side of the limit on which the diet clears, kg of dry matter. */
  double least() {
    double[] q = quadratic();
    double root = Math.sqrt(q[1] * q[1] - 4 * q[0] * q[2]);
    for (double x : new double[] {(-q[1] - root) / (2 * q[0]), (-q[1] + root) / (2 * q[0])}) {
      if (x >= 0 && x <= target() && excess() + slope() * x < 0) {
        return x;
      }
    }
    throw new IllegalStateException("no share clears");
  }

  /** Steps of the scale in kg, from config/remedy.csv. */
  static double step(double kg) {
    return kg < 0.1 ? 0.005 : kg < 0.5 ? 0.02 : kg < 2 ? 0.1 : kg < 5 ? 0.25 : 0.5;
  }

  /** All steps of the scale up to an amount, kg. */
  private static List<Double> steps(double mostKg) {
    List<Double> all = new ArrayList<>();
    double kg = 0;
    while (kg <= mostKg + 1e-9) {
      all.add(kg);
      kg = Math.rint((kg + step(kg)) * 1e6) / 1e6;
    }
    return all;
  }

  /** Every pair of weighable amounts, the cheapest change that clears first. */
  List<Choice> choices() {
    List<Choice> all = new ArrayList<>();
    for (double addedKg : steps(1.5 * target() / added.dm())) {
      for (double kg : steps(oldKg)) {
        all.add(choice(addedKg, kg));
      }
    }
    all.sort(Comparator.<Choice, Boolean>comparing(c -> !c.clears()).thenComparing(Choice::price));
    return all;
  }

  List<Fed> ration(double addedKg, double kg) {
    List<Fed> ration = new ArrayList<>(List.of(new Fed(added, addedKg), new Fed(old, kg)));
    ration.addAll(rest);
    return ration;
  }

  private Choice choice(double addedKg, double kg) {
    Whole whole = whole(ration(addedKg, kg));
    double addedDm = addedKg * added.dm();
    double oldDm = kg * old.dm();
    double price =
        addedDm
            + Math.abs(oldDm - target())
            + OFF_TARGET * Math.abs(addedDm + oldDm - target())
            + COST * (addedKg * added.price() + kg * old.price());
    return new Choice(addedKg, kg, whole, price, whole.upper(z) <= limit + 1e-9);
  }
}
