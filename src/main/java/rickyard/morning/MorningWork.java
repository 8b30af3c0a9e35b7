package rickyard.morning;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.coop.CoOpAdvice;
import rickyard.intake.InboxReader;
import rickyard.intake.ReadFile;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.JournalEntry;
import rickyard.ledger.Ledger;
import rickyard.ledger.Mornings;
import rickyard.ledger.Task;
import rickyard.registers.RegisterFile;
import rickyard.report.OutputFile;
import rickyard.report.Outputs;
import rickyard.report.view.MorningView;

/**
 * What each step of one morning does. Readings and advice are handed on through the ledger, so that
 * a restart finds them; settling and judging are cheap functions of the readings.
 */
final class MorningWork implements PartReading {
  private static final String ADVICE = "advice:";
  private static final String SHARE = "share";

  private final Ledger ledger;
  private final Inputs inputs;
  private final Options options;
  private final int number;
  private final MorningIdentity identity;
  private final Path out;
  private final Progress progress;
  private final InboxReader intake;
  private final Pipeline pipeline;
  private final String reader;
  private final Map<String, ReadFile> readNow = new ConcurrentHashMap<>();
  private final Map<String, HorseAdvice> advisedNow = new ConcurrentHashMap<>();
  private final AtomicInteger readSoFar = new AtomicInteger();
  private final AtomicInteger advisedSoFar = new AtomicInteger();
  private Optional<SettledMorning> settled = Optional.empty();
  private Optional<Judged> judged = Optional.empty();
  private List<String> endLines = List.of();
  private boolean published;
  private final long started = System.nanoTime();

  MorningWork(
      Ledger ledger,
      Inputs inputs,
      Options options,
      int number,
      MorningIdentity identity,
      Path out,
      InboxReader intake,
      Progress progress) {
    this.ledger = ledger;
    this.inputs = inputs;
    this.options = options;
    this.number = number;
    this.identity = identity;
    this.out = out;
    this.progress = progress;
    this.intake = intake;
    this.reader = inputs.readers().digest();
    this.pipeline = new Pipeline(inputs, options, Memory.before(ledger, number));
  }

  /** Keeps the bytes of everything that arrived; a file that changed meanwhile gets a problem. */
  void arrive() {
    List<ArrivalRow> rows =
        new Keeping(inputs, ledger.originals()).keep(ledger.mornings().arrivals(number));
    ledger.mornings().replaceArrivals(number, rows);
    progress.line("keep     " + Words.count(kept(rows), "original") + " in the ledger");
  }

  private static int kept(List<ArrivalRow> rows) {
    return (int) rows.stream().filter(r -> r.problemCode().isEmpty()).count();
  }

  /** Places in the inventory that one part reads; equal bytes fall into one part. */
  @Override
  public List<Integer> documentsOf(int part) {
    return MorningJob.documentsOf(ledger.mornings().arrivals(number), part);
  }

  /** Hashes of what this reader has not read yet, each once. */
  List<String> unread() {
    return ledger.mornings().arrivals(number).stream()
        .filter(row -> row.problemCode().isEmpty())
        .map(ArrivalRow::sha256)
        .distinct()
        .filter(sha256 -> !ledger.results().hasReading(sha256, reader))
        .toList();
  }

  /** What workers are asked to read. */
  Task task() {
    return inputs.readers().task(number, inputs.asOf());
  }

  Progress progress() {
    return progress;
  }

  @Override
  public ReadResult read(int seq) {
    ArrivalRow row = ledger.mornings().arrival(number, seq);
    boolean known = ledger.results().hasReading(row.sha256(), reader);
    Optional<ReadFile> file =
        known
            ? Optional.empty()
            : Optional.of(intake.read(ledger.originals().read(row.sha256()), row.path()));
    progress.step("read", readSoFar.incrementAndGet(), inputs.arrivals().size());
    return new ReadResult(seq, row.sha256(), file);
  }

  @Override
  public void keepReading(ReadResult result) {
    result
        .file()
        .ifPresent(
            file -> {
              ledger.results().keepReading(result.sha256(), reader, file);
              readNow.put(result.sha256(), file);
            });
  }

  /** Settles what belongs to what and what is in force, over all documents ever kept. */
  void settle() {
    settled();
    progress.line("settle   " + settled().words());
  }

  /** Judges every lot. */
  void judge() {
    judged();
    progress.line("judge    " + judged().words());
  }

  /** Ids of all horses, sorted: the items of the advice. */
  List<String> horses() {
    return pipeline.horseIds();
  }

  /** Advises several horses side by side, which is pure, and keeps what was found. */
  void advise(List<String> horseIds) {
    SettledMorning settled = settled();
    Judged judged = judged();
    int all = pipeline.horseIds().size();
    List<HorseAdvice> found =
        Hands.map(
            horseIds,
            horse -> {
              HorseAdvice advice = pipeline.advise(horse, settled, judged);
              progress.step("advise", advisedSoFar.incrementAndGet(), all);
              return advice;
            });
    keep(found);
  }

  private void keep(List<HorseAdvice> advice) {
    for (HorseAdvice a : advice) {
      ledger.results().keepStep(number, identity.identity(), ADVICE + a.horse(), a);
      advisedNow.put(a.horse(), a);
    }
  }

  /** Shares out what the co-op has; it waits for the advice on all horses. */
  void share() {
    CoOpAdvice shared = pipeline.share(settled(), judged(), advice());
    ledger.results().keepStep(number, identity.identity(), SHARE, shared);
    if (!shared.shares().isEmpty()) {
      progress.line("share    " + Words.count(shared.shares().size(), "row"));
    }
  }

  private List<HorseAdvice> advice() {
    return horses().stream()
        .map(h -> kept(h).orElseGet(() -> pipeline.advise(h, settled(), judged())))
        .toList();
  }

  private Optional<CoOpAdvice> keptShare() {
    return ledger.results().step(number, identity.identity(), SHARE, CoOpAdvice.class);
  }

  /** Whether every step before publishing has left its result. */
  boolean isComputed() {
    return keptShare().isPresent() && horses().stream().allMatch(h -> kept(h).isPresent());
  }

  /** What this run has worked out itself is at hand; the rest an earlier run has left. */
  private Optional<HorseAdvice> kept(String horse) {
    HorseAdvice now = advisedNow.get(horse);
    return now != null ? Optional.of(now) : keptEarlier(horse);
  }

  private Optional<HorseAdvice> keptEarlier(String horse) {
    return ledger.results().step(number, identity.identity(), ADVICE + horse, HorseAdvice.class);
  }

  /** Whether the outputs are there; what the job says of itself is not enough. */
  boolean isPublished() {
    return published;
  }

  /** Settling and judging are functions of the cached readings: a restart does them again. */
  private SettledMorning settled() {
    if (settled.isEmpty()) {
      settled = Optional.of(pipeline.settle(filesInHand()));
    }
    return settled.get();
  }

  private Judged judged() {
    if (judged.isEmpty()) {
      judged = Optional.of(pipeline.judge(settled()));
    }
    return judged.get();
  }

  /** This morning's files and every document of earlier mornings, with what they say. */
  private FilesInHand filesInHand() {
    List<ArrivalRow> rows = ledger.mornings().arrivals(number);
    SortedMap<String, FilesInHand.FirstSeen> first = new TreeMap<>();
    for (Mornings.Seen seen : ledger.mornings().seenBefore(number)) {
      first.putIfAbsent(seen.sha256(), new FilesInHand.FirstSeen(seen.path(), seen.on(), true));
    }
    for (ArrivalRow row : rows) {
      if (row.problemCode().isEmpty()) {
        first.putIfAbsent(
            row.sha256(), new FilesInHand.FirstSeen(row.path(), inputs.asOf(), false));
      }
    }
    return new FilesInHand(rows, first, read(List.copyOf(first.keySet())), inputs.asOf());
  }

  /** What documents say. A season has thousands: they are fetched and unpacked side by side. */
  private SortedMap<String, ReadFile> read(List<String> hashes) {
    List<Optional<ReadFile>> kept =
        Hands.map(
            hashes,
            hash ->
                Optional.ofNullable(readNow.remove(hash))
                    .or(() -> ledger.results().reading(hash, reader, ReadFile.class)));
    SortedMap<String, ReadFile> read = new TreeMap<>();
    for (int i = 0; i < hashes.size(); i++) {
      String hash = hashes.get(i);
      read.put(hash, kept.get(i).orElseGet(() -> readAgain(hash)));
    }
    return read;
  }

  /** A reader that is new to a document reads the kept original again. */
  private ReadFile readAgain(String sha256) {
    ReadFile file = intake.read(ledger.originals().read(sha256), sha256);
    ledger.results().keepReading(sha256, reader, file);
    return file;
  }

  /** Writes the journal, then the outputs, then marks the morning as finished. */
  void publish() {
    List<HorseAdvice> advice = advice();
    CoOpAdvice shared = keptShare().orElseGet(() -> pipeline.share(settled(), judged(), advice));
    MorningView view =
        Outputs.counted(
            new ViewMaker(
                    inputs,
                    options,
                    pipeline.memory(),
                    settled(),
                    judged(),
                    advice,
                    pipeline.use(settled()).eaten())
                .view(),
            options.outputs());
    // A broken template of the office stops here, before anything is kept or written.
    SortedMap<String, OutputFile> outputs =
        new TreeMap<>(
            Outputs.files(
                view, CoOpRows.of(shared), PaperDesk.facts(inputs, options), options.outputs()));
    // First the index, then the truth: where the journal has a morning, the index has it too.
    ledger.checkpoint();
    requireOriginals();
    if (!ledger.mornings().isFinished(number)) {
      ledger.journal().write(journal(advice));
    }
    if (options.outputs().contains(Outputs.DATA)) {
      new Drafts(settled(), inputs)
          .files(view.questions(), advice)
          .forEach((path, bytes) -> outputs.put(path, OutputFile.of(bytes)));
      byte[] answered = new Answered(settled(), inputs.registers().office()).bytes();
      outputs.put("answered.csv", OutputFile.of(answered));
    }
    new Publisher(out)
        .publish(outputs, manifest -> RunJson.bytes(inputs, identity, view, manifest, started));
    if (!ledger.mornings().isFinished(number)) {
      ledger.mornings().finish(number);
    }
    endLines = EndLines.of(view, out);
    published = true;
  }

  /** No report counts whose bytes are not kept, whatever the database says of earlier steps. */
  private void requireOriginals() {
    for (ArrivalRow row : ledger.mornings().arrivals(number)) {
      if (row.problemCode().isEmpty() && !ledger.originals().has(row.sha256(), row.bytes())) {
        ledger.originals().read(row.sha256());
      }
    }
  }

  private JournalEntry journal(List<HorseAdvice> advice) {
    SortedMap<String, String> registers = new TreeMap<>();
    for (RegisterFile file : inputs.registers().office().files()) {
      registers.put(file.name(), file.text());
    }
    return new JournalEntry(
        JournalEntry.FORMAT,
        number,
        inputs.asOf().toString(),
        identity.identity(),
        identity.content(),
        Program.version(),
        ledger.mornings().arrivals(number),
        registers,
        pipeline.remember(settled(), judged(), advice).toJson());
  }

  /** What to tell the person at the end. */
  List<String> endLines() {
    return endLines;
  }
}
