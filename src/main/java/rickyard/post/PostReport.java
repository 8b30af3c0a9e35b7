package rickyard.post;

import java.util.ArrayList;
import java.util.List;
import rickyard.ledger.PostBook;

/**
 * What a round with the post did.
 *
 * @param lines one for each message, alerts first
 * @param doubts every attempt of this and earlier mornings that may have gone out
 */
public record PostReport(List<Line> lines, List<PostBook.Attempt> doubts) {

  /** What became of a message. */
  public enum Outcome {
    SENT,
    SENT_BEFORE,
    IN_DOUBT,
    NOT_RELEASED,
    /** Released, but with another content. */
    CHANGED,
    NO_ADDRESS,
    REFUSED,
    SERVER_DOWN
  }

  /**
   * One message.
   *
   * @param words who released it, or why it did not go
   */
  public record Line(Message message, Outcome outcome, String words) {}

  public PostReport {
    lines = List.copyOf(lines);
    doubts = List.copyOf(doubts);
  }

  /** Whether something that should have gone out in this round did not, or may not have. */
  public boolean isTroubled() {
    return lines.stream()
        .anyMatch(
            l ->
                l.outcome() == Outcome.REFUSED
                    || l.outcome() == Outcome.SERVER_DOWN
                    || (l.outcome() == Outcome.IN_DOUBT && !l.words().isEmpty()));
  }

  private long count(Outcome outcome) {
    return lines.stream().filter(l -> l.outcome() == outcome).count();
  }

  /** Lines for the terminal: what went, then what did not and what would help. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    words.add(
        "send     "
            + counted(Outcome.SENT)
            + " sent"
            + also(Outcome.SENT_BEFORE, "sent before")
            + also(Outcome.NOT_RELEASED, "not released")
            + also(Outcome.CHANGED, "changed since the release")
            + also(Outcome.NO_ADDRESS, "without an address")
            + also(Outcome.REFUSED, "refused")
            + also(Outcome.SERVER_DOWN, "not taken by the server"));
    for (Line line : lines) {
      String path = "         " + line.message().path();
      switch (line.outcome()) {
        case CHANGED ->
            words.add(path + ": changed since it was released; its new row is in letters.csv");
        case NO_ADDRESS ->
            words.add(
                path
                    + ": no address that can be used; "
                    + (line.message().kind() == Message.Kind.ALERT
                        ? "give adviser." + line.message().about() + " in config/mail.properties"
                        : "give the client's e-mail in clients.csv"));
        case REFUSED -> words.add(path + ": the server refused it: " + line.words());
        default -> {
          // Counted above; those in doubt are listed below, of every morning.
        }
      }
    }
    lines.stream()
        .filter(l -> l.outcome() == Outcome.SERVER_DOWN)
        .findFirst()
        .ifPresent(l -> words.add("         the server: " + l.words()));
    doubts.forEach(d -> words.add("         may have been sent: " + doubt(d)));
    return words;
  }

  private static String doubt(PostBook.Attempt attempt) {
    return (attempt.path().isEmpty() ? "(unreadable entry)" : attempt.path())
        + (attempt.morning().isEmpty() ? "" : " of " + attempt.morning())
        + "; ask "
        + (attempt.about().isEmpty() ? "the addressee" : attempt.about())
        + " and add a release to decisions.csv with the value \""
        + attempt.id()
        + " arrived\", or \""
        + attempt.id()
        + " again\" if it did not";
  }

  private String counted(Outcome outcome) {
    return Long.toString(count(outcome));
  }

  private String also(Outcome outcome, String words) {
    return count(outcome) == 0 ? "" : ", " + count(outcome) + " " + words;
  }
}
