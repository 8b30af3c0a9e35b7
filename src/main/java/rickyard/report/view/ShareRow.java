package rickyard.report.view;

import org.jspecify.annotations.Nullable;

/** A row of share.csv: which lot a horse is to have, kg as fed, and how its diet then stands. */
public record ShareRow(
    String horse,
    String lot,
    double kgPerDay,
    @Nullable Double days,
    @Nullable Double kg,
    String verdict,
    String why) {}
