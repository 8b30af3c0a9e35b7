package rickyard.core.advice.coop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rickyard.core.remedy.share.Need;
import rickyard.core.remedy.share.Pile;
import rickyard.core.remedy.share.ShareProblem;
import rickyard.core.remedy.share.Sharer;
import rickyard.core.remedy.share.Sharing;

/** Shares a co-op's hay out over all horses until the horizon: a pure function of its context. */
public final class CoOp {
  private CoOp() {}

  /** Who is to have what, what is short, and which retest would free most. */
  public static CoOpAdvice advise(CoOpContext context) {
    if (!Store.isNeeded(context.larder().lots())) {
      return CoOpAdvice.none();
    }
    LotStandings standings = new LotStandings(context.limits(), context.verdicts());
    Eaters found = new Eaters(context, standings);
    List<Eater> eaters = found.eaters();
    Store store = new Store(context, eaters);
    List<Pile> piles = store.piles();
    List<Need> needs = eaters.stream().map(e -> e.need(context.horizonDays())).toList();
    Sharing sharing = Sharer.share(new ShareProblem(needs, piles));
    List<ShortageLine> shortages = new Shortages(context, eaters, sharing).lines();
    List<String> notes =
        new ArrayList<>(Stream.concat(found.notes().stream(), store.notes().stream()).toList());
    return new CoOpAdvice(
        context.horizonDays(),
        new ShareLines(context, standings, eaters, store, piles).of(sharing),
        shortages,
        new Retests(context, standings, eaters, piles).lines(),
        notes);
  }
}
