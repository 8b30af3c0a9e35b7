package rickyard.morning;

import java.util.List;

/** How the documents of one part of the inventory are read and kept. */
interface PartReading {
  /** Places in the inventory that the part reads. */
  List<Integer> documentsOf(int part);

  ReadResult read(int seq);

  /** Keeps a reading, in the document's transaction. */
  void keepReading(ReadResult result);
}
