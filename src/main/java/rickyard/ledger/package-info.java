/**
 * The memory of an office: originals and journal are the truth, the database is an index of them.
 *
 * <p>Ways in: {@link rickyard.ledger.OfficeLock}, then {@link rickyard.ledger.Ledger}. Every
 * opening checks what is found, mends what can be mended without losing a report, and refuses the
 * rest with the file and the remedy. It decides nothing about hay.
 */
@org.jspecify.annotations.NullMarked
package rickyard.ledger;
