package rickyard.intake.check;

import rickyard.core.forage.AnalyteCode;

/** Codes that only the checks name. */
final class Codes {
  static final AnalyteCode HEMICELLULOSE = new AnalyteCode("HEMICELLULOSE");
  static final AnalyteCode FRUCTAN = new AnalyteCode("FRUCTAN");

  private Codes() {}
}
