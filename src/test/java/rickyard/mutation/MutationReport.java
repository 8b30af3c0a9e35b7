package rickyard.mutation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * What the mutation tester wrote about one room.
 *
 * @param room as the profile names it
 * @param mutants in the order of the report
 */
record MutationReport(String room, List<Mutant> mutants) {
  private static final Pattern LAMBDA = Pattern.compile("lambda\\$(.+)\\$[0-9]+");
  private static final Pattern OWNER = Pattern.compile("\\b[\\w$]+[/.](?=[\\w/.$]*::)");

  MutationReport {
    mutants = List.copyOf(mutants);
  }

  /** The report of a room; empty if its room was not run. */
  static Optional<MutationReport> read(String room, Path folder) throws IOException {
    Path file = folder.resolve(room).resolve("mutations.xml");
    return Files.exists(file) ? Optional.of(of(room, Files.readAllBytes(file))) : Optional.empty();
  }

  static MutationReport of(String room, byte[] xml) throws IOException {
    List<Mutant> mutants = new ArrayList<>();
    NodeList found = parse(xml).getElementsByTagName("mutation");
    for (int i = 0; i < found.getLength(); i++) {
      mutants.add(mutant((Element) found.item(i)));
    }
    mutants.removeIf(m -> m.is("NON_VIABLE"));
    return new MutationReport(room, mutants);
  }

  private static Element parse(byte[] xml) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory
          .newDocumentBuilder()
          .parse(new java.io.ByteArrayInputStream(xml))
          .getDocumentElement();
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException("the report of the mutation tester is no XML", e);
    }
  }

  private static Mutant mutant(Element element) {
    String type = text(element, "mutatedClass");
    String method = text(element, "mutatedMethod");
    Matcher lambda = LAMBDA.matcher(method);
    return new Mutant(
        type.substring(type.lastIndexOf('.') + 1),
        lambda.matches() ? lambda.group(1) : method,
        change(text(element, "description")),
        element.getAttribute("status"));
  }

  /** The change in words, without the package and class that it stands in. */
  private static String change(String description) {
    String words = OWNER.matcher(description).replaceAll("");
    return LAMBDA.matcher(words).replaceAll("$1").replace("|", "or");
  }

  private static String text(Element element, String name) {
    return element.getElementsByTagName(name).item(0).getTextContent().strip();
  }

  long count(String status) {
    return mutants.stream().filter(m -> m.is(status)).count();
  }

  long seen() {
    return mutants.stream().filter(Mutant::isSeen).count();
  }

  List<Mutant> unseen() {
    return mutants.stream().filter(m -> !m.isSeen()).toList();
  }
}
