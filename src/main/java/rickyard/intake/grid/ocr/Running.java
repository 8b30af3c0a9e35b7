package rickyard.intake.grid.ocr;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import rickyard.intake.grid.UnreadableException;

/** Runs a program with a list of arguments, never through a shell, within time and size. */
final class Running {
  private Running() {}

  /**
   * Runs a program to its end.
   *
   * @param command its file and arguments
   * @param input what it gets on its standard input
   * @param time how long it may take; it is killed then
   * @param most bytes that it may answer
   * @return what it wrote on its standard output
   */
  static String of(List<String> command, Optional<byte[]> input, Duration time, int most) {
    Process process = start(command);
    try {
      CompletableFuture<byte[]> answer =
          CompletableFuture.supplyAsync(
              () -> read(process.getInputStream(), most), Running::beside);
      CompletableFuture<Void> fed =
          CompletableFuture.runAsync(() -> feed(process.getOutputStream(), input), Running::beside);
      byte[] said = answer.get(time.toMillis(), TimeUnit.MILLISECONDS);
      fed.get(time.toMillis(), TimeUnit.MILLISECONDS);
      boolean ended = process.waitFor(time.toMillis(), TimeUnit.MILLISECONDS);
      if (!ended || process.exitValue() != 0 || said.length > most) {
        throw failed();
      }
      return new String(said, StandardCharsets.UTF_8);
    } catch (ExecutionException | TimeoutException late) {
      throw failed();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw failed();
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
  }

  /**
   * Feeding and reading wait for each other, so each has a thread; the common pool of a small
   * machine has one.
   */
  private static void beside(Runnable task) {
    Thread thread = new Thread(task, "recogniser");
    thread.setDaemon(true);
    thread.start();
  }

  private static Process start(List<String> command) {
    ProcessBuilder builder = new ProcessBuilder(command).redirectError(Redirect.DISCARD);
    // One thread: several helpers read at once already, and it is as fast for one page.
    builder.environment().put("OMP_THREAD_LIMIT", "1");
    try {
      return builder.start();
    } catch (IOException notStarted) {
      throw failed();
    }
  }

  private static byte[] read(InputStream in, int most) {
    try (in) {
      return in.readNBytes(most + 1);
    } catch (IOException broken) {
      throw failed();
    }
  }

  private static void feed(OutputStream out, Optional<byte[]> input) {
    try (out) {
      if (input.isPresent()) {
        out.write(input.get());
      }
    } catch (IOException closedEarly) {
      // The program's end and exit value tell what became of it.
      return;
    }
  }

  private static UnreadableException failed() {
    return new UnreadableException(
        "ocr-failed",
        "The text recogniser could not read the picture; type the figures in or ask for a file.");
  }
}
