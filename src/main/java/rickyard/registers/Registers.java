package rickyard.registers;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import rickyard.core.forage.Answer;
import rickyard.core.forage.Decision;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Feed;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.WeighedMeasure;
import rickyard.tables.TableProblem;

/**
 * Loads the registers of an office: UTF-8 CSV with a header, cells parted by comma, semicolon or
 * tab, the unit of a weight being its column's suffix ({@code _kg} or {@code _lb}).
 *
 * <p>Nothing is thrown for what stands in a file. What makes a register unusable, what makes one
 * row unusable and what is only odd are collected apart, all of it; see {@link Loaded}.
 */
public final class Registers {
  private static final Map<Register, List<String>> UNIQUE =
      Map.of(
          Register.CLIENTS, List.of("client_id"),
          Register.ADVISERS, List.of("adviser"),
          Register.HORSES, List.of("horse_id"),
          Register.LOTS, List.of("lot_id"),
          Register.FEEDS, List.of("feed_id", "batch"),
          Register.ANSWERS, List.of("question_id"));

  private final LoadContext context;
  private final Findings findings = new Findings();
  private final FeedAnalytes analytes;
  private final FeedColumns feedColumns;
  private final Map<Register, List<RegisterRow>> rows = new TreeMap<>();
  private final Map<Register, RegisterTable> tables = new TreeMap<>();
  private final List<RegisterFile> files = new ArrayList<>();

  private Registers(LoadContext context) {
    this.context = context;
    this.analytes = FeedAnalytes.load(context.officeConfig(), findings);
    this.feedColumns = new FeedColumns(analytes);
  }

  /**
   * Loads all registers of a folder. A folder that is not there is an office without registers.
   *
   * @param registersFolder the folder with clients.csv, horses.csv …
   */
  public static Loaded load(Path registersFolder, LoadContext context) {
    return new Registers(context).load(registersFolder);
  }

  private Loaded load(Path registersFolder) {
    RegisterFolder folder = new RegisterFolder(registersFolder, findings);
    folder.read(context.presentBefore()).forEach(this::split);
    tables.forEach((register, table) -> rows.put(register, table.read()));
    checkUniqueness();
    Keys keys = keys(folder.there());
    for (String id : keys.lotsThatAreFeeds()) {
      findings.fatal(
          new TableProblem(
              Register.FEEDS.fileName(), 0, "feed_id", "lot-and-feed", "no lot's id", id));
    }
    Office office = office(keys);
    Consequences consequences = new Consequences(keys, rows(Register.RATIONS), findings);
    rows.forEach((register, list) -> list.forEach(row -> consequences.of(register, row)));
    return new Loaded(office, findings.warnings(), findings.badRows(), findings.fatal());
  }

  private void split(Register register, byte[] bytes) {
    Optional<String> text = RegisterText.decode(register.fileName(), bytes, findings);
    files.add(RegisterFile.of(register.fileName(), bytes, text.orElse("")));
    Predicate<String> own = register == Register.FEEDS ? feedColumns::isOwn : name -> false;
    text.flatMap(t -> new RegisterReader(register, own, findings).read(t))
        .ifPresent(table -> tables.put(register, table));
  }

  private List<RegisterRow> rows(Register register) {
    return rows.getOrDefault(register, List.of());
  }

  /** An office without clients.csv keeps none: its horses' client ids are taken as they are. */
  private Keys keys(Set<Register> there) {
    Set<Register> unchecked = new TreeSet<>(there);
    unchecked.removeAll(tables.keySet());
    if (!there.contains(Register.CLIENTS)) {
      unchecked.add(Register.CLIENTS);
    }
    return new Keys(rows, unchecked);
  }

  private void checkUniqueness() {
    UNIQUE.forEach(
        (register, columns) -> {
          Map<List<String>, Integer> first = new HashMap<>();
          for (RegisterRow row : rows(register)) {
            List<String> key = columns.stream().map(row::text).toList();
            Integer earlier = first.putIfAbsent(key, row.number());
            if (earlier != null && !key.get(0).isEmpty()) {
              findings.fatal(
                  row.problem(
                      columns.get(0),
                      "duplicate-key",
                      "each "
                          + String.join(" and ", columns)
                          + " once (also in row "
                          + earlier
                          + ")",
                      String.join(" ", key).strip()));
            }
          }
        });
  }

  private Office office(Keys keys) {
    RowParsers parsers = new RowParsers(context, findings, keys);
    HorseRows horseRows = new HorseRows(context, findings);
    List<Horse> horses = all(Register.HORSES, row -> horseRows.read(row, keys));
    RationRows rations = new RationRows(keys);
    rows(Register.RATIONS).forEach(rations::add);
    return new Office(
        byId(all(Register.CLIENTS, parsers::client), Client::id),
        byId(horses, Horse::id),
        byId(all(Register.LOTS, parsers::lot), Lot::id),
        deliveries(parsers),
        feeds(),
        rations.rations(),
        measures(parsers),
        sorted(all(Register.ANSWERS, parsers::answer), Comparator.comparing(Answer::questionId)),
        sorted(all(Register.DECISIONS, parsers::decision), Comparator.comparing(Decision::row)),
        sorted(files, Comparator.comparing(RegisterFile::name)),
        byId(all(Register.ADVISERS, parsers::adviser), Adviser::id));
  }

  private <T> List<T> all(Register register, Function<RegisterRow, Optional<T>> parser) {
    return rows(register).stream().map(parser).flatMap(Optional::stream).toList();
  }

  private static <T> SortedMap<String, T> byId(List<T> all, Function<T, String> id) {
    SortedMap<String, T> map = new TreeMap<>();
    all.forEach(one -> map.putIfAbsent(id.apply(one), one));
    return map;
  }

  private static <T> List<T> sorted(List<T> all, Comparator<T> order) {
    return all.stream().sorted(order).toList();
  }

  private List<Feed> feeds() {
    RegisterTable table = tables.get(Register.FEEDS);
    if (table == null) {
      return List.of();
    }
    FeedRows reader = new FeedRows(table, feedColumns.read(table, findings), analytes, context);
    return sorted(
        all(Register.FEEDS, reader::read),
        Comparator.comparing(Feed::id).thenComparing(Feed::batch));
  }

  private List<Delivery> deliveries(RowParsers parsers) {
    return sorted(
        all(Register.DELIVERIES, parsers::delivery),
        Comparator.comparing(Delivery::clientId)
            .thenComparing(Delivery::deliveredOn)
            .thenComparing(Delivery::lotId)
            .thenComparing(Delivery::toString));
  }

  /** A bad row hides every weighing of its item: an older weight must not stand in unseen. */
  private List<WeighedMeasure> measures(RowParsers parsers) {
    List<WeighedMeasure> good = all(Register.MEASURES, parsers::measure);
    Set<String> seen = new TreeSet<>();
    Set<String> spoilt = new TreeSet<>();
    for (RegisterRow row : rows(Register.MEASURES)) {
      String of = row.text("client_id") + "\n" + row.text("item");
      String exact = of + "\n" + row.text("measure") + "\n" + row.text("weighed_on");
      if (!row.isBad() && !seen.add(exact)) {
        row.wrong("weighed_on", "given-twice", "one weight of a measure a day");
      }
      if (row.isBad()) {
        spoilt.add(of);
      }
    }
    return good.stream()
        .filter(m -> !spoilt.contains(m.clientId() + "\n" + m.item()))
        .sorted(
            Comparator.comparing(WeighedMeasure::clientId)
                .thenComparing(WeighedMeasure::item)
                .thenComparing(WeighedMeasure::measure)
                .thenComparing(m -> m.weighedOn().map(Object::toString).orElse("")))
        .toList();
  }
}
