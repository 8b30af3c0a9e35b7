package rickyard.ledger;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** A small ledger with two finished mornings and one under way, and what it must still say. */
final class KeptLedger {
  static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  static final String READER = "reader-1";

  private KeptLedger() {}

  static byte[] document(int n) {
    return ("Lot,LOT-" + n + "\nWSC,%," + n + ".5\n").repeat(20).getBytes(StandardCharsets.UTF_8);
  }

  static ArrivalRow arrival(int n) {
    byte[] bytes = document(n);
    return new ArrivalRow("report-" + n + ".csv", Originals.sha256(bytes), bytes.length, "", "");
  }

  static MorningRow morning(int number, boolean finished) {
    return new MorningRow(
        number, DAY.plusDays(number), "identity-" + number, "content-" + number, finished);
  }

  static JournalEntry entry(int number) {
    MorningRow morning = morning(number, true);
    return new JournalEntry(
        JournalEntry.FORMAT,
        number,
        morning.asOf().toString(),
        morning.identity(),
        morning.content(),
        "test",
        arrivals(number),
        new TreeMap<>(),
        "{}");
  }

  static List<ArrivalRow> arrivals(int number) {
    List<ArrivalRow> arrivals = new ArrayList<>();
    for (int n = 1; n <= 2 * number; n++) {
      arrivals.add(arrival(n));
    }
    return arrivals;
  }

  /** Makes it; closed in the end. */
  static void make(Path folder) {
    make(LedgerPlace.of(folder));
  }

  /** The same wherever its database is. */
  static void make(LedgerPlace place) {
    try (Ledger ledger = Ledger.open(place, Rescue.none())) {
      finish(ledger, 1);
      finish(ledger, 2);
      begin(ledger, 3);
    }
  }

  static void finish(Ledger ledger, int number) {
    begin(ledger, number);
    ledger.journal().write(entry(number));
    ledger.mornings().finish(number);
  }

  static void begin(Ledger ledger, int number) {
    ledger.mornings().begin(morning(number, false), arrivals(number), "out");
    for (ArrivalRow arrival : arrivals(number)) {
      int n = Integer.parseInt(arrival.path().replaceAll("\\D", ""));
      ledger.originals().keep(arrival.sha256(), document(n));
      ledger.results().keepReading(arrival.sha256(), READER, "reads " + n);
    }
    ledger.results().keepStep(number, "identity-" + number, "advice", "step " + number);
  }

  /** Everything that a morning asks of it, as text; what may be made again counts when wrong. */
  static List<String> says(Ledger ledger) {
    List<String> says = new ArrayList<>();
    says.add(String.valueOf(ledger.mornings().lastFinished()));
    says.add(String.valueOf(ledger.mornings().unfinished()));
    says.add(String.valueOf(ledger.mornings().seenBefore(3)));
    for (int n = 1; n <= 2; n++) {
      says.add(String.valueOf(ledger.mornings().arrivals(n)));
      says.add(ledger.journal().find(n).map(JournalEntry::identity).orElse("none"));
    }
    return says;
  }

  /** Results that are neither right nor absent. */
  static List<String> wrongResults(Ledger ledger) {
    List<String> wrong = new ArrayList<>();
    for (int n = 1; n <= 6; n++) {
      Optional<String> reading =
          ledger.results().reading(arrival(n).sha256(), READER, String.class);
      if (reading.isPresent() && !reading.get().equals("reads " + n)) {
        wrong.add(reading.get());
      }
    }
    for (int n = 1; n <= 3; n++) {
      Optional<String> step = ledger.results().step(n, "identity-" + n, "advice", String.class);
      if (step.isPresent() && !step.get().equals("step " + n)) {
        wrong.add(step.get());
      }
    }
    return wrong;
  }

  static Path database(Path folder) {
    return folder.resolve("db").resolve("rickyard.mv.db");
  }

  /** Has some documents in an inbox and hears what is said. */
  static final class Inbox implements Rescue {
    private final List<byte[]> documents = new ArrayList<>();
    private final List<String> said = new ArrayList<>();

    Inbox with(byte[] document) {
      documents.add(document);
      return this;
    }

    List<String> said() {
      return said;
    }

    @Override
    public Optional<byte[]> find(String sha256) {
      return documents.stream().filter(d -> Originals.sha256(d).equals(sha256)).findFirst();
    }

    @Override
    public void say(String line) {
      said.add(line);
    }
  }
}
