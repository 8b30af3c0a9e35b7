package rickyard.intake.grid.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.UnreadableException;

/**
 * Checks the packed streams of a PDF before they are used: that each unpacks to its end with its
 * check sum right, and that together they stay within the limit. The library itself reads what it
 * can of a broken stream and says nothing.
 */
final class Streams {
  private static final int MOST_OBJECTS = 200_000;

  /** A packed byte unpacks to no more than about this many with the usual method. */
  private static final int RATIO = 1032;

  private final ReadLimits limits;
  private long left;

  private Streams(ReadLimits limits) {
    this.limits = limits;
    this.left = limits.unpackedBytes();
  }

  /**
   * Checks every stream but pictures.
   *
   * @throws UnreadableException code {@code damaged} or {@code too-large-unpacked}
   */
  static void check(COSDocument document, ReadLimits limits) throws IOException {
    Streams streams = new Streams(limits);
    List<COSObjectKey> keys = new ArrayList<>(document.getXrefTable().keySet());
    if (keys.size() > MOST_OBJECTS) {
      throw new UnreadableException(
          "too-complex", "The PDF has more parts than are read; ask for another file.");
    }
    keys.sort(Comparator.naturalOrder());
    for (COSObjectKey key : keys) {
      COSObject object = document.getObjectFromPool(key);
      if (object != null && object.getObject() instanceof COSStream stream && !isPicture(stream)) {
        streams.check(stream);
      }
    }
  }

  private static boolean isPicture(COSStream stream) {
    return COSName.IMAGE.equals(stream.getDictionaryObject(COSName.SUBTYPE));
  }

  private void check(COSStream stream) throws IOException {
    COSBase filters = stream.getFilters();
    if (filters instanceof COSArray several && several.size() == 1) {
      filters = several.getObject(0);
    }
    if (filters == null || (filters instanceof COSArray none && none.size() == 0)) {
      return;
    }
    if (filters.equals(COSName.FLATE_DECODE) || filters.equals(COSName.FLATE_DECODE_ABBREVIATION)) {
      inflate(stream);
    } else if (stream.getLength() > limits.unpackedBytes() / RATIO) {
      throw new UnreadableException(
          "too-large-unpacked", "The PDF is packed in a way that is not read at this size.");
    }
  }

  private void inflate(COSStream stream) throws IOException {
    Inflater inflater = new Inflater();
    byte[] out = new byte[1 << 14];
    try (InputStream raw = stream.createRawInputStream()) {
      byte[] packed = raw.readAllBytes();
      if (packed.length == 0) {
        return;
      }
      inflater.setInput(packed);
      while (!inflater.finished()) {
        int count = inflater.inflate(out);
        left -= count;
        if (left < 0) {
          throw new UnreadableException(
              "too-large-unpacked", "The PDF unpacks to more than is read; ask for another file.");
        }
        if (count == 0 && !inflater.finished()) {
          throw damaged();
        }
      }
    } catch (DataFormatException broken) {
      throw damaged();
    } finally {
      inflater.end();
    }
  }

  static UnreadableException damaged() {
    return new UnreadableException(
        "damaged", "The PDF is damaged: a part of it cannot be unpacked; ask for it again.");
  }
}
