/**
 * From bytes to reports: one document in, what it says or why it says nothing out.
 *
 * <p>The way in is {@link rickyard.intake.Intake}. Reading is a function of the bytes and the
 * dictionary; it knows no register and no ledger.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake;
