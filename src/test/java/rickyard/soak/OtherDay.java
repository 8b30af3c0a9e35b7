package rickyard.soak;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.TreeSet;
import rickyard.morning.Morning;
import rickyard.morning.MorningEnd;
import rickyard.morning.OfficeFolders;
import rickyard.morning.Options;
import rickyard.morning.Progress;

/** The morning command without {@code --as-of}, on a day that is given instead of the clock's. */
final class OtherDay {
  private OtherDay() {}

  /** Runs a morning. Arguments: the office folder, the day that the clock shows, the outputs. */
  public static void main(String[] arguments) {
    Options options = new Options("kg", new TreeSet<>(Arrays.asList(arguments[2].split(",", -1))));
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
