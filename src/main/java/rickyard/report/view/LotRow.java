package rickyard.report.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A row of lots.csv, with the lot's verdicts and what is assumed about it for the page. */
public record LotRow(
    String lot,
    String holder,
    String material,
    String cutting,
    @Nullable Double stockKg,
    @Nullable Double nscWsc,
    @Nullable Double nscEsc,
    @Nullable Double starch,
    List<String> suits,
    List<String> notFor,
    List<String> undecided,
    String reason,
    List<VerdictRow> verdicts,
    List<String> assumptions,
    String lab,
    String sampledOn) {
  public LotRow {
    suits = List.copyOf(suits);
    notFor = List.copyOf(notFor);
    undecided = List.copyOf(undecided);
    verdicts = List.copyOf(verdicts);
    assumptions = List.copyOf(assumptions);
  }
}
