package rickyard.report.view;

import org.jspecify.annotations.Nullable;

/** A row of verdicts.csv: one lot against one limit. */
public record VerdictRow(
    String lot,
    String group,
    String limitId,
    String quantity,
    double limit,
    String unit,
    @Nullable Double value,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable Double u,
    @Nullable Double pOver,
    String verdict,
    String reason,
    @Nullable Double risk,
    String severity) {}
