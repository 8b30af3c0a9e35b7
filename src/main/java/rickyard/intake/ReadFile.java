package rickyard.intake;

import java.io.Serializable;
import java.util.List;

/**
 * What became of one file of the inbox: its own document first, then its parts in their order.
 *
 * @param documents at least one; the first is the file itself
 */
public record ReadFile(List<ReadDocument> documents) implements Serializable {
  public ReadFile {
    documents = List.copyOf(documents);
    if (documents.isEmpty()) {
      throw new IllegalArgumentException("a file is at least one document");
    }
  }
}
