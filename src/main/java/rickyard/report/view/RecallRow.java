package rickyard.report.view;

/** A row of recalls.csv: who got a lot whose verdict fell, and what they were told. */
public record RecallRow(
    String lot,
    String client,
    String horse,
    String deliveredOn,
    String toldOn,
    String what,
    String fellOn) {}
