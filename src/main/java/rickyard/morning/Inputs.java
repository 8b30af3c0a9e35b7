package rickyard.morning;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.intake.arrive.Arrival;
import rickyard.intake.arrive.Inventory;
import rickyard.intake.grid.ReadLimits;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.JournalEntry;
import rickyard.ledger.Ledger;
import rickyard.ledger.Originals;
import rickyard.registers.LoadContext;
import rickyard.registers.Loaded;
import rickyard.registers.RegisterFile;
import rickyard.registers.Registers;

/**
 * Everything a morning starts from, loaded and checked before anything is read.
 *
 * @param asOf the morning's day
 * @param inventory the frozen inbox
 * @param arrivals its entries
 * @param registers the office's own tables
 * @param tables built-in tables with the office's changes
 * @param templates the office's own templates and texts
 */
record Inputs(
    LocalDate asOf,
    Inventory inventory,
    List<ArrivalRow> arrivals,
    Loaded registers,
    Tables tables,
    TemplateFolder templates) {

  Inputs {
    arrivals = List.copyOf(arrivals);
  }

  /**
   * Loads tables, registers and inventory.
   *
   * @param last the journal of the last finished morning
   * @throws rickyard.tables.UnusableTablesException if registers or config cannot be used
   */
  static Inputs load(OfficeFolders folders, LocalDate asOf, Optional<JournalEntry> last) {
    return load(folders, asOf, last, Tables.load(folders.officeConfig()));
  }

  /** The same with tables that are there already. */
  static Inputs load(
      OfficeFolders folders, LocalDate asOf, Optional<JournalEntry> last, Tables tables) {
    TemplateFolder templates = TemplateFolder.read(folders.officeConfig());
    Loaded registers = registers(folders, asOf, last, tables);
    registers.requireUsable();
    Inventory inventory = freeze(folders.inbox());
    List<ArrivalRow> arrivals = inventory.arrivals().stream().map(Inputs::row).toList();
    return new Inputs(asOf, inventory, arrivals, registers, tables, templates);
  }

  private static Inventory freeze(Path inbox) {
    try {
      return Inventory.freeze(inbox, ReadLimits.DEFAULT);
    } catch (IOException e) {
      throw new UsageException("The inbox " + inbox + " cannot be listed: " + e.getMessage());
    }
  }

  static Loaded registers(
      OfficeFolders folders, LocalDate asOf, Optional<JournalEntry> last, Tables tables) {
    LoadContext context =
        LoadContext.of(asOf)
            .withConditions(tables.judgement().conditions().known())
            .withPresentBefore(
                new TreeSet<>(last.map(j -> j.registers().keySet()).orElse(java.util.Set.of())));
    Optional<Path> config = folders.officeConfig();
    return Registers.load(
        folders.registers(), config.isPresent() ? context.withOfficeConfig(config.get()) : context);
  }

  /** What reads the documents. */
  Readers readers() {
    return new Readers(tables.dictionary());
  }

  private static ArrivalRow row(Arrival arrival) {
    return new ArrivalRow(
        arrival.relativePath(),
        arrival.sha256(),
        arrival.bytesSize(),
        arrival.problem().map(Arrival.Problem::code).orElse(""),
        arrival.problem().map(Arrival.Problem::sentence).orElse(""));
  }

  /** Digests of registers and tables by name, for the morning's identity. */
  SortedMap<String, String> digests() {
    SortedMap<String, String> digests = new TreeMap<>();
    tables.digests().forEach((name, digest) -> digests.put("config/" + name, digest));
    templates.digests().forEach((name, digest) -> digests.put("config/" + name, digest));
    registers
        .office()
        .files()
        .forEach(file -> digest(file).ifPresent(d -> digests.put("registers/" + file.name(), d)));
    return digests;
  }

  /**
   * The digest of a register. Releases are left out: to release a letter is not a new morning, in
   * which the letter might become another.
   */
  private Optional<String> digest(RegisterFile file) {
    if (!file.name().equals(Releases.REGISTER)) {
      return Optional.of(file.sha256());
    }
    return file.without(Releases.rows(registers.office(), asOf))
        .map(text -> Originals.sha256(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** Whether a file is there that this reader has not read yet. */
  boolean hasUnread(Ledger ledger) {
    String digest = readers().digest();
    return arrivals.stream()
        .anyMatch(
            a -> a.problemCode().isEmpty() && !ledger.results().hasReading(a.sha256(), digest));
  }
}
