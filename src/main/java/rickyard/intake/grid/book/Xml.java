package rickyard.intake.grid.book;

import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** XML from outside: no document types, no entities, nothing fetched. */
final class Xml {
  private static final XMLInputFactory FACTORY = factory();

  private Xml() {}

  private static XMLInputFactory factory() {
    // The one of the JDK by name: what else lies on the class path does not change the reading.
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, true);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing is fetched");
        });
    return factory;
  }

  static XMLStreamReader reader(InputStream in) throws XMLStreamException {
    return FACTORY.createXMLStreamReader(in);
  }

  /** An attribute by its local name; empty if it is not there. */
  static String attribute(XMLStreamReader at, String name) {
    for (int i = 0; i < at.getAttributeCount(); i++) {
      if (at.getAttributeLocalName(i).equals(name)) {
        return at.getAttributeValue(i);
      }
    }
    return "";
  }

  /** A whole number; {@code otherwise} where it is none. */
  static int number(String text, int otherwise) {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException none) {
      return otherwise;
    }
  }

  static boolean isYes(String text) {
    return text.equals("1") || text.equals("true");
  }
}
