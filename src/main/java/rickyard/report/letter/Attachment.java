package rickyard.report.letter;

/** A file that goes along with a draft. */
final class Attachment {
  private final String name;
  private final String type;
  private final byte[] bytes;

  Attachment(String name, String type, byte[] bytes) {
    this.name = name;
    this.type = type;
    this.bytes = bytes.clone();
  }

  String name() {
    return name;
  }

  String type() {
    return type;
  }

  byte[] bytes() {
    return bytes.clone();
  }
}
