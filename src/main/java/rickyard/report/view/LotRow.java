package rickyard.report.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row of lots.csv, with the lot's verdicts, what is assumed about it, what stands beside it and
 * what its uncertainties are made of, for the page.
 */
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
    String sampledOn,
    List<String> notes,
    List<String> accounts) {
  public LotRow {
    suits = List.copyOf(suits);
    notFor = List.copyOf(notFor);
    undecided = List.copyOf(undecided);
    verdicts = List.copyOf(verdicts);
    assumptions = List.copyOf(assumptions);
    notes = List.copyOf(notes);
    accounts = List.copyOf(accounts);
  }

  /** What stands among the assumptions of a lot that no register knows. */
  public static final String PROVISIONAL = "in no register yet: a provisional lot";

  /** Whether no register knows the lot yet. */
  public boolean isProvisional() {
    return assumptions.contains(PROVISIONAL);
  }

  /** A row beside which nothing stands. */
  public LotRow(
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
    this(
        lot,
        holder,
        material,
        cutting,
        stockKg,
        nscWsc,
        nscEsc,
        starch,
        suits,
        notFor,
        undecided,
        reason,
        verdicts,
        assumptions,
        lab,
        sampledOn,
        List.of(),
        List.of());
  }
}
