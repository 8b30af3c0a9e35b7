package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * A diet or meal held against one limit.
 *
 * @param limitId row of the limits table
 * @param group group of horses
 * @param subject diet or bucket-meal
 * @param quantity with its definition: nsc_wsc, nsc_esc, starch, k …
 * @param limit the bound
 * @param unit of limit and value
 * @param value best value; null if it cannot be told
 * @param low lower end; null if unknown
 * @param high upper end; null if open or unknown
 * @param u standard uncertainty; null if unknown
 * @param pOver chance of being over (under, for a minimum); null if it cannot be told
 * @param verdict one of the six words
 * @param severity stop, change, watch or info
 * @param reason why, in plain words
 */
public record LimitLine(
    String limitId,
    String group,
    String subject,
    String quantity,
    double limit,
    String unit,
    @Nullable Double value,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable Double u,
    @Nullable Double pOver,
    String verdict,
    String severity,
    String reason)
    implements Serializable {
  public LimitLine {
    requireNonNull(limitId, "limitId");
    requireNonNull(verdict, "verdict");
    requireNonNull(reason, "reason");
  }
}
