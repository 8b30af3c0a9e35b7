package rickyard.report.view;

import org.jspecify.annotations.Nullable;

/**
 * How an item of a ration is given, from the register.
 *
 * @param meals meals a day; null if not said
 * @param prepared dry, soaked, steamed or empty
 * @param asForage fed as forage, not in the bucket
 * @param isOpen whether it eats of it what it likes, so that nobody weighs it
 */
public record Serving(@Nullable Integer meals, String prepared, boolean asForage, boolean isOpen) {

  /** Something that is weighed out. */
  public Serving(@Nullable Integer meals, String prepared, boolean asForage) {
    this(meals, prepared, asForage, false);
  }
}
