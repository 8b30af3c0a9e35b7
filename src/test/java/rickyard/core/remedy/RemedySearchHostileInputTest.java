package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.remedy.Yard.controlled;
import static rickyard.core.remedy.Yard.horse;
import static rickyard.core.remedy.Yard.lot;
import static rickyard.core.remedy.Yard.nscLimit;
import static rickyard.core.remedy.Yard.request;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Odd but possible requests: each ends in a list that says something, none in an exception. */
class RemedySearchHostileInputTest {
  private static final Candidate HIGH = lot("HIGH", 14, 1.2);

  private static List<Remedy> search(List<Serving> ration, List<Candidate> reach, DietLimit limit) {
    List<Remedy> found = RemedySearch.search(request(horse(500), ration, reach, limit));
    assertFalse(found.isEmpty());
    return found;
  }

  private static void endsInNone(List<Remedy> found) {
    assertTrue(found.stream().noneMatch(Remedy::isEnough), found.toString());
    Remedy none = found.get(found.size() - 1);
    assertEquals(RemedyKind.NONE, none.kind());
    assertFalse(none.why().isBlank());
  }

  @Test
  void anEmptyRationHasNothingToReplace() {
    endsInNone(search(List.of(), List.of(lot("LOW", 6, 0.5)), nscLimit(10, 1.645)));
  }

  @Test
  void nothingInReachEndsInNone() {
    endsInNone(search(List.of(Serving.ofForage(HIGH, 10)), List.of(), nscLimit(10, 1.645)));
  }

  @Test
  void aLimitOfZeroCannotBeMet() {
    endsInNone(
        search(
            List.of(Serving.ofForage(HIGH, 10)),
            List.of(lot("LOW", 1, 0.5), controlled("BAG", 6, 0.4)),
            nscLimit(0, 1.645)));
  }

  @Test
  void anUncertaintyWiderThanTheLimitCannotBeMet() {
    endsInNone(
        search(
            List.of(Serving.ofForage(HIGH, 10)), List.of(lot("WILD", 5, 40)), nscLimit(10, 1.645)));
  }

  @Test
  void anEmptyStockIsNotFedFrom() {
    Candidate gone =
        Yard.with(
            lot("GONE", 5, 0.5),
            new Stock(OptionalDouble.of(0), 0, OptionalDouble.empty(), OptionalDouble.empty()));

    endsInNone(search(List.of(Serving.ofForage(HIGH, 10)), List.of(gone), nscLimit(10, 1.645)));
  }

  @Test
  void aRationOfZeroKilogramsIsNoRation() {
    endsInNone(
        search(
            List.of(Serving.ofForage(HIGH, 0)), List.of(lot("LOW", 6, 0.5)), nscLimit(10, 1.645)));
  }

  @Test
  void fiveLotsInOneRationAreHandled() {
    List<Serving> ration =
        List.of("A", "B", "C", "D", "E").stream()
            .map(id -> Serving.ofForage(lot(id, 13, 1), 2))
            .toList();

    List<Remedy> found = search(ration, List.of(controlled("BAG", 6, 0.4)), nscLimit(10, 1.645));

    assertTrue(found.stream().anyMatch(Remedy::isEnough), found.toString());
  }

  @Test
  void thirtyLotsInReachAreCutToThePoolAndStillAnswered() {
    List<Candidate> reach =
        java.util.stream.IntStream.range(0, 30)
            .mapToObj(i -> lot("L" + i, 6 + i * 0.3, 1))
            .toList();

    assertTrue(
        search(List.of(Serving.ofForage(HIGH, 10)), reach, nscLimit(10, 1.645)).get(0).isEnough());
  }

  @Test
  void numbersThatAreNoAmountsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Serving.ofForage(HIGH, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Serving.ofForage(HIGH, -1));
    assertThrows(IllegalArgumentException.class, () -> new Content(Double.POSITIVE_INFINITY, 1));
    assertThrows(IllegalArgumentException.class, () -> lot("WET", 8, 1, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new IntakeRange(5, 4, 0, 0.3, Optional.empty()));
    assertThrows(IllegalArgumentException.class, () -> Yard.fullRate(2, 1.5));
  }
}
