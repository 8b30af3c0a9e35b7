package rickyard.intake.grid.book;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import rickyard.intake.grid.Cell.Nature;

/** Number formats of a workbook: what a cell shows for a stored number. */
final class Formats {
  private static final int LONGEST = 255;
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final DataFormatter formatter = new DataFormatter(Locale.US);
  private final boolean from1904;

  Formats(boolean from1904) {
    this.from1904 = from1904;
  }

  /**
   * The number as its cell shows it, with all its digits.
   *
   * @param index number of the format in its workbook
   * @param format the format; empty for the general one
   * @return empty where the cell shows nothing
   */
  Optional<Shown> shown(BigDecimal stored, int index, String format) {
    if (isGeneral(format)) {
      return Optional.of(Shown.plain(stored));
    }
    if (format.length() > LONGEST || !Plain.fits(stored)) {
      return Optional.of(Shown.reshaped(stored));
    }
    if (isHiding(stored.signum(), format)) {
      return Optional.empty();
    }
    try {
      if (DateUtil.isADateFormat(index, format)) {
        return Optional.of(day(stored.doubleValue()));
      }
      String display =
          formatter.formatRawCellContents(stored.doubleValue(), index, format, from1904);
      return Shown.of(stored, display);
    } catch (IllegalArgumentException | IndexOutOfBoundsException notAFormat) {
      return Optional.of(Shown.reshaped(stored));
    }
  }

  /** A format has parts for numbers above, below and at zero; an empty part shows nothing. */
  private static boolean isHiding(int sign, String format) {
    String[] parts = format.split(";", -1);
    int part = sign > 0 ? 0 : sign < 0 ? 1 : 2;
    return parts.length > 1 && parts[part < parts.length ? part : 0].isBlank();
  }

  private static boolean isGeneral(String format) {
    return format.isEmpty() || format.equalsIgnoreCase("general") || format.equals("@");
  }

  private Shown day(double stored) {
    if (!DateUtil.isValidExcelDate(stored)) {
      return new Shown(Double.toString(stored), Nature.RESHAPED);
    }
    LocalDateTime at = DateUtil.getLocalDateTime(stored, from1904, true);
    if (stored < 1) {
      return new Shown(at.format(CLOCK), Nature.DATED);
    }
    return dated(at);
  }

  static Shown dated(LocalDateTime at) {
    String time = at.toLocalTime().equals(LocalTime.MIDNIGHT) ? "" : " " + at.format(CLOCK);
    return new Shown(at.toLocalDate() + time, Nature.DATED);
  }
}
