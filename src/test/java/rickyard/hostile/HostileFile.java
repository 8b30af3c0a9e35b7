package rickyard.hostile;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;

/**
 * One file of our own making and what may become of it.
 *
 * @param name its name in the inbox
 * @param kind group for counting: zip, workbook, html, pdf, mail, text, odd, name
 * @param about what is wrong with it
 * @param bytes its content
 * @param outcomes what the row of the file itself may say
 * @param codes reason codes of that row that are expected; empty where any will do
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record HostileFile(
    String name,
    String kind,
    String about,
    byte[] bytes,
    Set<String> outcomes,
    List<String> codes) {

  private static final Set<String> ANY = Set.of("accepted", "question", "refused", "duplicate");
  private static final Set<String> NOT_TAKEN = Set.of("question", "refused");

  /** Refused with one of some codes. */
  static HostileFile refused(
      String kind, String name, String about, byte[] bytes, String... codes) {
    return new HostileFile(name, kind, about, bytes, Set.of("refused"), List.of(codes));
  }

  /** Refused or asked about, never taken. */
  static HostileFile notTaken(String kind, String name, String about, byte[] bytes) {
    return new HostileFile(name, kind, about, bytes, NOT_TAKEN, List.of());
  }

  static HostileFile notTaken(String kind, String name, String about, String text) {
    return notTaken(kind, name, about, text.getBytes(StandardCharsets.UTF_8));
  }

  /** May be taken: what can be seen on it is honest and says that the lot is too rich. */
  static HostileFile honest(String kind, String name, String about, byte[] bytes) {
    return new HostileFile(name, kind, about, bytes, ANY, List.of());
  }

  static HostileFile honest(String kind, String name, String about, String text) {
    return honest(kind, name, about, text.getBytes(StandardCharsets.UTF_8));
  }
}
