package rickyard.report.csv;

import static rickyard.report.csv.Field.count;
import static rickyard.report.csv.Field.list;
import static rickyard.report.csv.Field.number;
import static rickyard.report.csv.Field.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.ChangeoverLine;
import rickyard.core.advice.DietLine;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;
import rickyard.core.advice.TripLine;
import rickyard.core.advice.TripPlan;
import rickyard.report.text.Mass;
import rickyard.report.view.MorningView;

/** What is said of horses: priorities, diets, changed rations and the days between. */
final class HorseTables {
  private HorseTables() {}

  static Table horses(MorningView view) {
    return Table.of(
        "horses.csv",
        "horse,client,groups,priority,reason,verdict_before,verdict_after,dm_kg,dm_pct_bw,"
            + "nsc_wsc_pct_dm,u,p_over,remedy,limit_id",
        view.horses(),
        HorseTables::row);
  }

  /** A diet that cannot be computed cannot be judged; one that was never known has no word. */
  private static List<Field> row(HorseAdvice horse) {
    DietSummary before = horse.before();
    DietSummary after = horse.after();
    LimitLine worst = after == null ? null : after.worst();
    return List.of(
        text(horse.horse()),
        text(horse.client()),
        list(horse.groups()),
        text(horse.priority().code()),
        text(horse.reason()),
        text(before == null ? "" : before.verdict()),
        text(after == null ? "cannot-judge" : after.verdict()),
        number(after == null || horse.vetFirst() ? null : Double.valueOf(after.dmKg())),
        number(after == null ? null : Double.valueOf(after.dmPercentBw())),
        number(after == null ? null : after.nscWscPercent()),
        number(uncertainty(after)),
        number(worst == null ? null : worst.pOver()),
        text(horse.proposals().isEmpty() ? "" : horse.proposals().get(0).kind()),
        text(worst == null ? "" : worst.limitId()));
  }

  /** Of the worst-placed limit's value; of the NSC where no limit applies. */
  private static @Nullable Double uncertainty(@Nullable DietSummary diet) {
    if (diet == null) {
      return null;
    }
    LimitLine worst = diet.worst();
    return worst == null ? diet.nscWscU() : worst.u();
  }

  static Table diets(MorningView view) {
    List<List<Field>> rows = new ArrayList<>();
    for (HorseAdvice horse : view.horses()) {
      addDiet(rows, horse, "before", horse.before());
      addDiet(rows, horse, "after", horse.after());
      for (Proposal proposal : horse.proposals()) {
        if (proposal.diet() != null) {
          addDiet(rows, horse, "remedy", proposal.diet());
          break;
        }
      }
    }
    return Table.of(
        "diets.csv",
        "horse,when,nutrient,unit,supply,low,high,requirement,pct_of_requirement,max_tolerable,"
            + "status,origin",
        rows);
  }

  /** Without a vet plan no kilograms are written, not even those of today. */
  private static void addDiet(
      List<List<Field>> rows, HorseAdvice horse, String when, @Nullable DietSummary diet) {
    if (diet == null) {
      return;
    }
    for (DietLine line : diet.lines()) {
      if (horse.vetFirst() && line.unit().equals("kg")) {
        continue;
      }
      rows.add(
          List.of(
              text(horse.horse()),
              text(when),
              text(line.nutrient()),
              text(line.unit()),
              number(line.supply()),
              number(line.low()),
              number(line.high()),
              number(line.requirement()),
              number(line.percentOfRequirement()),
              number(line.maxTolerable()),
              text(line.status()),
              text(line.origin())));
    }
  }

  static Table remedies(MorningView view) {
    return Table.of(
        "remedies.csv",
        "horse,rank,kind,item,role,now_kg,then_kg,then_lb,units_per_month,cost_per_day,"
            + "nsc_wsc_after,verdict_after,why,u_after,p_over_after,limit_id,batch,days_of_stock,enough",
        view.horses().stream()
            .flatMap(horse -> horse.proposals().stream().flatMap(p -> rows(horse.horse(), p)))
            .toList());
  }

  private static Stream<List<Field>> rows(String horse, Proposal proposal) {
    if (proposal.items().isEmpty()) {
      return Stream.of(row(horse, proposal, null));
    }
    return proposal.items().stream().map(item -> row(horse, proposal, item));
  }

  private static List<Field> row(String horse, Proposal proposal, @Nullable ProposalItem item) {
    DietSummary diet = proposal.diet();
    LimitLine worst = diet == null ? null : diet.worst();
    return List.of(
        text(horse),
        count(proposal.rank()),
        text(proposal.kind()),
        text(item == null ? "" : item.item()),
        text(item == null ? "" : item.role()),
        number(item == null ? null : Double.valueOf(item.nowKg())),
        number(item == null ? null : Double.valueOf(item.thenKg())),
        number(item == null ? null : Double.valueOf(Mass.pounds(item.thenKg()))),
        number(item == null ? null : item.unitsPerMonth()),
        number(item == null ? null : item.costPerDay()),
        number(diet == null ? null : diet.nscWscPercent()),
        text(diet == null ? "" : diet.verdict()),
        text(proposal.why()),
        number(uncertainty(diet)),
        number(worst == null ? null : worst.pOver()),
        text(worst == null ? "" : worst.limitId()),
        text(item == null ? "" : item.batch()),
        number(item == null ? null : item.daysOfStock()),
        text(proposal.enough() ? "yes" : "no"));
  }

  static Table trips(MorningView view) {
    return Table.of(
        "trips.csv",
        "horse,day,phase,item,kg,lb",
        view.horses().stream()
            .flatMap(horse -> trip(horse).stream().map(line -> row(horse.horse(), line)))
            .toList());
  }

  private static List<TripLine> trip(HorseAdvice horse) {
    @Nullable TripPlan trip = horse.trip();
    return trip == null ? List.of() : trip.lines();
  }

  private static List<Field> row(String horse, TripLine line) {
    return List.of(
        text(horse),
        text(line.day().toString()),
        text(line.phase()),
        text(line.item()),
        number(Double.valueOf(line.kg())),
        number(Double.valueOf(Mass.pounds(line.kg()))));
  }

  static Table changeover(MorningView view) {
    return Table.of(
        "changeover.csv",
        "horse,rank,day,item,kg,lb",
        view.horses().stream()
            .flatMap(horse -> horse.changeovers().stream().map(day -> row(horse.horse(), day)))
            .toList());
  }

  private static List<Field> row(String horse, ChangeoverLine line) {
    return List.of(
        text(horse),
        count(line.rank()),
        count(line.day()),
        text(line.item()),
        number(Double.valueOf(line.kg())),
        number(Double.valueOf(Mass.pounds(line.kg()))));
  }
}
