/**
 * Parts of a step read by workers elsewhere: Spring Batch's remote partitioning over Spring
 * Integration's JDBC channel. Ways in: {@link rickyard.morning.remote.RemoteParts} for the run,
 * {@link rickyard.morning.remote.PartConsumers} for a worker. Knows no document and no table; what
 * a part is, is the caller's step. Nothing here is loaded where no workers are asked for.
 */
@NullMarked
package rickyard.morning.remote;

import org.jspecify.annotations.NullMarked;
