package rickyard.ledger;

import java.util.Optional;
import java.util.function.Consumer;

/** Where an office's database lives, and what can be done with all of it there. */
sealed interface DatabaseHome permits FileHome, ServerHome {

  /**
   * Where the database of a ledger is.
   *
   * @param voice told when its opening takes long
   */
  static DatabaseHome of(LedgerPlace place, Consumer<String> voice) {
    return place
        .server()
        .<DatabaseHome>map(address -> new ServerHome(place.folder(), address, voice))
        .orElseGet(() -> new FileHome(place.folder()));
  }

  boolean isThere();

  /** Whether something else changed it while it was closed. */
  boolean isAltered();

  /** Opens it, makes it where there is none, and migrates it. */
  Database open();

  /** Makes another in its place; killed on the way, it is found incomplete and made again. */
  void remake(Consumer<Database> fill);

  /** What became of the old one, to end a sentence; empty if nothing is kept. */
  String aside();

  /**
   * What a failure is where it is no damage: to be told and put right by a person.
   *
   * @return the sentence; empty where making it anew may help
   */
  Optional<LedgerException> refusal(Throwable failure);

  /** Whether one of a later version may be made anew where the journal is of this version. */
  boolean mayReplaceNewer();

  /** Lets go of what is still held when an opening failed. */
  void release();
}
