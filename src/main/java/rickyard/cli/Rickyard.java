package rickyard.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rickyard.intake.isolate.ReaderUnavailableException;
import rickyard.ledger.LedgerException;
import rickyard.morning.MorningFailedException;
import rickyard.morning.OfficeHeldException;
import rickyard.morning.UsageException;
import rickyard.tables.UnusableTablesException;

/** The command line of Rickyard; exit status 0 done, 1 failed, 2 wrong usage, 3 office held. */
@Command(
    name = "rickyard",
    description = "From a morning's forage analyses to horses fed correctly: one batch.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    footer = {
      "",
      "Examples:",
      "  java -jar rickyard.jar demo",
      "  java -jar rickyard.jar check my-office",
      "  java -jar rickyard.jar morning my-office --as-of 2026-03-16 --units lb",
      "",
      "Feeding advice, not a diagnosis. Signs of laminitis or colic: call the veterinarian first.",
      "",
      "Exit status: 0 done; 1 failed, nothing half-written; 2 wrong usage, unusable registers or",
      "config; 3 another run holds the office."
    })
public final class Rickyard implements Runnable {

  private static final String COMPLETION = "completion";

  static final int DONE = 0;
  static final int FAILED = 1;
  static final int USAGE = 2;
  static final int HELD = 3;

  /** In the order of the help. */
  private static final Map<String, Supplier<Object>> COMMANDS = commands();

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before run
  private Rickyard() {}

  public static void main(String[] args) {
    System.exit(run(List.of(args)));
  }

  /** Runs one command and gives its exit status. */
  public static int run(List<String> args) {
    CommandLine line = line(args);
    line.setExecutionExceptionHandler((e, command, parsed) -> explain(command.getErr(), e));
    line.setParameterExceptionHandler(Rickyard::wrongUsage);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    return line.execute(args.toArray(new String[0]));
  }

  private static Map<String, Supplier<Object>> commands() {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("morning", MorningCommand::new);
    commands.put("demo", DemoCommand::new);
    commands.put("check", CheckCommand::new);
    commands.put("sort", SortCommand::new);
    commands.put("share", ShareCommand::new);
    commands.put("trace", TraceCommand::new);
    commands.put("about", AboutCommand::new);
    commands.put("settle", SettleCommand::new);
    commands.put("rebuild", RebuildCommand::new);
    commands.put("worker", WorkerCommand::new);
    commands.put(COMPLETION, CompletionCommand::new);
    return commands;
  }

  /** With the command that is named, or with all: to learn what each can do takes a while. */
  private static CommandLine line(List<String> args) {
    CommandLine line = new CommandLine(new Rickyard());
    String named = args.isEmpty() ? "" : args.get(0);
    boolean isOne = COMMANDS.containsKey(named) && !named.equals(COMPLETION);
    COMMANDS.forEach(
        (name, command) -> {
          if (!isOne || name.equals(named)) {
            line.addSubcommand(name, command.get());
          }
        });
    return line;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Which command? See the list below, or rickyard COMMAND --help.");
  }

  private static int wrongUsage(ParameterException e, String[] args) {
    PrintWriter err = e.getCommandLine().getErr();
    err.println("rickyard: " + e.getMessage());
    e.getCommandLine().usage(err);
    return USAGE;
  }

  private static int explain(PrintWriter err, Exception e) {
    if (e instanceof UsageException || e instanceof UnusableTablesException) {
      err.println("rickyard: " + e.getMessage());
      return USAGE;
    }
    if (e instanceof OfficeHeldException) {
      err.println("rickyard: " + e.getMessage());
      return HELD;
    }
    RunLog.failure(e);
    if (Ending.isAsked()) {
      return FAILED;
    }
    if (e instanceof LedgerException
        || e instanceof MorningFailedException
        || e instanceof ReaderUnavailableException) {
      err.println("rickyard: " + sentence(String.valueOf(e.getMessage())) + RunLog.where());
    } else {
      err.println(
          "rickyard: stopped by a fault of the program ("
              + e.getClass().getSimpleName()
              + "); nothing is half-written, the same command can be run again."
              + RunLog.where());
    }
    return FAILED;
  }

  private static String sentence(String text) {
    return text.endsWith(".") ? text : text + ".";
  }
}
