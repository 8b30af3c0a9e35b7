package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.advice.DeliveredHay;
import rickyard.core.advice.HayEaten;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.due.HayStore;
import rickyard.core.nutrition.Horse;
import rickyard.registers.Office;
import rickyard.report.about.AboutCard;
import rickyard.report.about.AboutCards;
import rickyard.report.about.AboutFacts;
import rickyard.report.about.Hay;
import rickyard.report.text.Mass;
import rickyard.report.view.LotRow;

/** What an office has to say about one horse, client or lot; reads the office, writes nothing. */
public final class OfficeAbout {
  private final Desk desk;
  private final Office office;
  private final List<LotRow> lots;
  private final String units;

  private OfficeAbout(Desk desk, String units) {
    this.desk = desk;
    this.office = desk.inputs().registers().office();
    this.units = units;
    Places places = new Places(desk.morning().files());
    this.lots = new LotRows(desk.inputs(), desk.morning(), desk.judged(), places).rows();
  }

  /**
   * Lays the office open.
   *
   * @param units kg or lb
   * @param progress told what had to be mended in the ledger
   */
  public static OfficeAbout open(
      OfficeFolders folders, LocalDate asOf, String units, Progress progress) {
    return new OfficeAbout(
        Desk.open(folders, new Options(units, new TreeSet<>()), asOf, progress), units);
  }

  /**
   * The card of what a name means; where it means several, each of them without lines.
   *
   * @throws UsageException if it means nothing
   */
  public List<AboutCard> of(String name) {
    List<AboutMatch> found = find(name);
    if (found.isEmpty()) {
      throw new UsageException(
          "No horse, client or lot is called \""
              + name
              + "\", and no key or name has it as a part.");
    }
    return found.size() == 1
        ? List.of(card(found.get(0)))
        : found.stream().map(this::listed).toList();
  }

  private List<AboutMatch> find(String name) {
    return AboutMatch.of(
        name, AboutMatch.all(office, lots.stream().map(LotRow::lot).sorted().toList()));
  }

  private AboutCard listed(AboutMatch match) {
    String phone = office.findClient(match.client()).map(c -> c.phone()).orElse("");
    return AboutCard.listed(match.kind(), match.id(), match.name(), match.client(), phone);
  }

  private AboutCard card(AboutMatch match) {
    List<HorseAdvice> advice =
        desk.pipeline().horseIds().stream()
            .filter(id -> isNeeded(match, id))
            .map(desk::advise)
            .toList();
    AboutFacts facts = facts(advice);
    AboutCards cards = new AboutCards(facts);
    return switch (match.kind()) {
      case AboutMatch.HORSE ->
          cards.horse(
              advice.stream().filter(a -> a.horse().equals(match.id())).findFirst().orElseThrow());
      case AboutMatch.CLIENT -> cards.client(facts.client(match.id()));
      default ->
          cards.lot(
              lots.stream().filter(l -> l.lot().equals(match.id())).findFirst().orElseThrow());
    };
  }

  /** What a client has left hangs on all of its horses; who eats a lot, on all horses. */
  private boolean isNeeded(AboutMatch match, String horse) {
    return match.kind().equals(AboutMatch.LOT)
        || office.findHorse(horse).map(Horse::clientId).filter(match.client()::equals).isPresent();
  }

  private AboutFacts facts(List<HorseAdvice> advice) {
    LocalDate asOf = desk.inputs().asOf();
    RegisterFacts registers = new RegisterFacts(desk.inputs());
    return new AboutFacts(
        registers.horses(),
        registers.clients(),
        advice,
        lots,
        office.decisions().stream().filter(d -> !d.date().isAfter(asOf)).toList(),
        FollowUpDesk.rows(
            desk.inputs(), eaten(), desk.judged(), advice, lots, List.of(), List.of()),
        hay(advice, asOf),
        Mass.named(units));
  }

  private SortedMap<String, List<Hay>> hay(List<HorseAdvice> advice, LocalDate asOf) {
    SortedMap<String, List<Hay>> hay = new TreeMap<>();
    for (HayStore store :
        HayStore.of(
            advice, office.lots(), new DeliveredHay(office.deliveries(), eaten(), asOf), asOf)) {
      hay.computeIfAbsent(store.client(), c -> new ArrayList<>())
          .add(
              new Hay(
                  store.lot(),
                  store.left().daysFrom(asOf),
                  store.left().lastDay().toString(),
                  String.join(", ", store.horses())));
    }
    return hay;
  }

  private HayEaten eaten() {
    return desk.pipeline().use(desk.morning()).eaten();
  }
}
