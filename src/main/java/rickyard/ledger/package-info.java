/**
 * The memory of an office: originals and journal are the truth, the database is an index of them.
 *
 * <p>Ways in: {@link rickyard.ledger.OfficeLock}, then {@link rickyard.ledger.Ledger}. It decides
 * nothing.
 */
@org.jspecify.annotations.NullMarked
package rickyard.ledger;
