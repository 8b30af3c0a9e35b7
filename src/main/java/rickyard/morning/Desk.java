package rickyard.morning;

import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.HorseQuestion;
import rickyard.core.forage.Answer;
import rickyard.intake.InboxReader;
import rickyard.intake.ReadFile;
import rickyard.intake.arrive.Arrival;
import rickyard.intake.isolate.IsolatedIntake;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.Ledger;
import rickyard.ledger.MorningRow;
import rickyard.ledger.Mornings;

/**
 * An office laid open for one question, without a morning being run: what is in the inbox and what
 * the ledger remembers, settled and judged in memory. Nothing is written.
 */
final class Desk {
  private final Inputs inputs;
  private final Pipeline pipeline;
  private final SettledMorning morning;
  private final Judged judged;

  private Desk(Inputs inputs, Pipeline pipeline, FilesInHand files) {
    this.inputs = inputs;
    this.pipeline = pipeline;
    this.morning = pipeline.settle(files);
    this.judged = pipeline.judge(morning);
  }

  static Desk open(OfficeFolders folders, Options options, LocalDate asOf, Progress progress) {
    return open(folders, options, ledger -> asOf, asOf, progress);
  }

  /** The desk as the last finished morning left it; of {@code today} where there was none. */
  static Desk openLast(OfficeFolders folders, Options options, LocalDate today, Progress progress) {
    return open(
        folders,
        options,
        ledger -> ledger.mornings().lastFinished().map(MorningRow::asOf).orElse(today),
        today,
        progress);
  }

  private static Desk open(
      OfficeFolders folders,
      Options options,
      Function<Ledger, LocalDate> asOf,
      LocalDate otherwise,
      Progress progress) {
    folders.check();
    if (!remembers(folders)) {
      Inputs inputs = Inputs.load(folders, otherwise, Optional.empty());
      try (IsolatedIntake intake = inputs.readers().intake(1, Progress.silent())) {
        FilesInHand files = inHand(inputs, intake, new TreeMap<>(), new HashMap<>());
        return new Desk(inputs, new Pipeline(inputs, options, Memory.empty()), files);
      }
    }
    return new OfficeLedger(folders, progress)
        .with(() -> {}, ledger -> open(folders, options, asOf.apply(ledger), ledger));
  }

  private static boolean remembers(OfficeFolders folders) {
    return Stream.of("db", "journal", "originals")
        .anyMatch(part -> Files.exists(folders.ledger().resolve(part)));
  }

  private static Desk open(OfficeFolders folders, Options options, LocalDate asOf, Ledger ledger) {
    Inputs inputs = Inputs.load(folders, asOf, ledger.mornings().lastJournal());
    try (IsolatedIntake intake = inputs.readers().intake(1, Progress.silent())) {
      return open(inputs, options, ledger, intake);
    }
  }

  private static Desk open(Inputs inputs, Options options, Ledger ledger, InboxReader intake) {
    int next = ledger.mornings().lastFinished().map(m -> m.number() + 1).orElse(1);
    String reader = inputs.readers().digest();
    SortedMap<String, FilesInHand.FirstSeen> first = new TreeMap<>();
    Map<String, ReadFile> read = new HashMap<>();
    for (Mornings.Seen seen : ledger.mornings().seenBefore(next)) {
      first.putIfAbsent(seen.sha256(), new FilesInHand.FirstSeen(seen.path(), seen.on(), true));
      read.computeIfAbsent(
          seen.sha256(),
          hash ->
              ledger
                  .results()
                  .reading(hash, reader, ReadFile.class)
                  .orElseGet(() -> intake.read(ledger.originals().read(hash), seen.path())));
    }
    FilesInHand files = inHand(inputs, intake, first, read);
    Pipeline pipeline = new Pipeline(inputs, options, Memory.before(ledger, next));
    return new Desk(inputs, pipeline, files);
  }

  private static FilesInHand inHand(
      Inputs inputs,
      InboxReader intake,
      SortedMap<String, FilesInHand.FirstSeen> first,
      Map<String, ReadFile> read) {
    List<ArrivalRow> rows = new ArrayList<>();
    for (int i = 0; i < inputs.arrivals().size(); i++) {
      ArrivalRow row = inputs.arrivals().get(i);
      Arrival arrival = inputs.inventory().arrivals().get(i);
      rows.add(row.problemCode().isEmpty() ? take(inputs, arrival, row, intake, read) : row);
    }
    for (ArrivalRow row : rows) {
      if (row.problemCode().isEmpty()) {
        first.putIfAbsent(
            row.sha256(), new FilesInHand.FirstSeen(row.path(), inputs.asOf(), false));
      }
    }
    return new FilesInHand(rows, first, new TreeMap<>(read), inputs.asOf());
  }

  private static ArrivalRow take(
      Inputs inputs,
      Arrival arrival,
      ArrivalRow row,
      InboxReader intake,
      Map<String, ReadFile> read) {
    if (read.containsKey(row.sha256())) {
      return row;
    }
    return inputs
        .inventory()
        .read(
            arrival,
            bytes -> {
              read.put(row.sha256(), intake.read(bytes, row.path()));
              return row;
            },
            problem ->
                new ArrivalRow(
                    row.path(), row.sha256(), row.bytes(), problem.code(), problem.sentence()));
  }

  Inputs inputs() {
    return inputs;
  }

  SettledMorning morning() {
    return morning;
  }

  Judged judged() {
    return judged;
  }

  /** What the last finished morning asked about horses and nobody has answered since. */
  List<HorseQuestion> horseQuestions() {
    Set<String> answered =
        inputs.registers().office().answers().stream()
            .map(Answer::questionId)
            .collect(Collectors.toSet());
    List<String> horses = pipeline.horseIds();
    SortedMap<String, HorseQuestion> open = new TreeMap<>();
    asked(horses)
        .forEach(
            (horse, questions) ->
                questions.stream()
                    .filter(q -> horses.contains(horse) && !answered.contains(q.id()))
                    .forEach(q -> open.putIfAbsent(q.id(), q)));
    return List.copyOf(open.values());
  }

  private SortedMap<String, List<HorseQuestion>> asked(List<String> horses) {
    return pipeline
        .memory()
        .asked()
        .orElseGet(() -> Pipeline.asked(horses.stream().map(this::advise).toList()));
  }

  Pipeline pipeline() {
    return pipeline;
  }

  HorseAdvice advise(String horse) {
    return pipeline.advise(horse, morning, judged);
  }
}
