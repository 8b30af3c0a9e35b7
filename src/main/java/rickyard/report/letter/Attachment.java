package rickyard.report.letter;

import java.util.function.Supplier;

/**
 * A file that goes along with a draft.
 *
 * @param bytes what it holds; the same each time
 */
record Attachment(String name, String type, Supplier<byte[]> bytes) {}
