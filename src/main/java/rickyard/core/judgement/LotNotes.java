package rickyard.core.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Soaking;
import rickyard.core.quantity.Measured;

/** Finds the sentences that a lot's verdicts call for. */
public final class LotNotes {
  private static final String SOAKING = "{soaking}";

  private LotNotes() {}

  /**
   * The sentences, in the order of the table, each once.
   *
   * @param verdicts of the lot
   * @param analysis of the lot
   * @param table the rows of {@code config/lot-notes.csv}
   */
  public static List<String> of(
      List<Verdict> verdicts, AccountedAnalysis analysis, List<LotNote> table) {
    List<String> found = new ArrayList<>();
    for (LotNote note : table) {
      if (isForMaterial(note, analysis) && isBeside(note, analysis)) {
        verdicts.stream()
            .filter(v -> !v.isSilent() && v.limit().quantity().equals(note.quantity()))
            .filter(v -> note.words().contains(v.word()))
            .sorted(WorstVerdict.WORST_FIRST)
            .flatMap(v -> text(note, v).stream())
            .max(Comparator.comparingDouble(NoteText::loss))
            .map(NoteText::text)
            .filter(t -> !found.contains(t))
            .ifPresent(found::add);
      }
    }
    return List.copyOf(found);
  }

  private static boolean isForMaterial(LotNote note, AccountedAnalysis analysis) {
    return note.materials().isEmpty()
        || note.materials().equals(analysis.material().isDryStored() ? "hay" : "haylage");
  }

  private static boolean isBeside(LotNote note, AccountedAnalysis analysis) {
    Optional<AnalyteCode> beside = note.beside();
    return beside.isEmpty()
        || analysis
            .analysis()
            .find(beside.get())
            .map(v -> v.best() > note.besideOver().orElse(Double.POSITIVE_INFINITY))
            .orElse(false);
  }

  /** The sentence with its figure; none where the figure cannot be computed. */
  private static Optional<NoteText> text(LotNote note, Verdict verdict) {
    if (!note.text().contains(SOAKING)) {
      return Optional.of(new NoteText(0, note.text()));
    }
    return verdict
        .value()
        .filter(v -> isOver(v, verdict.limit()))
        .map(v -> Soaking.lossNeeded(Math.min(100, v.lower()), verdict.limit().value()))
        .map(loss -> new NoteText(loss, note.text().replace(SOAKING, Words.number(100 * loss, 0))));
  }

  /** A sentence with the loss that it names: of several limits the lowest counts. */
  private record NoteText(double loss, String text) {}

  private static boolean isOver(Measured value, Limit limit) {
    return limit.unit().unit().code().equals("%") && value.lower() > limit.value();
  }
}
