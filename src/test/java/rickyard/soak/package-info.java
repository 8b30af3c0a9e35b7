/**
 * Interruptions of the built program at random and at every point where it writes, and what the
 * same command makes of it afterwards: {@code mvn -P soak verify}. Results go to {@code
 * target/soak}; the figures of one run are kept in docs/robustness.md.
 */
package rickyard.soak;
