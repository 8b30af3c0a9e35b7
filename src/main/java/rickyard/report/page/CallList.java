package rickyard.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.Priority;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;

/** The calls of the morning, a line each: who, the number, and the one thing to do. */
public final class CallList {
  /**
   * A horse to call about.
   *
   * @param action what to do, with amounts in both units; without any where a veterinarian decides
   */
  public record Line(
      String when,
      String anchor,
      String horse,
      String client,
      String phone,
      String dial,
      String action,
      String say,
      String why) {}

  private static final String VET = "The veterinarian decides what it is fed.";
  private static final String OPEN = "Not cleared: change nothing until what is missing is known.";
  private static final String NOTHING = "No change in reach is enough: talk it over.";

  private final MorningView view;
  private final Map<String, LotRow> lots;

  private CallList(MorningView view) {
    this.view = view;
    this.lots =
        view.lots().stream()
            .collect(Collectors.toMap(LotRow::lot, lot -> lot, (first, second) -> first));
  }

  /** The calls without places to jump to. */
  public static List<Line> of(MorningView view) {
    return of(view, new Anchors(view, List.of(), List.of()));
  }

  static List<Line> of(MorningView view, Anchors anchors) {
    CallList list = new CallList(view);
    List<Line> lines = new ArrayList<>();
    for (Priority priority : List.of(Priority.CALL_NOW, Priority.CALL_TODAY)) {
      for (Callers.Call call : Callers.of(view, anchors, priority)) {
        call.items().forEach(item -> lines.add(list.line(call, item)));
      }
    }
    return lines;
  }

  private Line line(Callers.Call call, Callers.Item item) {
    String action =
        view.horses().stream()
            .filter(horse -> Harmless.line(horse.horse()).equals(item.told().about()))
            .findFirst()
            .map(this::action)
            .orElse("");
    return new Line(
        item.when(),
        item.anchor(),
        item.horse(),
        call.client(),
        call.phone(),
        call.dial(),
        action,
        item.say(),
        item.why());
  }

  private String action(HorseAdvice horse) {
    if (horse.vetFirst()) {
      return VET;
    }
    if (isOpen(horse)) {
      return OPEN;
    }
    Optional<Proposal> best =
        horse.proposals().stream().filter(p -> p.enough() && p.diet() != null).findFirst();
    return best.map(proposal -> action(horse, proposal)).orElse(NOTHING);
  }

  private static boolean isOpen(HorseAdvice horse) {
    var diet = horse.after();
    @Nullable LimitLine worst = diet == null ? null : diet.worst();
    return diet == null || !horse.problems().isEmpty() || (worst != null && worst.pOver() == null);
  }

  private String action(HorseAdvice horse, Proposal proposal) {
    List<String> forage = new ArrayList<>();
    for (ProposalItem item : proposal.items()) {
      boolean isForage = lots.containsKey(item.item()) || item.role().endsWith("forage");
      if (item.thenKg() > 0 && (isForage || item.thenKg() != item.nowKg())) {
        forage.add(ProposalPages.name(item) + " " + amount(item) + source(horse, item));
      }
    }
    boolean isHold = proposal.kind().equals("hold");
    return (isHold ? "Leave the new hay shut; go on with " : "A day: ")
        + String.join(" + ", forage)
        + (proposal.kind().equals("blend") ? ", mixed at every feeding" : "")
        + dropped(proposal)
        + (isHold ? "." : days(horse, proposal));
  }

  private static String amount(ProposalItem item) {
    return Mass.KG.words(item.thenKg()) + " (" + Mass.LB.words(item.thenKg()) + ")";
  }

  /** Hay that is new to the horse has to be fetched from whoever holds it. */
  private String source(HorseAdvice horse, ProposalItem item) {
    LotRow lot = lots.get(item.item());
    boolean isNew = item.nowKg() <= 0;
    return lot == null || !isNew || lot.holder().isBlank() || lot.holder().equals(horse.client())
        ? ""
        : " from " + Names.client(view, lot.holder());
  }

  private static String dropped(Proposal proposal) {
    String dropped =
        proposal.items().stream()
            .filter(item -> item.thenKg() <= 0 && item.nowKg() > 0)
            .map(ProposalPages::name)
            .collect(Collectors.joining(", "));
    return dropped.isEmpty() ? "" : "; no more " + dropped;
  }

  private static String days(HorseAdvice horse, Proposal proposal) {
    int last =
        horse.changeovers().stream()
            .filter(line -> line.rank() == proposal.rank())
            .mapToInt(line -> line.day())
            .max()
            .orElse(0);
    if (proposal.kind().equals("bucket")) {
      return ".";
    }
    return (last > 1 ? "; in steps until day " + last : "; at once")
        + ", the vet asked before it starts.";
  }
}
