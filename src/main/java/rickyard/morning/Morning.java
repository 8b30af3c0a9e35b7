package rickyard.morning;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rickyard.intake.isolate.IsolatedIntake;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.Ledger;
import rickyard.ledger.LedgerException;
import rickyard.ledger.MorningRow;
import rickyard.ledger.OfficeLock;

/** One run of an office: takes it, finds out which morning this is, and brings it to its end. */
public final class Morning {
  private final OfficeFolders folders;
  private final Options options;
  private final int workers;
  private final Progress progress;
  private final Consumer<Path> openLog;

  /**
   * Prepares a run.
   *
   * @param folders where the office keeps its things; checked already
   * @param options choices that change an output
   * @param workers documents read at a time, from 1
   * @param progress told how far the run is
   * @param openLog called with the ledger folder once the office is held
   */
  public Morning(
      OfficeFolders folders,
      Options options,
      int workers,
      Progress progress,
      Consumer<Path> openLog) {
    this.folders = folders;
    this.options = options;
    this.workers = workers;
    this.progress = progress;
    this.openLog = openLog;
  }

  /**
   * Runs the morning, resumes it, or finds that nothing is new.
   *
   * @param chosen the date if one was given
   * @param today the date if none was given and no morning is unfinished
   * @throws OfficeHeldException if another run holds the office
   * @throws UsageException if the date lies before the last finished morning
   */
  public MorningEnd run(Optional<LocalDate> chosen, LocalDate today) {
    makeLedgerFolder();
    try (OfficeLock lock =
        OfficeLock.take(folders.ledger())
            .orElseThrow(
                () ->
                    new OfficeHeldException(
                        "Another run holds this office; wait until it has ended."))) {
      openLog.accept(folders.ledger());
      try (Ledger ledger = Ledger.open(folders.ledger())) {
        return run(ledger, chosen, today);
      }
    }
  }

  private void makeLedgerFolder() {
    try {
      DurableFiles.privateFolder(folders.ledger());
    } catch (IOException e) {
      throw new LedgerException("The ledger folder cannot be made: " + e.getMessage(), e);
    }
  }

  private MorningEnd run(Ledger ledger, Optional<LocalDate> chosen, LocalDate today) {
    Optional<MorningRow> last = ledger.lastFinished();
    Optional<MorningRow> unfinished = ledger.unfinished();
    LocalDate asOf = date(chosen, today, last, unfinished);
    Inputs inputs = Inputs.load(folders, asOf, ledger.lastJournal());
    progress.line(
        "arrive   "
            + Words.count(inputs.arrivals().size(), "file")
            + " in the inbox, morning of "
            + asOf);
    MorningIdentity identity =
        MorningIdentity.of(
            inputs.arrivals(),
            inputs.digests(),
            asOf,
            options,
            last.map(MorningRow::identity).orElse(""));
    Path out = folders.outFor(asOf);
    if (last.isPresent() && last.get().content().equals(identity.content())) {
      return again(ledger, inputs, last.get(), out);
    }
    int number = last.map(m -> m.number() + 1).orElse(1);
    boolean resumed = unfinished.filter(m -> m.identity().equals(identity.identity())).isPresent();
    if (resumed) {
      progress.line("resume   the morning of " + asOf + " was interrupted; going on with it");
    } else {
      unfinished.ifPresent(m -> ledger.forget(m.number()));
      ledger.begin(
          new MorningRow(number, asOf, identity.identity(), identity.content(), false),
          inputs.arrivals());
    }
    try (IsolatedIntake intake = inputs.intake(workers, progress)) {
      if (inputs.hasUnread(ledger)) {
        intake.warm();
      }
      MorningWork work =
          new MorningWork(ledger, inputs, options, number, identity, out, intake, progress);
      new MorningJob(ledger).run(identity.identity(), resumed, work, workers);
      return new MorningEnd(inputs.asOf(), out, false, work.endLines());
    }
  }

  private LocalDate date(
      Optional<LocalDate> chosen,
      LocalDate today,
      Optional<MorningRow> last,
      Optional<MorningRow> unfinished) {
    LocalDate asOf = chosen.or(() -> unfinished.map(MorningRow::asOf)).orElse(today);
    if (last.isPresent() && asOf.isBefore(last.get().asOf())) {
      throw new UsageException(
          "--as-of "
              + asOf
              + " lies before the last finished morning, "
              + last.get().asOf()
              + "; a ledger only goes forward.");
    }
    return asOf;
  }

  /** Nothing is new: what is missing from the outputs is published again, nothing else happens. */
  private MorningEnd again(Ledger ledger, Inputs inputs, MorningRow last, Path out) {
    if (Manifest.read(out).filter(m -> m.isWhole(out)).isPresent()) {
      return new MorningEnd(
          last.asOf(),
          out,
          true,
          List.of("Nothing is new since the last morning; outputs: " + out));
    }
    progress.line("publish  outputs are missing or were changed; publishing them again");
    MorningIdentity same = new MorningIdentity(last.content(), last.identity());
    try (IsolatedIntake intake = inputs.intake(workers, progress)) {
      MorningWork work =
          new MorningWork(ledger, inputs, options, last.number(), same, out, intake, progress);
      if (work.isComputed()) {
        work.publish();
      } else {
        List<ArrivalRow> arrivals = ledger.arrivals(last.number());
        ledger.begin(last, arrivals);
        new MorningJob(ledger).run(last.identity(), false, work, workers);
      }
      return new MorningEnd(last.asOf(), out, true, work.endLines());
    }
  }
}
