package rickyard.intake.isolate;

import java.nio.charset.StandardCharsets;

/**
 * A small report that every child reads first. It warms the child up while the rest of the program
 * starts, and a child that fails on it shows that reading itself is out of order: that is the
 * machine's fault and must not be laid at the door of the files.
 */
final class Probe {
  static final String NAME = "probe";

  private static final String TEXT =
      """
      Lot,PROBE
      Analyte,Unit,As fed,Dry matter
      Dry matter,%,90.0,100
      Crude protein,%,9.0,10.0
      Starch,%,<0.5,<0.6
      """;

  private Probe() {}

  static byte[] bytes() {
    return TEXT.getBytes(StandardCharsets.UTF_8);
  }
}
