package rickyard.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The script by which bash and zsh complete commands and options. */
@Command(
    name = "completion",
    description = "Print the script by which bash or zsh completes commands and options.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  source <(rickyard completion)",
      "  rickyard completion > ~/.local/share/bash-completion/completions/rickyard",
      "",
      "In zsh, first: autoload -U +X compinit && compinit; autoload -U +X bashcompinit &&"
          + " bashcompinit"
    })
final class CompletionCommand implements Callable<Integer> {
  private static final String PROGRAM = "rickyard";

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  CompletionCommand() {}

  @Override
  public Integer call() {
    spec.commandLine().getOut().print(AutoComplete.bash(PROGRAM, spec.root().commandLine()));
    spec.commandLine().getOut().flush();
    return Rickyard.DONE;
  }
}
