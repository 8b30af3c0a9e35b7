package rickyard.morning;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;
import rickyard.report.sheet.Course;

/**
 * Rows for {@code decisions.csv}, ready to paste once a client has accepted: the best proposal of
 * each horse that is enough. Who and from which day are left blank: a row without a day is not
 * followed.
 */
final class AcceptanceDrafts {
  private static final int DECIMALS = 6;

  private AcceptanceDrafts() {}

  static Table table(LocalDate asOf, List<HorseAdvice> horses) {
    return new Table(
        "drafts/decisions.csv",
        List.of("date", "about", "kind", "value", "start_on", "by", "why"),
        horses.stream()
            .filter(AcceptanceDrafts::isTold)
            .flatMap(h -> best(h).map(p -> row(asOf, h, p)).stream())
            .toList());
  }

  /** Only what a sheet tells can be accepted: nothing where the diet cannot be judged yet. */
  private static boolean isTold(HorseAdvice horse) {
    Course course = Course.of(horse);
    return course == Course.CHANGE || course == Course.HOLD;
  }

  private static Optional<Proposal> best(HorseAdvice horse) {
    return horse.proposals().stream()
        .filter(p -> p.enough() && p.items().stream().anyMatch(i -> i.thenKg() > 0))
        .findFirst();
  }

  private static List<Field> row(LocalDate asOf, HorseAdvice horse, Proposal proposal) {
    return List.of(
        Field.text(asOf.toString()),
        Field.text(horse.horse()),
        Field.text("accepted"),
        Field.text(value(proposal)),
        Field.text(""),
        Field.text(""),
        Field.text("proposal " + proposal.rank() + ", " + proposal.kind()));
  }

  /** The whole ration as a decision gives it. */
  private static String value(Proposal proposal) {
    return proposal.items().stream()
        .filter(i -> i.thenKg() > 0)
        .map(AcceptanceDrafts::item)
        .collect(Collectors.joining("; "));
  }

  private static String item(ProposalItem item) {
    String batch = item.batch().isEmpty() ? "" : " " + item.batch();
    String kg =
        BigDecimal.valueOf(item.thenKg())
            .setScale(DECIMALS, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    return item.item() + batch + " " + kg + " kg";
  }
}
