package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * One sample of one document.
 *
 * @param document SHA-256 of the document's bytes
 * @param index place in {@link Report#samples()}, from 0
 */
public record SampleKey(String document, int index) implements Comparable<SampleKey> {
  public SampleKey {
    requireNonNull(document, "document");
  }

  @Override
  public int compareTo(SampleKey other) {
    int byDocument = document.compareTo(other.document);
    return byDocument != 0 ? byDocument : Integer.compare(index, other.index);
  }
}
