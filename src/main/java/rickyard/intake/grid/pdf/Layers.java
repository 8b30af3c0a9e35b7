package rickyard.intake.grid.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** Which layers of a document are switched off when it is opened. */
final class Layers {
  static final Layers NONE = new Layers(Optional.empty());

  private final Optional<PDOptionalContentProperties> properties;

  private Layers(Optional<PDOptionalContentProperties> properties) {
    this.properties = properties;
  }

  static Layers of(PDDocument document) {
    return new Layers(Optional.ofNullable(document.getDocumentCatalog().getOCProperties()));
  }

  /** Whether content of a layer, or of a set of layers of which none is on, is not shown. */
  boolean isOff(COSDictionary layer) {
    List<COSDictionary> groups = groups(layer);
    return properties.isPresent()
        && !groups.isEmpty()
        && groups.stream()
            .noneMatch(g -> properties.get().isGroupEnabled(new PDOptionalContentGroup(g)));
  }

  private static List<COSDictionary> groups(COSDictionary layer) {
    if (COSName.OCG.equals(layer.getDictionaryObject(COSName.TYPE))) {
      return List.of(layer);
    }
    COSBase members = layer.getDictionaryObject(COSName.OCGS);
    List<COSDictionary> groups = new ArrayList<>();
    if (members instanceof COSDictionary one) {
      groups.add(one);
    } else if (members instanceof COSArray several) {
      for (int at = 0; at < several.size(); at++) {
        if (several.getObject(at) instanceof COSDictionary group) {
          groups.add(group);
        }
      }
    }
    return groups.stream()
        .filter(g -> COSName.OCG.equals(g.getDictionaryObject(COSName.TYPE)))
        .toList();
  }
}
