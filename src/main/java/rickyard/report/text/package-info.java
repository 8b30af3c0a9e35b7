/**
 * How numbers, amounts and strange text are written: rounding half-up, no locale, no exponent; text
 * from outside loses its control characters.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.text;
