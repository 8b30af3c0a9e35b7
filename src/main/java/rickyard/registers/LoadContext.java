package rickyard.registers;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What the loader must know besides the files.
 *
 * @param asOf the morning's day; no weighing, harvest or delivery lies after it
 * @param presentBefore file names of the registers that were there at the last finished morning
 * @param conditions the condition words that horses may have, in lower case
 * @param materials the material words of lots; where empty any word is taken without a warning
 * @param officeConfig the office's own config folder, if there is one
 */
public record LoadContext(
    LocalDate asOf,
    SortedSet<String> presentBefore,
    SortedSet<String> conditions,
    SortedSet<String> materials,
    Optional<Path> officeConfig) {

  private static final Set<String> CONTRACT_CONDITIONS =
      Set.of(
          "insulin-dysregulation",
          "laminitis-past",
          "laminitis-acute",
          "ppid",
          "pssm",
          "hypp",
          "dental",
          "ulcers",
          "overweight");

  public LoadContext {
    requireNonNull(asOf, "asOf");
    requireNonNull(officeConfig, "officeConfig");
    presentBefore = Collections.unmodifiableSortedSet(new TreeSet<>(presentBefore));
    conditions = Collections.unmodifiableSortedSet(new TreeSet<>(conditions));
    materials = Collections.unmodifiableSortedSet(new TreeSet<>(materials));
  }

  /** A first morning with the contract's conditions and no config of the office's own. */
  public static LoadContext of(LocalDate asOf) {
    return new LoadContext(
        asOf,
        new TreeSet<>(),
        new TreeSet<>(CONTRACT_CONDITIONS),
        new TreeSet<>(),
        Optional.empty());
  }

  public LoadContext withPresentBefore(Set<String> fileNames) {
    return new LoadContext(asOf, new TreeSet<>(fileNames), conditions, materials, officeConfig);
  }

  public LoadContext withConditions(Set<String> words) {
    return new LoadContext(asOf, presentBefore, new TreeSet<>(words), materials, officeConfig);
  }

  public LoadContext withMaterials(Set<String> words) {
    return new LoadContext(asOf, presentBefore, conditions, new TreeSet<>(words), officeConfig);
  }

  public LoadContext withOfficeConfig(Path folder) {
    return new LoadContext(asOf, presentBefore, conditions, materials, Optional.of(folder));
  }
}
