package rickyard.morning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rickyard.core.advice.HorseQuestion;
import rickyard.core.forage.Answer;
import rickyard.core.forage.AnswerUse;
import rickyard.core.forage.Choices;
import rickyard.core.forage.Question;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Settled;
import rickyard.core.forage.SettledSample;
import rickyard.core.quantity.Place;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.LedgerException;
import rickyard.ledger.OfficeLock;
import rickyard.registers.AnswerSheet;

/**
 * The open questions of an office and the way of an answer into {@code registers/answers.csv}. Each
 * answer is tried on the morning's reports before it is kept: one that settles nothing is refused.
 */
public final class OfficeSettle {
  private static final int MOST_CELLS = 6;

  private final OfficeFolders folders;
  private final Desk desk;
  private final List<Answer> given = new ArrayList<>();
  private Settled settled;

  private OfficeSettle(OfficeFolders folders, Desk desk) {
    this.folders = folders;
    this.desk = desk;
    this.settled = desk.morning().settled();
  }

  /**
   * Lays the office open as the last finished morning left it, with what has come since.
   *
   * @param today the day where no morning was finished yet
   * @param progress told what had to be mended in the ledger
   * @throws OfficeHeldException if a run holds the office
   * @throws rickyard.tables.UnusableTablesException if a register cannot be used
   */
  public static OfficeSettle open(OfficeFolders folders, LocalDate today, Progress progress) {
    Options options = new Options("kg", new TreeSet<>());
    return new OfficeSettle(folders, Desk.openLast(folders, options, today, progress));
  }

  /** The questions that are open now: those about reports in the order of the page, then horses. */
  public List<OpenQuestion> questions() {
    List<OpenQuestion> open = new ArrayList<>();
    Places places = new Places(desk.morning().files());
    settled.questions().stream()
        .sorted(
            Comparator.<Question, String>comparing(q -> places.file(q.document()))
                .thenComparing(q -> places.part(q.document()))
                .thenComparing(q -> q.place().map(Place::page).orElse(0))
                .thenComparing(q -> q.place().map(Place::row).orElse(0))
                .thenComparing(Question::id))
        .map(q -> of(q, places))
        .forEach(open::add);
    Set<String> done = given.stream().map(Answer::questionId).collect(Collectors.toSet());
    desk.horseQuestions().stream()
        .filter(q -> !done.contains(q.id()))
        .map(OfficeSettle::of)
        .forEach(open::add);
    return open;
  }

  private OpenQuestion of(Question q, Places places) {
    return new OpenQuestion(
        q.id(),
        q.kind(),
        places.file(q.document()),
        places.part(q.document()),
        q.about(),
        q.question(),
        q.choices(),
        q.proposed(),
        q.why(),
        seen(q, places));
  }

  private List<String> seen(Question q, Places places) {
    List<String> cells = new ArrayList<>();
    for (SettledSample sample : settled.samples()) {
      if (sample.key().document().equals(q.document())) {
        sample.sample().readings().stream()
            .filter(r -> r.doubt().equals(q.kind()))
            .map(r -> cell(r, places))
            .forEach(cells::add);
      }
    }
    int more = cells.size() - MOST_CELLS;
    List<String> shown = new ArrayList<>(cells.subList(0, Math.min(MOST_CELLS, cells.size())));
    if (more > 0) {
      shown.add("and " + more + " more");
    }
    if (shown.isEmpty()) {
      q.place().ifPresent(p -> shown.add(places.words(p) + ", " + p.words()));
    }
    return shown;
  }

  private static String cell(Reading reading, Places places) {
    return reading.analyte()
        + " \""
        + printed(reading)
        + "\" in "
        + places.words(reading.place())
        + ", "
        + reading.place().words();
  }

  private static String printed(Reading reading) {
    return reading.raw().contains(reading.rawUnit())
        ? reading.raw()
        : reading.raw() + " " + reading.rawUnit();
  }

  private static OpenQuestion of(HorseQuestion q) {
    return new OpenQuestion(
        q.id(), q.kind(), "", "", q.about(), q.question(), q.choices(), "", q.why(), List.of());
  }

  /** What would follow from each choice that stands in the question itself. */
  public Map<String, String> consequences(OpenQuestion question) {
    Map<String, String> words = new LinkedHashMap<>();
    if (desk.horseQuestions().stream().anyMatch(q -> q.id().equals(question.id()))) {
      return words;
    }
    Consequence consequence = new Consequence(desk.inputs().tables().judgement().lotRules());
    for (String choice : question.choices()) {
      if (!Choices.isOwn(choice)) {
        Settled then = tried(new Answer(question.id(), choice, "?", desk.inputs().asOf(), ""));
        words.put(choice, consequence.words(settled, then));
      }
    }
    return words;
  }

  private Settled tried(Answer answer) {
    List<Answer> all = new ArrayList<>(desk.inputs().registers().office().answers());
    all.addAll(given);
    all.removeIf(a -> a.questionId().equals(answer.questionId()));
    all.add(answer);
    return desk.pipeline().settle(desk.morning().files(), all).settled();
  }

  /**
   * An answer that its question takes, with the words of the choice.
   *
   * @throws UsageException if there is no such open question, or the answer does not settle it
   */
  public Answer accept(Answer answer) {
    Optional<OpenQuestion> found =
        questions().stream().filter(q -> q.id().equals(answer.questionId())).findFirst();
    OpenQuestion question = found.orElseThrow(() -> new UsageException(notOpen(answer)));
    String said =
        Choices.find(question.choices(), question.proposed(), answer.answer())
            .orElseThrow(() -> new UsageException(refused(question, answer.answer())));
    if (said.chars().anyMatch(Character::isISOControl)) {
      throw new UsageException("An answer stands on one line.");
    }
    Answer taken = new Answer(answer.questionId(), said, answer.by(), answer.on(), answer.note());
    boolean settles =
        settled.questions().stream().noneMatch(q -> q.id().equals(question.id()))
            || tried(taken).answers().stream()
                .anyMatch(u -> u.answer().equals(taken) && u.effect().equals(AnswerUse.SETTLED));
    if (!settles) {
      throw new UsageException(refused(question, answer.answer()));
    }
    return taken;
  }

  private String notOpen(Answer answer) {
    return desk.inputs().registers().office().answers().stream()
        .filter(a -> a.questionId().equals(answer.questionId()))
        .findFirst()
        .map(
            a ->
                a.questionId()
                    + " was answered by "
                    + a.by()
                    + " on "
                    + a.on()
                    + ": \""
                    + a.answer()
                    + "\"; to change it, change its row in answers.csv.")
        .orElse(
            "There is no open question "
                + answer.questionId()
                + "; settle OFFICE --list shows those that are.");
  }

  private static String refused(OpenQuestion question, String said) {
    return "\""
        + said
        + "\" does not settle "
        + question.id()
        + "; it takes: "
        + String.join(", ", question.choices())
        + ".";
  }

  /**
   * Keeps accepted answers: the register appears whole, with all of them, or stays as it was.
   *
   * @throws OfficeHeldException if a run holds the office by now
   */
  public void keep(List<Answer> answers) {
    try (OfficeLock lock = lock()) {
      Path file = register();
      AnswerSheet sheet = AnswerSheet.read(file);
      if (!sheet.hasNotes() && answers.stream().anyMatch(a -> !a.note().isEmpty())) {
        throw new UsageException("answers.csv has no column \"note\"; add one, or give no note.");
      }
      DurableFiles.write(file, sheet.with(answers));
    } catch (IOException e) {
      throw new LedgerException("answers.csv cannot be written: " + e.getMessage(), e);
    }
    for (Answer answer : answers) {
      settled = tried(answer);
      given.add(answer);
    }
  }

  private OfficeLock lock() throws IOException {
    DurableFiles.privateFolder(folders.ledger());
    return OfficeLock.take(folders.ledger())
        .orElseThrow(() -> new OfficeHeldException("A run holds this office; wait for its end."));
  }

  /** The register itself, behind a link if it is one. */
  private Path register() throws IOException {
    Path file = folders.registers().resolve("answers.csv");
    return Files.exists(file) ? file.toRealPath() : file;
  }
}
