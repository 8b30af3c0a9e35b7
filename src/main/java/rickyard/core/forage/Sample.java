package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What one analysis was made of, as the report describes it.
 *
 * @param label the lot, feed or sample name that the sender gave, as printed; empty if none
 * @param batch batch or production code of a bagged feed as printed; empty if none
 * @param labNo the laboratory's own number of the sample; empty if none
 * @param material the material in the report's words; empty if not said
 * @param sampledOn the day of sampling, if printed and unambiguous
 * @param cores number of cores or bales sampled, if printed
 * @param readings every figure found, settled or not, in the order of the page
 * @param doubts what must be settled before this sample can count in full
 * @param checks the relations tried on its figures
 * @param standing its own standing where the rows of one report differ; empty if the report's holds
 */
public record Sample(
    String label,
    String batch,
    String labNo,
    String material,
    Optional<LocalDate> sampledOn,
    OptionalInt cores,
    List<Reading> readings,
    List<Doubt> doubts,
    List<Check> checks,
    Optional<ReportStatus> standing)
    implements Serializable {

  public Sample {
    requireNonNull(label, "label");
    requireNonNull(batch, "batch");
    requireNonNull(labNo, "labNo");
    requireNonNull(material, "material");
    requireNonNull(sampledOn, "sampledOn");
    requireNonNull(cores, "cores");
    readings = List.copyOf(readings);
    doubts = List.copyOf(doubts);
    checks = List.copyOf(checks);
    requireNonNull(standing, "standing");
  }

  /** A sample that has the standing of its report. */
  public Sample(
      String label,
      String batch,
      String labNo,
      String material,
      Optional<LocalDate> sampledOn,
      OptionalInt cores,
      List<Reading> readings,
      List<Doubt> doubts,
      List<Check> checks) {
    this(
        label,
        batch,
        labNo,
        material,
        sampledOn,
        cores,
        readings,
        doubts,
        checks,
        Optional.empty());
  }
}
