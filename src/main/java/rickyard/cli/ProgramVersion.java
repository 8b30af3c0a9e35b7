package rickyard.cli;

import picocli.CommandLine.IVersionProvider;
import rickyard.morning.Program;

/** What {@code --version} prints. */
final class ProgramVersion implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"rickyard " + Program.version()};
  }
}
