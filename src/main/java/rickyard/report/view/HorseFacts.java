package rickyard.report.view;

import org.jspecify.annotations.Nullable;

/** What a page says of a horse besides its advice: from the register, as it stands there. */
public record HorseFacts(
    String horse,
    String name,
    String type,
    String status,
    double bodyWeightKg,
    String weightBy,
    @Nullable Double bodyCondition,
    String conditions) {}
