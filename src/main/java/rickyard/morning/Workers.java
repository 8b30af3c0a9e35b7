package rickyard.morning;

/**
 * Who reads the documents of a morning.
 *
 * @param here documents read at a time in this process, from 1
 * @param elsewhere whether workers on the same ledger are asked first
 */
public record Workers(int here, boolean elsewhere) {
  private static final int MOST = 64;
  private static final int USUALLY = 4;

  public Workers {
    if (here < 1 || here > MOST) {
      throw new IllegalArgumentException("1 to " + MOST + ", not " + here);
    }
  }

  /** So many at a time in this process. */
  public static Workers of(int here) {
    return new Workers(here, false);
  }

  /** As many as this machine has cores, up to four. */
  public static int usual() {
    return Math.min(USUALLY, Runtime.getRuntime().availableProcessors());
  }

  /** Workers elsewhere; this process only when nobody comes. */
  public static Workers remote() {
    return new Workers(usual(), true);
  }
}
