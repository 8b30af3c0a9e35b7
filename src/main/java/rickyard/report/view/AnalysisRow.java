package rickyard.report.view;

import org.jspecify.annotations.Nullable;

/**
 * A row of analyses.csv: one figure of one sample, or one figure derived from them.
 *
 * @param used whether the lot is judged by this very figure where several stand for one quantity
 * @param from of a derived figure the formula and the cells that it comes from; empty otherwise
 */
public record AnalysisRow(
    String file,
    String part,
    int page,
    int row,
    String column,
    String lot,
    String lab,
    String reportNo,
    int revision,
    String reportStatus,
    String sampledOn,
    String analyte,
    String raw,
    String rawUnit,
    String rawBasis,
    String basis,
    String unit,
    @Nullable Double value,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable Double u,
    String origin,
    String method,
    String state,
    String batch,
    boolean used,
    String from) {}
