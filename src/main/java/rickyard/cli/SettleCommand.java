package rickyard.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rickyard.core.forage.Answer;
import rickyard.morning.OfficeSettle;

/** Answers open questions. */
@Command(
    name = "settle",
    description = "Answer the open questions; the next morning uses and records the answers.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  rickyard settle my-office",
      "  rickyard settle my-office --list",
      "  rickyard settle my-office --list --csv",
      "  rickyard settle my-office \"q-1f2e3d4c5b6a=dry matter\" --by \"R. Tarn\"",
      "",
      "Without answers and without --list it asks one question after the other; each",
      "answer is kept in registers/answers.csv at once."
    })
final class SettleCommand implements Callable<Integer> {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Parameters(
      index = "1..*",
      paramLabel = "QUESTION_ID=ANSWER",
      description = "Answers to keep without asking.")
  private List<String> answers = new ArrayList<>();

  @Option(names = "--list", description = "List the open questions and ask nothing.")
  private boolean list;

  @Option(names = "--csv", description = "The list as CSV, with the choices.")
  private boolean csv;

  @Option(names = "--json", description = "The list as JSON, with choices and cells seen.")
  private boolean json;

  @Option(names = "--by", paramLabel = "NAME", description = "Who answers.")
  private String by = "";

  @Option(
      names = "--on",
      paramLabel = "YYYY-MM-DD",
      description = "The day of the answer (default today).")
  private @Nullable LocalDate on;

  @Option(names = "--note", paramLabel = "TEXT", description = "Kept beside the answers.")
  private String note = "";

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  SettleCommand() {}

  @Override
  public Integer call() {
    boolean isList = list || csv || json;
    if ((isList && !answers.isEmpty()) || (csv && json)) {
      throw wrong("Either --list, with --csv or --json, or answers.");
    }
    if (!answers.isEmpty() && by.isBlank()) {
      throw wrong("Who answers? Add --by NAME.");
    }
    if ((by + note).chars().anyMatch(Character::isISOControl)) {
      throw wrong("A name and a note stand on one line.");
    }
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    LocalDate day = on == null ? today : on;
    List<Answer> parsed = parsed(day);
    OfficeSettle office =
        OfficeSettle.open(
            folders.folders(null), today, ConsoleProgress.aside(spec.commandLine().getErr()));
    PrintWriter out = spec.commandLine().getOut();
    if (isList) {
      out.print(
          json
              ? QuestionList.json(office.questions())
              : csv ? QuestionList.csv(office.questions()) : QuestionList.of(office.questions()));
    } else {
      int kept = answers.isEmpty() ? talk(office, out, day) : keep(office, parsed);
      out.println(end(office, kept));
    }
    out.flush();
    return Rickyard.DONE;
  }

  private ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  private List<Answer> parsed(LocalDate day) {
    List<Answer> parsed = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (String given : answers) {
      int equals = given.indexOf('=');
      if (equals < 1 || given.substring(equals + 1).isBlank()) {
        throw wrong("An answer is QUESTION_ID=ANSWER, not \"" + given + "\".");
      }
      String id = given.substring(0, equals).strip();
      if (!ids.add(id)) {
        throw wrong(id + " is answered twice.");
      }
      parsed.add(new Answer(id, given.substring(equals + 1).strip(), by.strip(), day, note));
    }
    return parsed;
  }

  /** All of them or none: one that is refused keeps the others out too. */
  private static int keep(OfficeSettle office, List<Answer> parsed) {
    List<Answer> accepted = parsed.stream().map(office::accept).toList();
    office.keep(accepted);
    return accepted.size();
  }

  private int talk(OfficeSettle office, PrintWriter out, LocalDate day) {
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
    try {
      return new SettleTalk(office, in, out, day).talk(by);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String end(OfficeSettle office, int kept) {
    int open = office.questions().size();
    String still = open == 1 ? "1 question is still open." : open + " questions are still open.";
    return kept == 0
        ? "Nothing kept; " + still
        : (kept == 1 ? "1 answer" : kept + " answers")
            + " kept in registers/answers.csv; "
            + still
            + " Run morning again: it uses them.";
  }
}
