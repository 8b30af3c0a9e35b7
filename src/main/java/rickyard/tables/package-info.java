/**
 * The versioned tables under config/: loaded, checked, overridden by the office, digested.
 *
 * <p>The way in is {@link rickyard.tables.TableFile} for one table. Types of a table belong to the
 * room that uses them; this room only fills them.
 */
@org.jspecify.annotations.NullMarked
package rickyard.tables;
