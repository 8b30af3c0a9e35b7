package rickyard.second;

/**
 * A figure as a report prints it.
 *
 * @param code analyte
 * @param digits the number's text, without a sign of censoring
 * @param isBelow whether it reads 'less than'
 * @param factor from the printed unit to the analyte's own
 * @param unit the printed unit
 * @param basis af, dm or none
 * @param method nir, wet or blank
 */
record Printed(
    String code,
    String digits,
    boolean isBelow,
    double factor,
    String unit,
    String basis,
    String method) {
  double number() {
    return Double.parseDouble(digits);
  }
}
