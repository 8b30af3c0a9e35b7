package rickyard.morning;

/** Where a run tells a person how far it is. */
public interface Progress {
  /** A stage is done, or has something to say; one line. */
  void line(String text);

  /** Part of a long stage is done. */
  void step(String stage, int done, int total);

  /** Whether the run was asked to end; what it does now may fail for that reason alone. */
  default boolean isStopping() {
    return false;
  }

  /** Says nothing. */
  static Progress silent() {
    return new Progress() {
      @Override
      public void line(String text) {}

      @Override
      public void step(String stage, int done, int total) {}
    };
  }
}
