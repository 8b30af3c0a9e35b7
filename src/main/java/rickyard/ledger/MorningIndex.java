package rickyard.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/** The mornings and their inventories in the database, each under a seal. */
final class MorningIndex {
  private static final String FINISHED = "finished";

  /**
   * A morning's row.
   *
   * @param morning what it says
   * @param journal SHA-256 of its journal file; empty before there is one
   * @param arrivals seal of its inventory
   */
  record Row(MorningRow morning, String journal, String arrivals) {
    String seal() {
      return Seal.of(
          String.valueOf(morning.number()),
          morning.asOf().toString(),
          morning.identity(),
          morning.content(),
          state(morning),
          journal,
          arrivals);
    }
  }

  private final Database database;
  private final JdbcTemplate jdbc;

  MorningIndex(Database database) {
    this.database = database;
    this.jdbc = database.jdbc();
  }

  private static String state(MorningRow morning) {
    return morning.finished() ? FINISHED : "running";
  }

  /** Notes a morning with its inventory in the place of what was known of it. */
  void put(MorningRow morning, String journal, List<ArrivalRow> arrivals) {
    new TransactionTemplate(database.transactions())
        .executeWithoutResult(
            t -> {
              remove(morning.number());
              insert(new Row(morning, journal, insertArrivals(morning.number(), arrivals)));
            });
  }

  private void insert(Row row) {
    MorningRow morning = row.morning();
    jdbc.update(
        "INSERT INTO morning (number, as_of, identity, content, state, journal, arrivals, seal)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        morning.number(),
        morning.asOf(),
        morning.identity(),
        morning.content(),
        state(morning),
        row.journal(),
        row.arrivals(),
        row.seal());
  }

  private String insertArrivals(int morning, List<ArrivalRow> arrivals) {
    for (int i = 0; i < arrivals.size(); i++) {
      ArrivalRow arrival = arrivals.get(i);
      jdbc.update(
          "INSERT INTO arrival (morning, seq, path, sha256, bytes, problem_code, problem)"
              + " VALUES (?, ?, ?, ?, ?, ?, ?)",
          morning,
          i,
          arrival.path(),
          arrival.sha256(),
          arrival.bytes(),
          arrival.problemCode(),
          arrival.problem());
    }
    return seal(arrivals);
  }

  private static String seal(List<ArrivalRow> arrivals) {
    Seal seal = new Seal();
    for (ArrivalRow a : arrivals) {
      seal.add(a.path()).add(a.sha256()).add(String.valueOf(a.bytes()));
      seal.add(a.problemCode()).add(a.problem());
    }
    return seal.hex();
  }

  /**
   * Takes over what the journal has and this lacks, and drops what it should not have.
   *
   * @return how many mornings were put in
   */
  int follow(Journal journal, Head head, Survey survey) {
    SortedMap<Integer, Row> rows = rows();
    rows.values().stream()
        .map(Row::morning)
        .filter(m -> m.number() > head.finished() && !head.isBegun(m.number(), m.identity()))
        .forEach(m -> remove(m.number()));
    int put = 0;
    for (int n = 1; n <= head.finished(); n++) {
      String digest = survey.digests().get(n);
      Row row = rows.get(n);
      if (row == null || !row.morning().finished() || !row.journal().equals(digest)) {
        JournalEntry entry = journal.find(n).orElseThrow();
        put(entry.row(true), journal.digest(n), entry.arrivals());
        put++;
      }
    }
    return put;
  }

  void remove(int number) {
    jdbc.update("DELETE FROM arrival WHERE morning = ?", number);
    jdbc.update("DELETE FROM morning WHERE number = ?", number);
  }

  /** All mornings by number, seals unchecked. */
  SortedMap<Integer, Row> rows() {
    SortedMap<Integer, Row> rows = new TreeMap<>();
    jdbc.query(
        "SELECT * FROM morning ORDER BY number",
        row -> {
          rows.put(row.getInt("number"), row(row));
        });
    return rows;
  }

  private static Row row(ResultSet row) throws SQLException {
    return new Row(
        new MorningRow(
            row.getInt("number"),
            row.getObject("as_of", LocalDate.class),
            row.getString("identity"),
            row.getString("content"),
            FINISHED.equals(row.getString("state"))),
        row.getString("journal"),
        row.getString("arrivals"));
  }

  Optional<Row> find(int number) {
    return jdbc
        .query("SELECT * FROM morning WHERE number = ?", (row, n) -> row(row), number)
        .stream()
        .findFirst();
  }

  /**
   * Whether every row is what was written; reads them in the order in which they are used.
   *
   * @return the first thing that is not, in words for the log
   */
  Optional<String> unsound() {
    List<String> seals =
        jdbc.queryForList("SELECT seal FROM morning ORDER BY number", String.class);
    List<Row> rows = new ArrayList<>(rows().values());
    if (seals.size() != rows.size()) {
      return Optional.of("morning-count");
    }
    for (int i = 0; i < rows.size(); i++) {
      if (!rows.get(i).seal().equals(seals.get(i))) {
        return Optional.of("morning-seal");
      }
    }
    SortedMap<Integer, List<ArrivalRow>> arrivals = allArrivals();
    for (Row row : rows) {
      if (!seal(arrivals.getOrDefault(row.morning().number(), List.of())).equals(row.arrivals())) {
        return Optional.of("arrival-seal");
      }
    }
    return Optional.empty();
  }

  SortedMap<Integer, List<ArrivalRow>> allArrivals() {
    SortedMap<Integer, List<ArrivalRow>> all = new TreeMap<>();
    jdbc.query(
        "SELECT * FROM arrival ORDER BY morning, seq",
        row -> {
          List<ArrivalRow> of = all.computeIfAbsent(row.getInt("morning"), n -> new ArrayList<>());
          if (row.getInt("seq") != of.size()) {
            throw new IllegalStateException("a gap in an inventory");
          }
          of.add(arrival(row));
        });
    return all;
  }

  /** The frozen inventory of a morning, in its order. */
  List<ArrivalRow> arrivals(int morning) {
    return arrivals(jdbc, morning);
  }

  static List<ArrivalRow> arrivals(JdbcTemplate jdbc, int morning) {
    return jdbc.query(
        "SELECT * FROM arrival WHERE morning = ? ORDER BY seq", (row, n) -> arrival(row), morning);
  }

  ArrivalRow arrival(int morning, int seq) {
    return jdbc.query(
            "SELECT * FROM arrival WHERE morning = ? AND seq = ?",
            (row, n) -> arrival(row),
            morning,
            seq)
        .get(0);
  }

  private static ArrivalRow arrival(ResultSet row) throws SQLException {
    return new ArrivalRow(
        row.getString("path"),
        row.getString("sha256"),
        row.getLong("bytes"),
        row.getString("problem_code"),
        row.getString("problem"));
  }
}
