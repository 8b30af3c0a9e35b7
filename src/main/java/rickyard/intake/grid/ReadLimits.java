package rickyard.intake.grid;

import java.io.Serializable;

/**
 * How much of a document is read before it is put aside. A limit that is reached makes the document
 * unreadable with a code; nothing is ever cut off silently.
 *
 * @param bytes bytes of one document, above 0
 * @param pages pages of one PDF, above 0
 * @param cells fields of one document, blank ones counted, above 0
 * @param tableCells the same for a delimited text, whose cells take the least room, above 0
 * @param cellChars characters of one cell, above 0
 * @param glyphs characters drawn in one PDF, above 0
 * @param operations drawing operations of one PDF, above 0
 * @param unpackedBytes bytes that one document may unpack to, above 0
 * @param parts documents in one container, above 0
 * @param depth containers inside one another, above 0; 1 allows a zip but no zip in a zip
 */
public record ReadLimits(
    long bytes,
    int pages,
    int cells,
    int tableCells,
    int cellChars,
    int glyphs,
    int operations,
    long unpackedBytes,
    int parts,
    int depth)
    implements Serializable {

  /**
   * An export of 300,000 rows of fifteen columns and a binder of 1,000 one-page reports are read to
   * their end; beyond that a file is no report. Time and memory have limits of their own, where the
   * reading is isolated.
   */
  public static final ReadLimits DEFAULT =
      new ReadLimits(
          48L << 20,
          1_200,
          1_000_000,
          6_000_000,
          32_767,
          6_000_000,
          24_000_000,
          128L << 20,
          500,
          4);

  public ReadLimits {
    if (Math.min(Math.min(bytes, unpackedBytes), Math.min(Math.min(pages, cells), parts)) < 1
        || tableCells < 1
        || Math.min(Math.min(cellChars, glyphs), Math.min(operations, depth)) < 1) {
      throw new IllegalArgumentException("every limit is at least 1");
    }
  }

  /** Limits with the same number of cells for every kind of document. */
  public ReadLimits(
      long bytes,
      int pages,
      int cells,
      int cellChars,
      int glyphs,
      int operations,
      long unpackedBytes,
      int parts,
      int depth) {
    this(bytes, pages, cells, cells, cellChars, glyphs, operations, unpackedBytes, parts, depth);
  }
}
