package rickyard.registers;

import java.util.Collection;
import java.util.Optional;
import java.util.TreeSet;

/** The known name that a mistyped one was most likely meant to be. */
final class Nearest {
  private static final int LONGEST = 80;

  private Nearest() {}

  /** The nearest of {@code known} in any distance; the first in order among equals. */
  static Optional<String> of(String name, Collection<String> known) {
    Optional<String> best = Optional.empty();
    int least = Integer.MAX_VALUE;
    for (String candidate : new TreeSet<>(known)) {
      int distance = distance(name, candidate);
      if (distance < least) {
        least = distance;
        best = Optional.of(candidate);
      }
    }
    return best;
  }

  /** The nearest of {@code known} if it is at most {@code furthest} single mistakes away. */
  static Optional<String> within(int furthest, String name, Collection<String> known) {
    return of(name, known).filter(found -> distance(name, found) <= furthest);
  }

  /** Insertions, deletions, substitutions and swaps of neighbours that make one of the other. */
  static int distance(String left, String right) {
    String a = cut(left);
    String b = cut(right);
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int substituted = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(substituted, Math.min(last[j], now[j - 1]) + 1);
        if (i > 1 && j > 1 && swapped(a, i, b, j)) {
          now[j] = Math.min(now[j], before[j - 2] + 1);
        }
      }
      before = last;
      last = now;
    }
    return last[b.length()];
  }

  private static boolean swapped(String a, int i, String b, int j) {
    return a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
  }

  private static String cut(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST);
  }
}
