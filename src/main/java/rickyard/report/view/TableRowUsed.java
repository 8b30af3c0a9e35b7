package rickyard.report.view;

/** A table that this morning used. */
public record TableRowUsed(String name, String version, String sha256, boolean officeChanged) {}
