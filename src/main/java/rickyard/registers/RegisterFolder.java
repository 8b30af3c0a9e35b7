package rickyard.registers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import rickyard.tables.TableProblem;

/** The folder of the registers: which files are there, which should be, and their bytes. */
final class RegisterFolder {
  private static final long LARGEST = 64L * 1024 * 1024;

  /** What a killed {@code settle} may leave: a register that was never put in place. */
  private static final String HALF_WRITTEN = ".rickyard-tmp";

  private static final Set<String> LEFT_BY_SYSTEMS = Set.of("Thumbs.db", "desktop.ini");

  private final Path folder;
  private final Findings findings;

  RegisterFolder(Path folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  /** The bytes of each register that is there and can be read. */
  Map<Register, byte[]> read(Set<String> presentBefore) {
    SortedSet<String> names = names();
    Map<Register, byte[]> bytes = new TreeMap<>();
    for (String name : names) {
      Optional<Register> register = Register.findByFileName(name);
      if (register.isPresent()) {
        bytes(name).ifPresent(b -> bytes.put(register.get(), b));
      } else if (!isLeftover(name)) {
        refuseName(name);
      }
    }
    SortedSet<String> gone = new TreeSet<>(presentBefore);
    gone.removeAll(names);
    for (String name : gone) {
      String expected = "a file, because it was there at the last finished morning";
      fatal(name, "register-gone", expected, "none");
    }
    return Collections.unmodifiableMap(bytes);
  }

  /** The registers that are in the folder, readable or not. */
  Set<Register> there() {
    Set<Register> there = new TreeSet<>();
    names().forEach(name -> Register.findByFileName(name).ifPresent(there::add));
    return there;
  }

  private SortedSet<String> names() {
    SortedSet<String> names = new TreeSet<>();
    if (!Files.exists(folder)) {
      return names;
    }
    try (Stream<Path> files = Files.list(folder)) {
      files.forEach(file -> names.add(String.valueOf(file.getFileName())));
    } catch (IOException e) {
      fatal("registers", "unreadable", "a folder that can be read", "one that cannot");
    }
    return names;
  }

  /** Files that systems and spreadsheets leave beside a table without anybody's doing. */
  private static boolean isLeftover(String name) {
    return name.startsWith(".")
        || name.startsWith("~$")
        || name.endsWith(HALF_WRITTEN)
        || LEFT_BY_SYSTEMS.contains(name);
  }

  private void refuseName(String name) {
    List<String> known = new ArrayList<>(Register.fileNames());
    Collections.sort(known);
    String nearest = Nearest.of(name, known).orElseThrow();
    fatal(
        name,
        "unknown-file",
        "only " + String.join(", ", known) + " in this folder (nearest: " + nearest + ")",
        name);
  }

  private Optional<byte[]> bytes(String name) {
    Path file = folder.resolve(name);
    try {
      if (!Files.isRegularFile(file)) {
        fatal(name, "unreadable", "a file", "something else");
      } else if (Files.size(file) > LARGEST) {
        fatal(name, "too-large", "at most 64 MiB", Files.size(file) + " bytes");
      } else {
        return Optional.of(Files.readAllBytes(file));
      }
    } catch (IOException e) {
      fatal(name, "unreadable", "a file that can be read", "one that cannot");
    }
    return Optional.empty();
  }

  private void fatal(String name, String code, String expected, String found) {
    findings.fatal(new TableProblem(name, 0, "", code, expected, found));
  }
}
