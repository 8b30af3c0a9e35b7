package rickyard.ledger;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a look at the whole journal found.
 *
 * @param digests SHA-256 of each sound file by number, without gaps from 1
 * @param tail the trouble with the file behind them, where there should be one and it is no good
 */
record Survey(SortedMap<Integer, String> digests, Optional<LedgerException> tail) {
  Survey {
    digests = Collections.unmodifiableSortedMap(new TreeMap<>(digests));
  }

  int last() {
    return digests.isEmpty() ? 0 : digests.lastKey();
  }
}
