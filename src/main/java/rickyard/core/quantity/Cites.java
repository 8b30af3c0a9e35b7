package rickyard.core.quantity;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Where a formula comes from. Kept at run time: a test holds that {@code source} is a row of {@code
 * config/sources.csv} and that {@code docs/formulas.md} lists exactly the cited methods.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(Cites.List.class)
public @interface Cites {
  /** Key of a row of {@code config/sources.csv}; 'memory' and 'common-practice' are legal. */
  String source();

  /** Page, table, equation or section of the source. */
  String locator();

  /** Several sources for one formula. */
  @Documented
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  @interface List {
    Cites[] value();
  }
}
