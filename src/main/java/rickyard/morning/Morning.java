package rickyard.morning;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import rickyard.intake.isolate.IsolatedIntake;
import rickyard.intake.isolate.ReaderUnavailableException;
import rickyard.ledger.Exhausted;
import rickyard.ledger.Ledger;
import rickyard.ledger.LedgerException;
import rickyard.ledger.MorningRow;
import rickyard.ledger.Mornings;
import rickyard.post.MailSettings;
import rickyard.report.text.BrokenTemplateException;

/** One run of an office: takes it, finds out which morning this is, and brings it to its end. */
public final class Morning {
  private final OfficeFolders folders;
  private final Options options;
  private final Workers workers;
  private final Progress progress;
  private final Consumer<Path> openLog;
  private final Optional<MailSettings> mail;

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
    this(folders, options, Workers.of(workers), progress, openLog, Optional.empty());
  }

  /**
   * The same, and what may be sent is sent.
   *
   * @param workers who reads the documents
   * @param mail through which server; empty to send nothing
   */
  public Morning(
      OfficeFolders folders,
      Options options,
      Workers workers,
      Progress progress,
      Consumer<Path> openLog,
      Optional<MailSettings> mail) {
    this.folders = folders;
    this.options = options;
    this.workers = workers;
    this.progress = progress;
    this.openLog = openLog;
    this.mail = mail;
  }

  /**
   * Runs the morning, resumes it, or finds that nothing is new.
   *
   * @param chosen the date if one was given
   * @param today the date if none was given and no morning is unfinished
   * @throws OfficeHeldException if another run holds the office
   * @throws UsageException if the date lies before the last finished morning, or workers elsewhere
   *     are asked for and cannot reach the ledger
   */
  public MorningEnd run(Optional<LocalDate> chosen, LocalDate today) {
    if (workers.elsewhere() && folders.database().isEmpty()) {
      throw new UsageException(
          "--workers remote needs a ledger that workers on other machines can reach: give --ledger"
              + " jdbc:postgresql://HOST/DATABASE, and start rickyard worker with the same.");
    }
    // The tables are read while the ledger opens; what is wrong with them is told where they are
    // needed.
    FutureTask<Tables> tables = new FutureTask<>(() -> Tables.load(folders.officeConfig()));
    Thread beside = new Thread(tables, "tables");
    beside.setDaemon(true);
    beside.start();
    return new OfficeLedger(folders, progress)
        .with(
            () -> openLog.accept(folders.ledger()),
            ledger -> run(ledger, chosen, today, Hands.of(tables)));
  }

  private MorningEnd run(
      Ledger ledger, Optional<LocalDate> chosen, LocalDate today, Tables tables) {
    finishPublished(ledger.mornings());
    Mornings mornings = ledger.mornings();
    Optional<MorningRow> last = mornings.lastFinished();
    Optional<MorningRow> unfinished = mornings.unfinished().map(Mornings.Unfinished::morning);
    LocalDate asOf = date(chosen, today, last, unfinished);
    Inputs inputs = Inputs.load(folders, asOf, mornings.lastJournal(), tables);
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
      return sent(ledger, inputs, again(ledger, inputs, last.get(), out));
    }
    int number = last.map(m -> m.number() + 1).orElse(1);
    boolean resumed = unfinished.filter(m -> m.identity().equals(identity.identity())).isPresent();
    if (resumed) {
      progress.line("resume   the morning of " + asOf + " was interrupted; going on with it");
    }
    MorningRow morning =
        new MorningRow(number, asOf, identity.identity(), identity.content(), false);
    boolean goesOn = resumed && mornings.isIndexed(morning);
    if (!goesOn) {
      mornings.begin(morning, inputs.arrivals(), out.toAbsolutePath().toString());
    }
    try (IsolatedIntake intake = inputs.readers().intake(workers.here(), progress)) {
      if (!workers.elsewhere() && inputs.hasUnread(ledger)) {
        intake.warm();
      }
      MorningWork work =
          new MorningWork(ledger, inputs, options, number, identity, out, intake, progress);
      run(ledger, identity.identity(), goesOn, work);
      return sent(ledger, inputs, new MorningEnd(inputs.asOf(), out, false, work.endLines()));
    }
  }

  private MorningEnd sent(Ledger ledger, Inputs inputs, MorningEnd end) {
    return mail.map(
            settings ->
                end.with(
                    new SendDesk(settings, inputs.registers().office(), end.asOf(), progress)
                        .send(ledger, end.out())))
        .orElse(end);
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

  /**
   * Runs the job. What an interrupted run left of it lies in the database alone: where going on
   * with it fails, or ends without outputs, that may be to blame.
   */
  private void run(Ledger ledger, String identity, boolean resumed, MorningWork work) {
    try {
      new MorningJob(ledger).run(identity, resumed, work, workers);
    } catch (RuntimeException failure) {
      if (resumed && !progress.isStopping() && !isOwn(failure)) {
        throw new IndexFaultException("an interrupted job cannot be gone on with", failure);
      }
      throw failure;
    }
    if (!work.isPublished()) {
      throw new IndexFaultException("the job ended without outputs");
    }
  }

  private static boolean isOwn(RuntimeException failure) {
    Throwable cause = failure instanceof MorningFailedException ? failure.getCause() : failure;
    return Exhausted.sentence(failure).isPresent()
        || cause instanceof BrokenTemplateException
        || cause instanceof LedgerException
        || cause instanceof UsageException
        || cause instanceof ReaderUnavailableException;
  }

  /**
   * A run can be killed after its last output and before the ledger knows: then people may have
   * acted on it and emptied the inbox, and it counts as finished.
   */
  private void finishPublished(Mornings mornings) {
    mornings
        .unfinished()
        .filter(u -> !u.out().isEmpty() && Manifest.isWholeOf(Path.of(u.out()), u.morning()))
        .filter(u -> mornings.isJournaled(u.morning()))
        .ifPresent(
            u -> {
              mornings.finish(u.morning().number());
              progress.line(
                  "resume   the morning of "
                      + u.morning().asOf()
                      + " was interrupted after its last output; it counts as finished");
            });
  }

  /** Nothing is new: what is missing from the outputs is published again, nothing else happens. */
  private MorningEnd again(Ledger ledger, Inputs inputs, MorningRow last, Path out) {
    if (Manifest.isWholeOf(out, last)) {
      return new MorningEnd(
          last.asOf(),
          out,
          true,
          List.of("Nothing is new since the last morning; outputs: " + out));
    }
    progress.line("publish  outputs are missing or were changed; publishing them again");
    MorningIdentity same = new MorningIdentity(last.content(), last.identity());
    try (IsolatedIntake intake = inputs.readers().intake(workers.here(), progress)) {
      MorningWork work =
          new MorningWork(ledger, inputs, options, last.number(), same, out, intake, progress);
      if (work.isComputed()) {
        work.publish();
      } else {
        run(ledger, last.identity(), false, work);
      }
      return new MorningEnd(last.asOf(), out, true, work.endLines());
    }
  }
}
