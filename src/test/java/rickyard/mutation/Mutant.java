package rickyard.mutation;

import java.util.Set;

/**
 * One change of the code and what the tests made of it.
 *
 * @param type class without its package; a nested one with a dollar sign
 * @param method method changed, of a lambda the method it stands in
 * @param change what was changed, in words without a line
 * @param status as the tester names it: KILLED, TIMED_OUT, SURVIVED, NO_COVERAGE …
 */
record Mutant(String type, String method, String change, String status) {
  private static final Set<String> SEEN = Set.of("KILLED", "TIMED_OUT");

  boolean is(String wanted) {
    return status.equals(wanted);
  }

  /** Whether a test failed or never ended with it. */
  boolean isSeen() {
    return SEEN.contains(status);
  }

  /** What it is called in the table of reasons; two changes of one kind in a method are alike. */
  String key() {
    return String.join(" | ", type, method, change);
  }
}
