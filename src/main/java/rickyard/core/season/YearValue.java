package rickyard.core.season;

/**
 * One year's hay of a field and cutting.
 *
 * @param year of harvest
 * @param lots how many have a value in force
 * @param value their mean
 * @param u its standard uncertainty by the tests alone, {@code √Σu²/n}, above 0
 */
public record YearValue(int year, int lots, double value, double u) {}
