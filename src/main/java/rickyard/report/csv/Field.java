package rickyard.report.csv;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rickyard.report.text.Harmless;
import rickyard.report.text.PlainNumber;

/** One field of an output table: text, or a number that may be blank. */
public sealed interface Field {

  /** As a CSV cell. */
  String csv();

  /** One of two results, by what it is; an absent number is empty. */
  <T> T fold(Function<String, T> onText, Function<Optional<BigDecimal>, T> onNumber);

  /** Text from wherever it came. */
  static Field text(String text) {
    return new Text(Harmless.text(text));
  }

  /** Words separated by semicolons. */
  static Field list(Collection<String> words) {
    return text(String.join(";", words));
  }

  /** A measured or computed number, blank if unknown. */
  static Field number(@Nullable Double number) {
    return new Figure(PlainNumber.find(number));
  }

  /** A whole number. */
  static Field count(long count) {
    return new Figure(Optional.of(BigDecimal.valueOf(count)));
  }

  /** A place in a document, counted from one; blank where there is none. */
  static Field place(long place) {
    return place > 0 ? count(place) : number(null);
  }

  /** Text, harmless already. */
  record Text(String text) implements Field {
    @Override
    public String csv() {
      return CsvOut.guarded(text);
    }

    @Override
    public <T> T fold(Function<String, T> onText, Function<Optional<BigDecimal>, T> onNumber) {
      return onText.apply(text);
    }
  }

  /** A number, rounded already. */
  record Figure(Optional<BigDecimal> number) implements Field {
    @Override
    public String csv() {
      return number.map(BigDecimal::toPlainString).orElse("");
    }

    @Override
    public <T> T fold(Function<String, T> onText, Function<Optional<BigDecimal>, T> onNumber) {
      return onNumber.apply(number);
    }
  }
}
