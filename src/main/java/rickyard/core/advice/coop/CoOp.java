package rickyard.core.advice.coop;

/** Shares a co-op's hay out over all horses until the horizon: a pure function of its context. */
public final class CoOp {
  private CoOp() {}

  /** Who is to have what, what is short, and which retest would free most. */
  public static CoOpAdvice advise(CoOpContext context) {
    if (!Store.isNeeded(context.larder().lots())) {
      return CoOpAdvice.none();
    }
    LotStandings standings = new LotStandings(context.limits(), context.verdicts());
    Deal deal = new Deals(context, standings).best();
    return new CoOpAdvice(
        context.horizonDays(),
        new ShareLines(context, standings, deal).lines(),
        new Shortages(context, deal.eaters(), deal.sharing()).lines(),
        new Retests(context, standings, deal.eaters(), deal.piles()).lines(),
        deal.notes());
  }
}
