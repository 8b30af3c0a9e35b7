package rickyard.intake.grid.pdf;

import java.util.Optional;
import rickyard.fuzz.Oracle;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Opened;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.UnreadableException;

/** Reads a PDF as the way in does: the library's failures are refusals, our own are findings. */
final class PdfOracle {
  /** Far below the program's own, so that one input costs little. */
  private static final ReadLimits LIMITS =
      new ReadLimits(1 << 20, 20, 20_000, 32_767, 20_000, 100_000, 4 << 20, 50, 4);

  private PdfOracle() {}

  /** The cells, checked, or nothing where the document was refused. */
  static Optional<Grid> read(byte[] pdf) {
    Opened opened;
    try {
      opened = PdfPages.read(pdf, LIMITS);
    } catch (UnreadableException refused) {
      Oracle.require(!refused.code().isEmpty(), "refused without a code");
      return Optional.empty();
    } catch (StackOverflowError tooDeep) {
      return Optional.empty();
    } catch (RuntimeException broken) {
      if (isOurs(broken)) {
        throw broken;
      }
      return Optional.empty();
    }
    Grid grid = opened.fold(Opened.Cells::grid, parts -> none(), bad -> none());
    Oracle.wellFormed(grid);
    Oracle.read(grid);
    return Optional.of(grid);
  }

  private static Grid none() {
    throw new AssertionError("a PDF is cells or a refusal");
  }

  /** Whether our code threw it, itself or by calling the JDK wrongly. */
  private static boolean isOurs(RuntimeException broken) {
    for (StackTraceElement step : broken.getStackTrace()) {
      if (step.getClassName().startsWith("rickyard.")) {
        return true;
      }
      if (step.getClassName().startsWith("org.apache.")) {
        return false;
      }
    }
    return false;
  }
}
