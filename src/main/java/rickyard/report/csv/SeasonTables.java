package rickyard.report.csv;

import static rickyard.report.csv.Field.count;
import static rickyard.report.csv.Field.number;
import static rickyard.report.csv.Field.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rickyard.core.quantity.Unit;
import rickyard.core.season.DayValue;
import rickyard.core.season.FieldCourse;
import rickyard.core.season.LaboratoryPair;
import rickyard.core.season.LotCourse;
import rickyard.core.season.OverTime;
import rickyard.core.season.OverTimeRules;
import rickyard.core.season.PairedDifference;
import rickyard.core.season.Trend;
import rickyard.core.season.YearValue;
import rickyard.report.season.OverTimeWords;
import rickyard.report.season.SeasonSummary;
import rickyard.report.view.MorningView;

/** Lots taken together, and tests beside each other. */
final class SeasonTables {
  private static final String OVER_TIME =
      "kind,about,other,quantity,unit,n,from,to,change,u,slope,slope_u,slope_per,t,df,chance,"
          + "finding,words";

  private SeasonTables() {}

  static List<Table> of(MorningView view) {
    SeasonSummary summary = SeasonSummary.of(view.season());
    return List.of(figures(summary), clears(summary), overTime(view.season().overTime()));
  }

  private static Table figures(SeasonSummary summary) {
    List<List<Field>> rows = new ArrayList<>();
    for (SeasonSummary.Part part : summary.parts()) {
      for (SeasonSummary.Row row : part.rows()) {
        for (SeasonSummary.Stat stat : row.stats()) {
          rows.add(
              List.of(
                  text(part.by()),
                  text(row.of()),
                  text(stat.quantity()),
                  text(stat.unit()),
                  count(stat.lots()),
                  number(Double.valueOf(stat.mean())),
                  number(stat.sd()),
                  number(Double.valueOf(stat.lowest())),
                  number(Double.valueOf(stat.highest()))));
        }
      }
    }
    return Table.of("season.csv", "by,of,quantity,unit,lots,mean,sd,lowest,highest", rows);
  }

  private static Table clears(SeasonSummary summary) {
    List<List<Field>> rows = new ArrayList<>();
    for (SeasonSummary.Part part : summary.parts()) {
      for (SeasonSummary.Row row : part.rows()) {
        for (SeasonSummary.Clearing clearing : row.clearings()) {
          rows.add(
              List.of(
                  text(part.by()),
                  text(row.of()),
                  text(clearing.group()),
                  count(clearing.lots()),
                  count(clearing.clears()),
                  count(clearing.notFor()),
                  count(clearing.undecided()),
                  number(Double.valueOf(100.0 * clearing.clears() / clearing.lots()))));
        }
      }
    }
    return Table.of(
        "season-clears.csv", "by,of,group,lots,clears,not_for,undecided,clears_pct", rows);
  }

  private static Table overTime(Optional<OverTime> found) {
    List<List<Field>> rows = new ArrayList<>();
    found.ifPresent(
        all -> {
          all.lots().forEach(c -> rows.add(row(c)));
          all.fields().forEach(c -> rows.add(row(c, all.rules())));
          all.laboratories().forEach(p -> rows.add(row(p, all.rules())));
          all.again().forEach(p -> rows.add(row(p, all.rules())));
        });
    return Table.of("over-time.csv", OVER_TIME, rows);
  }

  private static List<Field> row(LotCourse course) {
    List<DayValue> days = course.days();
    List<Field> row = new ArrayList<>();
    row.addAll(about("lot", course.lot(), "", course.quantity().value(), course.unit()));
    row.add(count(course.tests()));
    row.add(text(days.get(0).day().toString()));
    row.add(text(days.get(days.size() - 1).day().toString()));
    row.add(number(Double.valueOf(course.change())));
    row.add(number(Double.valueOf(course.uChange())));
    row.addAll(trend(course.trend(), OverTimeWords.TREND_DAYS, "30 days"));
    row.addAll(List.of(number(null), number(null), number(null)));
    row.add(text(course.course().code()));
    row.add(text(OverTimeWords.of(course)));
    return row;
  }

  private static List<Field> row(FieldCourse course, OverTimeRules rules) {
    List<YearValue> years = course.years();
    List<Field> row = new ArrayList<>();
    row.addAll(
        about(
            "field",
            course.field(),
            (course.cutting() + " " + course.material()).strip(),
            course.quantity().value(),
            course.unit()));
    row.add(count(years.size()));
    row.add(text(Integer.toString(years.get(0).year())));
    row.add(text(Integer.toString(years.get(years.size() - 1).year())));
    row.add(number(Double.valueOf(course.change())));
    row.add(number(Double.valueOf(course.uChange())));
    row.addAll(trend(course.trend(), 1, "year"));
    Optional<Trend> trend = course.trend();
    row.add(number(trend.map(t -> Double.valueOf(t.slope() / t.u())).orElse(null)));
    row.add(trend.map(t -> count(t.points() - 2)).orElse(number(null)));
    row.add(number(trend.map(t -> Double.valueOf(t.chanceFromScatter())).orElse(null)));
    row.add(text(course.course().code()));
    row.add(text(OverTimeWords.of(course, rules)));
    return row;
  }

  private static List<Field> row(LaboratoryPair pair, OverTimeRules rules) {
    Optional<PairedDifference> difference = pair.difference();
    List<Field> row = new ArrayList<>();
    row.addAll(
        about(
            pair.isAgain() ? "again" : "laboratories",
            pair.first().name(),
            pair.isAgain() ? "" : pair.second().name(),
            pair.quantity().value(),
            pair.unit()));
    row.addAll(List.of(count(pair.lots()), text(""), text("")));
    row.add(number(difference.map(d -> Double.valueOf(d.mean())).orElse(null)));
    row.add(number(difference.map(d -> Double.valueOf(d.u())).orElse(null)));
    row.addAll(List.of(number(null), number(null), text("")));
    row.add(number(difference.map(d -> Double.valueOf(d.t())).orElse(null)));
    row.add(difference.map(d -> count(d.degreesOfFreedom())).orElse(number(null)));
    row.add(number(difference.map(d -> Double.valueOf(d.chance())).orElse(null)));
    row.add(text(difference.isEmpty() ? "too-few" : pair.isRare(rules) ? "rare" : "may-be-chance"));
    row.add(text(OverTimeWords.of(pair, rules)));
    return row;
  }

  private static List<Field> about(
      String kind, String about, String other, String quantity, Unit unit) {
    return List.of(text(kind), text(about), text(other), text(quantity), text(unit.code() + " DM"));
  }

  private static List<Field> trend(Optional<Trend> trend, int times, String per) {
    return List.of(
        number(trend.map(t -> Double.valueOf(t.slope() * times)).orElse(null)),
        number(trend.map(t -> Double.valueOf(t.u() * times)).orElse(null)),
        text(trend.isPresent() ? per : ""));
  }
}
