package rickyard.intake.arrive;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.Sha256;

/**
 * All that lay in the inbox at one moment, in the order of the paths' code points.
 *
 * <p>Links are not followed; pipes, devices and sockets are not opened; everything found has
 * exactly one entry.
 */
public final class Inventory {
  private static final Comparator<Arrival> BY_PATH =
      Comparator.comparing(
          arrival -> arrival.relativePath().getBytes(StandardCharsets.UTF_8),
          Arrays::compareUnsigned);

  /** A folder called so was meant to be a file. */
  private static final Pattern LIKE_A_REPORT =
      Pattern.compile("(?i).*\\.(pdf|csv|txt|xlsx?|ods|eml|zip|html?)");

  private final Path inbox;
  private final ReadLimits limits;
  private final List<Arrival> arrivals;

  private Inventory(Path inbox, ReadLimits limits, List<Arrival> arrivals) {
    this.inbox = inbox;
    this.limits = limits;
    this.arrivals = List.copyOf(arrivals);
  }

  /**
   * Lists and hashes the inbox.
   *
   * @param inbox a folder
   * @param limits what is larger than {@link ReadLimits#bytes()} is listed but not hashed
   * @throws IOException where the inbox itself cannot be listed
   */
  public static Inventory freeze(Path inbox, ReadLimits limits) throws IOException {
    requireNonNull(limits, "limits");
    Path root = inbox.toRealPath();
    List<Arrival> arrivals = new ArrayList<>();
    Files.walkFileTree(root, new Lister(root, limits, arrivals));
    arrivals.sort(BY_PATH);
    return new Inventory(root, limits, arrivals);
  }

  /** Every entry once, in stable order. */
  public List<Arrival> arrivals() {
    return arrivals;
  }

  /** SHA-256 over all entries: the same inbox gives the same digest. */
  public String digest() {
    StringBuilder all = new StringBuilder();
    for (Arrival each : arrivals) {
      all.append(each.relativePath()).append('\0').append(each.bytesSize()).append('\0');
      all.append(each.sha256()).append('\0');
      all.append(each.problem().map(Arrival.Problem::code).orElse("")).append('\n');
    }
    return Sha256.of(all.toString().getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Reads an entry's bytes again and checks that they are still those of the inventory.
   *
   * @param onBytes takes the bytes
   * @param onProblem takes the entry's problem, or {@code changed-while-read} where the file is not
   *     what it was
   */
  public <T> T read(
      Arrival arrival, Function<byte[], T> onBytes, Function<Arrival.Problem, T> onProblem) {
    if (arrival.problem().isPresent()) {
      return onProblem.apply(arrival.problem().get());
    }
    Snapshot now = Snapshot.of(inbox.resolve(arrival.relativePath()), limits);
    if (now.problem().isPresent()) {
      return onProblem.apply(now.problem().get());
    }
    return now.sha256().equals(arrival.sha256())
        ? onBytes.apply(now.bytes())
        : onProblem.apply(Snapshot.CHANGED);
  }

  /** Writes one entry for everything the walk meets. */
  private static final class Lister extends SimpleFileVisitor<Path> {
    private final Path root;
    private final ReadLimits limits;
    private final List<Arrival> arrivals;

    private Lister(Path root, ReadLimits limits, List<Arrival> arrivals) {
      this.root = root;
      this.limits = limits;
      this.arrivals = arrivals;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes seen) {
      String path = relative(file);
      if (isByTheWay(path)) {
        long size = seen.isRegularFile() ? seen.size() : 0;
        add(path, size, "not-a-report", "A file that programs leave behind, not a report.");
      } else if (path.indexOf('\uFFFD') >= 0) {
        add(path, 0, "bad-name", "The file's name cannot be read; give it another one.");
      } else {
        Snapshot snapshot = Snapshot.of(file, limits);
        arrivals.add(new Arrival(path, snapshot.size(), snapshot.sha256(), snapshot.problem()));
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failure) throws IOException {
      if (file.equals(root)) {
        throw failure;
      }
      add(relative(file), 0, "unreadable", "It cannot be read; check who may read it.");
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(
        Path folder, @org.jspecify.annotations.Nullable IOException failure) {
      if (failure != null) {
        add(relative(folder), 0, "unreadable", "The folder could not be listed to its end.");
      } else if (LIKE_A_REPORT.matcher(relative(folder)).matches() && isUnlisted(folder)) {
        add(relative(folder), 0, "not-a-file", "It is an empty folder with the name of a file.");
      }
      return FileVisitResult.CONTINUE;
    }

    private boolean isUnlisted(Path folder) {
      String within = relative(folder) + "/";
      return arrivals.stream().noneMatch(a -> a.relativePath().startsWith(within));
    }

    private void add(String path, long size, String code, String sentence) {
      arrivals.add(new Arrival(path, size, "", Optional.of(new Arrival.Problem(code, sentence))));
    }

    private String relative(Path file) {
      StringBuilder path = new StringBuilder();
      for (Path step : root.relativize(file)) {
        path.append(path.isEmpty() ? "" : "/").append(step);
      }
      return path.toString();
    }
  }

  /** Hidden files and what office programs, systems and downloads leave lying about. */
  private static boolean isByTheWay(String path) {
    for (String step : path.split("/", -1)) {
      String name = step.toLowerCase(Locale.ROOT);
      if (name.startsWith(".")
          || name.startsWith("~$")
          || name.equals("thumbs.db")
          || name.equals("desktop.ini")
          || name.equals("__macosx")
          || name.endsWith(".tmp")
          || name.endsWith(".part")
          || name.endsWith(".crdownload")
          || name.endsWith("~")) {
        return true;
      }
    }
    return false;
  }
}
