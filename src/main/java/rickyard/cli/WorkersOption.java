package rickyard.cli;

import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rickyard.morning.Workers;

/** Reads {@code --workers}: a number, or the word for workers on other machines. */
final class WorkersOption implements ITypeConverter<Workers> {
  private static final String REMOTE = "remote";

  @Override
  public Workers convert(String text) {
    if (text.toLowerCase(Locale.ROOT).equals(REMOTE)) {
      return Workers.remote();
    }
    try {
      return Workers.of(Integer.parseInt(text));
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException("--workers is 1 to 64, or remote, not " + text);
    }
  }
}
