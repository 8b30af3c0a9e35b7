package rickyard.core.advice;

import java.io.Serializable;

/** One item on one day of a changeover; day 1 is the first step. */
public record ChangeoverLine(int rank, int day, String item, double kg) implements Serializable {}
