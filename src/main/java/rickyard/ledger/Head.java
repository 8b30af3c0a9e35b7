package rickyard.ledger;

import java.util.Optional;

/**
 * Where the journal stands, in {@code journal/head.json}: which mornings are finished, and which
 * one is under way.
 *
 * @param format version of the whole ledger; the number of the database's last migration
 * @param finished number of the last morning that was published whole; 0 before the first
 * @param begun the morning under way
 */
record Head(int format, int finished, Optional<Begun> begun) {
  /** This program's ledger. */
  static final int FORMAT = 3;

  /**
   * A morning under way.
   *
   * @param number from 1
   * @param asOf ISO date
   * @param identity see {@link JournalEntry#identity()}
   * @param content see {@link JournalEntry#content()}
   * @param out where its outputs go
   */
  record Begun(int number, String asOf, String identity, String content, String out) {}

  static Head of(int finished) {
    return new Head(FORMAT, finished, Optional.empty());
  }

  Head withBegun(Begun morning) {
    return new Head(FORMAT, finished, Optional.of(morning));
  }

  boolean isBegun(int number) {
    return begun.filter(b -> b.number() == number).isPresent();
  }

  boolean isBegun(int number, String identity) {
    return begun.filter(b -> b.number() == number && b.identity().equals(identity)).isPresent();
  }
}
