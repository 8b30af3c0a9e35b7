package rickyard.soak;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeSet;
import rickyard.morning.Morning;
import rickyard.morning.MorningEnd;
import rickyard.morning.OfficeFolders;
import rickyard.morning.Options;
import rickyard.morning.Progress;
import rickyard.report.Outputs;

/** The morning command without {@code --as-of}, on a day that is given instead of the clock's. */
final class OtherDay {
  private OtherDay() {}

  /** Runs a morning. Arguments: the office folder and the day that the clock shows. */
  public static void main(String[] arguments) {
    Options options = new Options("kg", new TreeSet<>(Outputs.ALL));
    OfficeFolders folders = OfficeFolders.of(Path.of(arguments[0]));
    MorningEnd end =
        new Morning(folders, options, 1, new Printed(), ledger -> {})
            .run(Optional.empty(), LocalDate.parse(arguments[1]));
    end.lines().forEach(System.out::println);
    System.exit(0);
  }

  private static final class Printed implements Progress {
    @Override
    public void line(String text) {
      System.out.println(text);
    }

    @Override
    public void step(String stage, int done, int total) {}
  }
}
