package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A file with everything inside it, containers in containers too, within the limits of depth,
 * number and total size.
 */
public final class Unfolding {
  private final GridReader reader;
  private final ReadLimits limits;
  private final List<Leaf> leaves = new ArrayList<>();
  private int parts;
  private long unpacked;

  private Unfolding(GridReader reader, ReadLimits limits) {
    this.reader = reader;
    this.limits = limits;
  }

  /**
   * One document of a file.
   *
   * @param part where it lies inside the file, steps divided by {@code !}; empty for the file
   *     itself; no two alike in one file
   * @param sha256 SHA-256 of its bytes, lower-case hex
   * @param size its bytes
   * @param opened what became of it
   */
  public record Leaf(String part, String sha256, long size, Opened opened) {
    public Leaf {
      requireNonNull(part, "part");
      requireNonNull(sha256, "sha256");
      requireNonNull(opened, "opened");
    }
  }

  /**
   * Opens a file and all that is in it, a container before its parts.
   *
   * @return one entry for the file and one for each part; a container that breaks a limit is
   *     unreadable with a code and has no parts
   */
  public static List<Leaf> of(GridReader reader, byte[] bytes, String name, ReadLimits limits) {
    Unfolding unfolding = new Unfolding(reader, limits);
    unfolding.open("", bytes, name, 0);
    return List.copyOf(unfolding.leaves);
  }

  private void open(String place, byte[] bytes, String name, int level) {
    Opened opened = reader.open(bytes, name);
    List<Part> inside = opened.fold(cells -> List.of(), Opened.Parts::parts, none -> List.of());
    Opened allowed = inside.isEmpty() ? opened : allowed(opened, inside, level);
    leaves.add(new Leaf(place, Sha256.of(bytes), bytes.length, allowed));
    if (allowed != opened) {
      return;
    }
    Set<String> taken = new TreeSet<>();
    for (Part part : inside) {
      String step = unused(part.name().replace('!', '_'), taken);
      open(place.isEmpty() ? step : place + "!" + step, part.bytes(), part.name(), level + 1);
    }
  }

  private Opened allowed(Opened opened, List<Part> inside, int level) {
    if (level >= limits.depth()) {
      return new Opened.Unreadable(
          opened.kind(),
          "too-deep",
          "More than "
              + limits.depth()
              + " archives or mails lie inside one another; put the files in by themselves.");
    }
    parts += inside.size();
    if (parts > limits.parts()) {
      return PartName.tooMany(limits).of(opened.kind());
    }
    for (Part part : inside) {
      unpacked += part.bytes().length;
    }
    if (unpacked > limits.unpackedBytes()) {
      return new Opened.Unreadable(
          opened.kind(),
          "too-large-unpacked",
          "It unpacks to more than is read; put the files in by themselves.");
    }
    return opened;
  }

  private static String unused(String name, Set<String> taken) {
    String free = name;
    for (int again = 2; !taken.add(free); again++) {
      free = name + "#" + again;
    }
    return free;
  }
}
