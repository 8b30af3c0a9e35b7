package rickyard.post;

import java.util.Locale;

/**
 * A draft of a morning that may go out.
 *
 * @param id 32 hexadecimal digits of its content
 * @param kind letter or alert
 * @param about the client or adviser, by id
 * @param path where it lies below the morning's folder
 * @param to its address; empty if none is known
 * @param eml its bytes
 */
public record Message(String id, Kind kind, String about, String path, String to, Eml eml) {

  /** Whom it is for. */
  public enum Kind {
    /** To an adviser; goes without a release. */
    ALERT,
    /** To a client; goes when released. */
    LETTER;

    String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
