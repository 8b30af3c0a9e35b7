package rickyard.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import rickyard.core.season.Course;
import rickyard.core.season.LaboratoryPair;
import rickyard.core.season.LotCourse;
import rickyard.core.season.OverTime;
import rickyard.report.season.OverTimeWords;
import rickyard.report.text.Harmless;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.MorningView;

/**
 * Tests beside each other: one lot again, one field over the years, two laboratories.
 *
 * @param lots of each lot its first quantity, and any other that is not steady
 * @param fields of each field and cutting the same
 * @param laboratories sentences; differences first that chance would rarely give
 * @param again the same for one laboratory on a lot again
 * @param compared how many mean differences were looked at, and how many chance alone would call
 *     rare; empty where none was
 */
public record OverTimePages(
    Listed<Line> lots,
    Listed<Line> fields,
    Listed<String> laboratories,
    Listed<String> again,
    String compared) {

  /** One series: what it is of, what was tested, its picture and what it comes to. */
  public record Line(String about, String quantity, String finding, String words, String picture) {}

  static OverTimePages of(MorningView view) {
    return view.season()
        .overTime()
        .map(OverTimePages::of)
        .orElseGet(() -> new OverTimePages(none(), none(), none(), none(), ""));
  }

  private static <T> Listed<T> none() {
    return new Listed<>(List.of(), 0, "");
  }

  private static OverTimePages of(OverTime all) {
    return new OverTimePages(
        Listed.first(
            worth(all.lots(), LotCourse::lot, LotCourse::course),
            OverTimePages::line,
            "over-time.csv"),
        Listed.first(
            worth(
                all.fields(),
                c -> c.field() + "\u001f" + c.cutting() + "\u001f" + c.material(),
                c -> c.course()),
            c -> line(c, all),
            "over-time.csv"),
        sentences(all.laboratories(), all),
        sentences(all.again(), all),
        compared(all));
  }

  /** The first quantity of each series and whatever is not steady; what is not steady first. */
  private static <T> List<T> worth(
      List<T> all, Function<T, String> about, Function<T, Course> course) {
    Set<String> seen = new HashSet<>();
    List<T> kept = new ArrayList<>();
    for (T each : all) {
      if (seen.add(about.apply(each)) || course.apply(each) != Course.STEADY) {
        kept.add(each);
      }
    }
    kept.sort(Comparator.comparing(each -> course.apply(each) == Course.STEADY));
    return kept;
  }

  private static Line line(LotCourse course) {
    return new Line(
        Harmless.line(course.lot()),
        OverTimeWords.quantity(course.quantity()),
        Words.find("lotcourse", course.course().code())
            .orElse(Words.of("course", course.course().code())),
        OverTimeWords.of(course),
        CoursePicture.of(course));
  }

  private static Line line(rickyard.core.season.FieldCourse course, OverTime all) {
    String cutting = Harmless.line(course.cutting());
    return new Line(
        OverTimeWords.name(course.field()) + (cutting.isEmpty() ? "" : ", cutting " + cutting),
        OverTimeWords.quantity(course.quantity()),
        Words.of("course", course.course().code()),
        OverTimeWords.of(course, all.rules()),
        CoursePicture.of(course));
  }

  /** Rare differences first; of pairs with too few lots only the best covered quantity. */
  private static Listed<String> sentences(List<LaboratoryPair> pairs, OverTime all) {
    List<LaboratoryPair> shown = new ArrayList<>();
    pairs.stream().filter(p -> p.isRare(all.rules())).forEach(shown::add);
    pairs.stream()
        .filter(p -> p.difference().isPresent() && !p.isRare(all.rules()))
        .forEach(shown::add);
    Set<String> named = new HashSet<>();
    shown.forEach(p -> named.add(names(p)));
    pairs.stream()
        .filter(p -> p.difference().isEmpty())
        .sorted(Comparator.comparingInt(p -> -p.lots()))
        .filter(p -> named.add(names(p)))
        .forEach(shown::add);
    return Listed.first(shown, p -> OverTimeWords.of(p, all.rules()), "over-time.csv");
  }

  private static String names(LaboratoryPair pair) {
    return pair.first().key() + "\u001f" + pair.second().key();
  }

  private static String compared(OverTime all) {
    long differences =
        all.laboratories().stream().filter(p -> p.difference().isPresent()).count()
            + all.again().stream().filter(p -> p.difference().isPresent()).count();
    return differences == 0
        ? ""
        : Shown.count(differences, "mean difference was", "mean differences were")
            + " looked at; by chance alone about "
            + Shown.share(all.rules().rareChance(), 1)
            + " of them would be called rare. No value is corrected for any.";
  }
}
