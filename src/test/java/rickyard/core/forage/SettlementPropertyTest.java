package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever the order of arrival, the same decisions. Seeded; the seed is in each message. */
class SettlementPropertyTest {
  private static final long SEED = 20261102L;

  private static Received report(String document, ReportStatus status, int revision, double wsc) {
    return Reports.received(
        document, "R-1", revision, status, Optional.empty(), Reports.sugars("N2", wsc, 1));
  }

  /** First, copy, same number with other bytes, preliminary, amended, withdrawn. */
  private static List<Received> events() {
    return List.of(
        report("f1", ReportStatus.FINAL, 0, 8),
        report("f2", ReportStatus.FINAL, 0, 8),
        report("f3", ReportStatus.FINAL, 0, 9.5),
        report("p1", ReportStatus.PRELIMINARY, 0, 5),
        report("c1", ReportStatus.AMENDED, 1, 12),
        report("c2", ReportStatus.AMENDED, 2, 6),
        report("w1", ReportStatus.WITHDRAWN, 3, 6),
        Reports.fin("t1", "R-2", Reports.sugars("N2", 9, 1)));
  }

  private static List<Received> arriving(List<Received> order) {
    List<Received> dated = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      dated.add(Reports.read(order.get(i), LocalDate.of(2026, 10, 1).plusDays(i)));
    }
    return dated;
  }

  private static String decisions(Settled settled) {
    StringBuilder words = new StringBuilder();
    for (InForce inForce : settled.inForce()) {
      words.append(inForce.subject()).append(' ');
      inForce
          .analysis()
          .ifPresent(
              a ->
                  a.analysis()
                      .contents()
                      .forEach(
                          (c, v) ->
                              words
                                  .append(c)
                                  .append('=')
                                  .append(v.best())
                                  .append('±')
                                  .append(v.u())
                                  .append(' ')));
    }
    settled.questions().forEach(q -> words.append(q.kind()).append(' '));
    return words.toString();
  }

  @Test
  void everySubsetSettlesAlikeInEveryOrder() {
    Random random = new Random(SEED);
    List<Received> events = events();
    for (int mask = 1; mask < 1 << events.size(); mask++) {
      List<Received> chosen = new ArrayList<>();
      for (int i = 0; i < events.size(); i++) {
        if ((mask & (1 << i)) != 0) {
          chosen.add(events.get(i));
        }
      }
      String first = decisions(Reports.settle(arriving(chosen)));
      for (int shuffle = 0; shuffle < 6; shuffle++) {
        Collections.shuffle(chosen, random);
        assertEquals(
            first, decisions(Reports.settle(arriving(chosen))), "seed " + SEED + ", mask " + mask);
      }
    }
  }

  @Test
  void theOrderOfTheListChangesNothingAtAll() {
    Random random = new Random(SEED);
    List<Received> events = new ArrayList<>(events());
    Settled first = Reports.settle(events);
    for (int i = 0; i < 200; i++) {
      Collections.shuffle(events, random);
      assertEquals(first, Reports.settle(events), "seed " + SEED);
    }
  }

  @Test
  void noDecisionRestsOnAReplacedPreliminaryOrDisputedValue() {
    List<Received> events = events();
    for (int mask = 1; mask < 1 << events.size(); mask++) {
      List<Received> chosen = new ArrayList<>();
      for (int i = 0; i < events.size(); i++) {
        if ((mask & (1 << i)) != 0) {
          chosen.add(events.get(i));
        }
      }
      Settled settled = Reports.settle(chosen);
      for (InForce inForce : settled.inForce()) {
        for (SampleKey key : inForce.from()) {
          SettledSample sample = Reports.sample(settled, key.document());
          boolean counts =
              sample.standing() == Standing.IN_FORCE || sample.reasonCode().equals("combined");
          assertEquals(true, counts, "mask " + mask + " " + sample);
          assertEquals(false, key.document().startsWith("p"), "mask " + mask);
        }
      }
    }
  }

  @Test
  void everyDocumentHasExactlyOneOutcome() {
    List<Received> events = new ArrayList<>(events());
    events.addAll(events());

    assertEquals(8, Reports.settle(events).reports().size());
  }
}
