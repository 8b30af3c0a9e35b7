package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * One batch of a bagged feed that the register knows; certificates are matched to it.
 *
 * @param feed feed id
 * @param batch batch; empty for a feed without batches
 * @param name as sold
 */
public record BagBatch(String feed, String batch, String name) {
  public BagBatch {
    requireNonNull(feed, "feed");
    requireNonNull(batch, "batch");
    requireNonNull(name, "name");
  }
}
