package rickyard.report.about;

import rickyard.core.advice.HorseAdvice;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.LotRow;

/** Makes the cards: each line what a caller asks for, in the words of the page. */
public final class AboutCards {
  private final AboutFacts facts;

  public AboutCards(AboutFacts facts) {
    this.facts = facts;
  }

  /** The card of a horse. */
  public AboutCard horse(HorseAdvice advice) {
    return new HorseCard(facts).of(advice);
  }

  /** The card of a client. */
  public AboutCard client(ClientFacts client) {
    return new ClientCard(facts).of(client);
  }

  /** The card of a lot. */
  public AboutCard lot(LotRow lot) {
    return new LotCard(facts).of(lot);
  }
}
