package rickyard.report.letter;

import java.time.LocalDate;
import java.util.List;

/**
 * A message that a person may send.
 *
 * @param to one address; empty where the register has none that can be used
 * @param toName whose it is
 * @param attachments in order
 * @param day the morning's day, which dates it
 */
record Draft(
    String to,
    String toName,
    String subject,
    String plain,
    String html,
    List<Attachment> attachments,
    LocalDate day) {
  Draft {
    attachments = List.copyOf(attachments);
  }
}
