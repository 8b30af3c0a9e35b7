package rickyard.morning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeSet;
import rickyard.ledger.DurableFiles;
import rickyard.ledger.Ledger;
import rickyard.ledger.LedgerException;
import rickyard.ledger.Originals;
import rickyard.post.DraftFile;
import rickyard.post.Eml;
import rickyard.post.MailSettings;
import rickyard.post.Message;
import rickyard.post.PostReport;
import rickyard.post.PostRound;
import rickyard.post.Smtp;
import rickyard.registers.Client;
import rickyard.registers.Office;
import rickyard.report.letter.Alerts;
import rickyard.report.letter.Letters;

/** Hands the drafts of a published morning to the post: what lies in its folder, and is whole. */
final class SendDesk {
  private final MailSettings settings;
  private final Office office;
  private final LocalDate asOf;
  private final Progress progress;

  SendDesk(MailSettings settings, Office office, LocalDate asOf, Progress progress) {
    this.settings = settings;
    this.office = office;
    this.asOf = asOf;
    this.progress = progress;
  }

  PostReport send(Ledger ledger, Path out) {
    // What is told to a server must not be ahead of what the ledger knows.
    ledger.checkpoint();
    List<Message> messages = messages(out);
    int[] done = {0};
    return new PostRound(
            ledger.post(),
            Releases.of(office, asOf),
            () -> new Smtp(settings, new Properties(), Clock.systemUTC()),
            asOf.toString(),
            () -> progress.step("send", ++done[0], messages.size()))
        .send(messages);
  }

  private List<Message> messages(Path out) {
    Manifest manifest =
        Manifest.read(out)
            .orElseThrow(() -> new LedgerException("The outputs in " + out + " are not there."));
    List<Message> messages = new ArrayList<>();
    TreeSet<String> advisers = new TreeSet<>();
    for (Client client : office.clients().values()) {
      advisers.add(client.adviser().strip());
      String path = Letters.path(client.id());
      draft(manifest, out, path)
          .ifPresent(d -> messages.add(d.message(Message.Kind.LETTER, client.id(), path, d.to())));
    }
    for (String adviser : advisers) {
      String path = Alerts.path(adviser);
      String to = settings.advisers().getOrDefault(adviser, "");
      draft(manifest, out, path)
          .ifPresent(d -> messages.add(d.message(Message.Kind.ALERT, adviser, path, to)));
    }
    return messages;
  }

  /** A draft that the morning made; one that was edited since is not what was released. */
  private static Optional<DraftFile> draft(Manifest manifest, Path out, String path) {
    String hash = manifest.files().get(path);
    if (hash == null) {
      return Optional.empty();
    }
    Path file = out.resolve(path);
    try {
      byte[] bytes = Files.readAllBytes(file);
      if (Originals.sha256(bytes).equals(hash)) {
        return Optional.of(DraftFile.of(new Eml(bytes)));
      }
    } catch (IOException e) {
      throw new LedgerException("The draft " + file + " cannot be read: " + DurableFiles.why(e), e);
    }
    throw new LedgerException(
        "The draft " + file + " was changed after it was written; run the same command again.");
  }
}
