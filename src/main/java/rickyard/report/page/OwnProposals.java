package rickyard.report.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;
import rickyard.report.text.Harmless;
import rickyard.report.text.Words;
import rickyard.report.view.CoOpView;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.ShareRow;

/** Where the plan for all horses gives one of them other hay than its own first proposal. */
final class OwnProposals {
  private final Map<String, Set<String>> planned = new LinkedHashMap<>();
  private final Map<String, Set<String>> now = new LinkedHashMap<>();
  private final Map<String, HorseAdvice> horses = new LinkedHashMap<>();
  private final Set<String> lots;

  OwnProposals(MorningView view, CoOpView coOp) {
    this.lots = view.lots().stream().map(LotRow::lot).collect(Collectors.toSet());
    view.horses().forEach(horse -> horses.putIfAbsent(horse.horse(), horse));
    for (ShareRow row : coOp.shares()) {
      Set<String> of = planned.computeIfAbsent(row.horse(), h -> new TreeSet<>());
      if (!row.lot().isEmpty()) {
        of.add(row.lot());
      }
      now.computeIfAbsent(row.horse(), h -> new TreeSet<>()).addAll(row.now());
    }
  }

  /** What differs, in words; empty where nothing does or a veterinarian decides. */
  String of(String id) {
    HorseAdvice horse = horses.get(id);
    if (horse == null || horse.vetFirst() || horse.proposals().isEmpty()) {
      return "";
    }
    Proposal first = horse.proposals().get(0);
    Set<String> own = first.diet() == null ? now.getOrDefault(id, Set.of()) : lotsOf(first);
    if (own.equals(planned.getOrDefault(id, Set.of()))) {
      return "";
    }
    return "Its own first proposal is "
        + words(first)
        + "; the plan spreads the co-op's stock over all horses; the adviser decides.";
  }

  private Set<String> lotsOf(Proposal proposal) {
    return proposal.items().stream()
        .filter(item -> item.thenKg() > 0 && lots.contains(item.item()))
        .map(ProposalItem::item)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String words(Proposal proposal) {
    List<String> changed =
        proposal.items().stream()
            .filter(item -> item.thenKg() > 0 && item.thenKg() != item.nowKg())
            .map(ProposalPages::name)
            .toList();
    String kind = "'" + Harmless.line(Words.of("kind", proposal.kind())) + "'";
    return changed.isEmpty() ? kind : kind + " with " + String.join(" and ", changed);
  }
}
