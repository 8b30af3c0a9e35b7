package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;

/**
 * What stocks and labels say against a changed ration. Whatever is raised must last for the horizon
 * and keep inside its label; where the forage changes, every lot in it must last, the present one
 * too.
 */
final class Supplies {
  private static final double NOTHING_KG = 1e-6;

  private final RemedyRequest request;

  Supplies(RemedyRequest request) {
    this.request = request;
  }

  /** Each thing that stands against it, in plain words. */
  List<String> against(List<Serving> fed) {
    boolean changesForage = changesForage(fed);
    List<String> words = new ArrayList<>();
    for (Serving a : fed) {
      boolean isRaised = a.kg() > request.todayKg(a.item()) + NOTHING_KG;
      if (isRaised || (changesForage && a.fedAsForage())) {
        addStock(a, words);
      }
      if (isRaised) {
        addLabel(a, words);
      }
    }
    return words;
  }

  private boolean changesForage(List<Serving> fed) {
    return request.ration().stream()
            .filter(Serving::fedAsForage)
            .anyMatch(a -> Math.abs(kgOf(fed, a.item()) - request.todayKg(a.item())) > NOTHING_KG)
        || fed.stream().anyMatch(a -> a.fedAsForage() && request.todayKg(a.item()) <= 0);
  }

  private static double kgOf(List<Serving> fed, Candidate item) {
    return fed.stream().filter(a -> a.item().isSameAs(item)).mapToDouble(Serving::kg).sum();
  }

  private void addStock(Serving a, List<String> words) {
    double horizon = request.settings().stockHorizonDays();
    if (a.kg() > a.item().stock().mostKgPerDay(horizon) + NOTHING_KG) {
      double days = a.item().stock().daysAt(a.kg()).orElse(0);
      words.add(
          "the stock of "
              + a.item().name()
              + " lasts "
              + (long) Math.floor(days)
              + " days, not "
              + Figures.number(horizon));
    }
  }

  private void addLabel(Serving a, List<String> words) {
    double most = a.item().label().mostAsWholeRationKg(request.horse().bodyWeightKg());
    if (a.kg() > most + request.steps().stepKg(a.kg())) {
      words.add("more " + a.item().name() + " than its label's full rate");
    }
  }
}
