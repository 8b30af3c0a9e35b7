package rickyard.post;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import rickyard.ledger.PostBook;

/**
 * One round with the post: alerts, and letters released for exactly their content. The intent is on
 * the disk before a message goes, the mark after the server took it; what is in doubt is never sent
 * again by itself.
 */
public final class PostRound {
  private final PostBook book;
  private final List<Release> releases;
  private final Supplier<Carrier> carriers;
  private final String morning;
  private final Runnable pause;

  /**
   * Prepares a round.
   *
   * @param book what went out so far
   * @param releases what people decided, in the order of the register
   * @param carriers makes the way to the server when the first message is to go
   * @param morning the morning's day
   * @param pause called where the round may be stopped
   */
  public PostRound(
      PostBook book,
      List<Release> releases,
      Supplier<Carrier> carriers,
      String morning,
      Runnable pause) {
    this.book = book;
    this.releases = List.copyOf(releases);
    this.carriers = carriers;
    this.morning = morning;
    this.pause = pause;
  }

  /** Sends what may go. */
  public PostReport send(List<Message> messages) {
    noteArrivals();
    List<PostReport.Line> lines = new ArrayList<>();
    List<Message> sorted =
        messages.stream()
            .sorted(Comparator.comparing(Message::kind).thenComparing(Message::path))
            .toList();
    Optional<String> down = Optional.empty();
    try (LazyCarrier carrier = new LazyCarrier(carriers)) {
      for (Message message : sorted) {
        PostReport.Line line = down.isPresent() ? waits(message, down.get()) : go(message, carrier);
        lines.add(line);
        if (line.outcome() == PostReport.Outcome.SERVER_DOWN) {
          down = Optional.of(line.words());
        }
      }
    }
    return new PostReport(lines, doubts());
  }

  /** What was in doubt and arrived, as a person says, counts as sent. */
  private void noteArrivals() {
    for (PostBook.Attempt attempt : doubts()) {
      if (!released(attempt.id(), Release.Word.ARRIVED).isEmpty()) {
        book.sent(attempt);
      }
    }
  }

  private List<Release> released(String id, Release.Word word) {
    return releases.stream().filter(r -> r.id().equals(id) && r.word() == word).toList();
  }

  /** Attempts that may have gone out, unless another of the same content surely did. */
  private List<PostBook.Attempt> doubts() {
    List<PostBook.Entry> entries = book.entries();
    Set<String> sent =
        entries.stream()
            .filter(e -> e.state() == PostBook.State.SENT)
            .map(e -> e.attempt().id())
            .collect(Collectors.toSet());
    return entries.stream()
        .filter(e -> e.state() == PostBook.State.IN_DOUBT)
        .map(PostBook.Entry::attempt)
        .filter(a -> !sent.contains(a.id()))
        .toList();
  }

  /** A message after the server failed: what went or is in doubt stays so, the rest waits. */
  private PostReport.Line waits(Message message, String why) {
    return next(message).isPresent()
        ? new PostReport.Line(message, PostReport.Outcome.SERVER_DOWN, why)
        : settled(message);
  }

  private PostReport.Line go(Message message, LazyCarrier carrier) {
    Optional<PostBook.Attempt> next = next(message);
    if (next.isEmpty()) {
      return settled(message);
    }
    if (message.to().isEmpty()) {
      return new PostReport.Line(message, PostReport.Outcome.NO_ADDRESS, "");
    }
    pause.run();
    PostBook.Attempt attempt = next.get();
    book.intend(attempt);
    try {
      carrier.carry(message);
      book.sent(attempt);
      return new PostReport.Line(message, PostReport.Outcome.SENT, attempt.by());
    } catch (Carrier.RefusedException e) {
      book.withdraw(attempt);
      return new PostReport.Line(
          message,
          e.isOfAll() ? PostReport.Outcome.SERVER_DOWN : PostReport.Outcome.REFUSED,
          String.valueOf(e.getMessage()));
    } catch (Carrier.InDoubtException e) {
      return new PostReport.Line(
          message, PostReport.Outcome.IN_DOUBT, String.valueOf(e.getMessage()));
    }
  }

  /** Why a message does not go now. */
  private PostReport.Line settled(Message message) {
    PostReport.Outcome outcome =
        switch (last(message)) {
          case SENT -> PostReport.Outcome.SENT_BEFORE;
          case IN_DOUBT -> PostReport.Outcome.IN_DOUBT;
          case NEW ->
              releases.stream().anyMatch(r -> r.about().equals(message.about()))
                  ? PostReport.Outcome.CHANGED
                  : PostReport.Outcome.NOT_RELEASED;
        };
    return new PostReport.Line(message, outcome, "");
  }

  private PostBook.State last(Message message) {
    PostBook.State last = book.state(message.id());
    for (int attempt = 2; book.state(key(message, attempt)) != PostBook.State.NEW; attempt++) {
      last = book.state(key(message, attempt));
    }
    return last;
  }

  /** The attempt that may be made now, if any. */
  private Optional<PostBook.Attempt> next(Message message) {
    int made = 0;
    while (book.state(key(message, made + 1)) != PostBook.State.NEW) {
      made++;
      if (book.state(key(message, made)) == PostBook.State.SENT) {
        return Optional.empty();
      }
    }
    if (made == 0) {
      return message.kind() == Message.Kind.ALERT
          ? Optional.of(attempt(message, 1, ""))
          : released(message.id(), Release.Word.SEND).stream()
              .findFirst()
              .map(r -> attempt(message, 1, r.by()));
    }
    // What is in doubt goes again only for a row that says so, once for each.
    List<Release> again = released(message.id(), Release.Word.AGAIN);
    return again.size() < made
        ? Optional.empty()
        : Optional.of(attempt(message, made + 1, again.get(made - 1).by()));
  }

  private PostBook.Attempt attempt(Message message, int number, String by) {
    return new PostBook.Attempt(
        key(message, number), message.kind().code(), message.about(), message.path(), morning, by);
  }

  private static String key(Message message, int attempt) {
    return attempt == 1 ? message.id() : message.id() + "-" + attempt;
  }

  /** The way to the server, made when the first message goes. */
  private static final class LazyCarrier implements AutoCloseable {
    private final Supplier<Carrier> carriers;
    private Optional<Carrier> made = Optional.empty();

    LazyCarrier(Supplier<Carrier> carriers) {
      this.carriers = carriers;
    }

    void carry(Message message) throws Carrier.RefusedException, Carrier.InDoubtException {
      if (made.isEmpty()) {
        made = Optional.of(carriers.get());
      }
      made.get().carry(message);
    }

    @Override
    public void close() {
      made.ifPresent(Carrier::close);
    }
  }
}
