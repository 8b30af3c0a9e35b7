package rickyard.core.remedy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.tables.RemedyTables;

/** Items and requests for the tests. */
final class Yard {
  static final RemedySettings SETTINGS = RemedyTables.load(Optional.empty()).settings();
  static final String NSC = "nsc_wsc";

  private Yard() {}

  static Candidate lot(String id, double nsc, double u) {
    return lot(id, nsc, u, 0.88);
  }

  static Candidate lot(String id, double nsc, double u, double dm) {
    return item(id, CandidateKind.LOT, "grass-hay", "long-stem", true, dm, nsc, u, Label.NONE);
  }

  static Candidate item(
      String id,
      CandidateKind kind,
      String role,
      String form,
      boolean isForage,
      double dm,
      double nsc,
      double u,
      Label label) {
    return new Candidate(
        id,
        "",
        id,
        kind,
        role,
        form,
        isForage,
        role.equals("straw"),
        dm,
        new TreeMap<>(Map.of(NSC, new Content(nsc, u))),
        new TreeMap<>(),
        Stock.UNKNOWN,
        label);
  }

  static Candidate with(Candidate c, Stock stock) {
    return new Candidate(
        c.id(),
        c.batch(),
        c.name(),
        c.kind(),
        c.role(),
        c.form(),
        c.isForage(),
        c.isStraw(),
        c.dryMatterFraction(),
        c.contents(),
        c.nutrientsPerKgDm(),
        stock,
        c.label());
  }

  static Candidate with(Candidate c, Map<String, Double> nutrients) {
    return new Candidate(
        c.id(),
        c.batch(),
        c.name(),
        c.kind(),
        c.role(),
        c.form(),
        c.isForage(),
        c.isStraw(),
        c.dryMatterFraction(),
        c.contents(),
        new TreeMap<>(nutrients),
        c.stock(),
        c.label());
  }

  static Label fullRate(double low, double high) {
    return new Label(
        OptionalDouble.of(low),
        OptionalDouble.of(high),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        true);
  }

  static Label dose(double low, double high) {
    return new Label(
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(low),
        OptionalDouble.of(high),
        false);
  }

  static Candidate controlled(String id, double nsc, double u) {
    return item(
        id,
        CandidateKind.FEED,
        "controlled-forage",
        "chopped",
        true,
        0.9,
        nsc,
        u,
        fullRate(1.5, 2.0));
  }

  static Candidate balancer(String id) {
    return item(id, CandidateKind.FEED, "balancer", "pellets", false, 0.9, 12, 0.4, dose(0.4, 0.6));
  }

  static Serving bucket(Candidate item, double kg, int meals) {
    return new Serving(item, kg, false, OptionalInt.of(meals));
  }

  static HorseFacts horse(double bodyWeightKg, String... conditions) {
    return new HorseFacts("H1", bodyWeightKg, new TreeSet<>(List.of(conditions)), 2);
  }

  static DietLimit nscLimit(double value, double z) {
    return new DietLimit("limit", NSC, "NSC (WSC + starch)", value, true, z, true);
  }

  static IntakeRange intake(double bodyWeightKg) {
    return new IntakeRange(
        0.0125 * bodyWeightKg, 0.025 * bodyWeightKg, 0.0125 * bodyWeightKg, 0.3, Optional.empty());
  }

  static RemedyRequest request(
      HorseFacts horse, List<Serving> ration, List<Candidate> reach, DietLimit limit) {
    return request(horse, ration, reach, List.of(limit), List.of(), List.of(), MassUnit.KG);
  }

  static RemedyRequest request(
      HorseFacts horse,
      List<Serving> ration,
      List<Candidate> reach,
      List<DietLimit> limits,
      List<MealLimit> meals,
      List<NutrientNeed> needs,
      MassUnit units) {
    IntakeRange intake = intake(horse.bodyWeightKg());
    return new RemedyRequest(
        horse,
        ration,
        List.of(),
        reach,
        limits,
        meals,
        intake,
        needs,
        units,
        SETTINGS,
        new PlainCheck(horse, limits, meals, intake, needs));
  }
}
