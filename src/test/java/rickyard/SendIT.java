package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.post.MailServer;

/**
 * Sending by the built program to a real server, killed on the way: no message arrives twice, what
 * may have arrived is listed, and only what was released goes.
 */
class SendIT {
  private static final String DAY = "2026-03-16";
  private static final int KILLED = 137;

  @TempDir static Path shared;

  @BeforeAll
  static void runTheDemoOnce() throws IOException {
    BuiltJar.Ended ended =
        BuiltJar.run(BuiltJar.quick(), List.of("demo", "--out", shared.toString()));
    assertEquals(0, ended.status(), ended.output());
  }

  private static Path office(Path folder, MailServer server) throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(shared.resolve("office"), office);
    Files.createDirectories(office.resolve("config"));
    Files.writeString(
        office.resolve("config/mail.properties"),
        "host=localhost\nsecurity=none\nport="
            + server.port()
            + "\nfrom=office@example.invalid\nadviser.ostermay=o@example.invalid\n"
            + "adviser.quillow=q@example.invalid\nadviser.tharne=t@example.invalid\n");
    return office;
  }

  private static List<String> command(Path office) {
    return List.of("morning", office.toString(), "--as-of", DAY, "--send");
  }

  private static List<CSVRecord> letters(Path office) throws IOException {
    try (Reader in =
        Files.newBufferedReader(office.resolve("mornings").resolve(DAY).resolve("letters.csv"))) {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(in)
          .getRecords();
    }
  }

  private static void release(Path office, List<CSVRecord> letters) throws IOException {
    StringBuilder rows = new StringBuilder();
    letters.forEach(
        l -> rows.append(l.get("release_row").replace("YOUR NAME", "Quill")).append('\n'));
    Files.writeString(office.resolve("registers/decisions.csv"), rows, StandardOpenOption.APPEND);
  }

  @Test
  void alertsGoByThemselvesAndLettersWhenReleasedAndNothingGoesTwice(@TempDir Path folder)
      throws Exception {
    try (MailServer server = new MailServer()) {
      Path office = office(folder, server);
      Map<String, String> before = BuiltJar.contents(office.resolve("mornings"));

      BuiltJar.Ended alerts = BuiltJar.run(BuiltJar.quick(), command(office));

      assertEquals(0, alerts.status(), alerts.output());
      int advisers = server.taken().size();
      assertTrue(advisers > 0, alerts.output());
      List<CSVRecord> letters = letters(office);
      assertTrue(letters.size() > 2, "letters to release");
      release(office, letters.subList(0, 2));
      BuiltJar.Ended released = BuiltJar.run(BuiltJar.quick(), command(office));
      assertEquals(0, released.status(), released.output());
      assertTrue(released.output().contains("Nothing is new"), released.output());
      List<MimeMessage> more = server.taken().subList(advisers, server.taken().size());
      assertEquals(
          letters.subList(0, 2).stream()
              .map(l -> "<" + l.get("content_id") + "@rickyard.invalid> " + l.get("to"))
              .toList(),
          more.stream().map(m -> MailServer.id(m) + " " + to(m)).toList());
      BuiltJar.Ended again = BuiltJar.run(BuiltJar.quick(), command(office));
      assertEquals(0, again.status(), again.output());
      assertEquals(advisers + 2, server.taken().size());
      assertEquals(before, BuiltJar.contents(office.resolve("mornings")));
    }
  }

  private static String to(MimeMessage mail) {
    try {
      return ((jakarta.mail.internet.InternetAddress) mail.getAllRecipients()[0]).getAddress();
    } catch (jakarta.mail.MessagingException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void killedBeforeOrAfterTheServerTookAMessageNoneArrivesTwiceAndEachDoubtIsListed(
      @TempDir Path folder) throws Exception {
    try (MailServer server = new MailServer()) {
      Path office = office(folder, server);
      List<CSVRecord> letters = letters(office);
      release(office, letters);
      AtomicReference<Process> victim = new AtomicReference<>();
      Set<String> struck = new TreeSet<>();
      AtomicInteger before = new AtomicInteger();
      server.beforeTaken(mail -> strike(victim.get(), before, struck, mail));
      assertKilled(office, folder, victim);
      AtomicInteger after = new AtomicInteger();
      server.beforeTaken(mail -> {});
      server.afterTaken(mail -> strike(victim.get(), after, struck, mail));
      assertKilled(office, folder, victim);

      BuiltJar.Ended last = BuiltJar.run(BuiltJar.quick(), command(office));

      assertEquals(2, struck.size(), last.output());
      assertEquals(0, last.status(), last.output());
      Map<String, Integer> arrived = new TreeMap<>();
      server.ids().forEach(id -> arrived.merge(id, 1, Integer::sum));
      assertEquals(List.of(), arrived.entrySet().stream().filter(e -> e.getValue() > 1).toList());
      for (String id : struck) {
        assertTrue(last.output().contains(id.substring(1, 33) + " arrived"), last.output());
      }
      assertEquals(2, last.output().lines().filter(l -> l.contains("may have been sent")).count());
      for (CSVRecord letter : letters) {
        String id = "<" + letter.get("content_id") + "@rickyard.invalid>";
        if (!letter.get("to").isEmpty() && !struck.contains(id)) {
          assertEquals(1, arrived.getOrDefault(id, 0), letter.get("letter"));
        }
      }
      assertFalse(arrived.isEmpty());
    }
  }

  private static void assertKilled(Path office, Path folder, AtomicReference<Process> victim)
      throws IOException, InterruptedException {
    victim.set(BuiltJar.start(BuiltJar.quick(), command(office), folder.resolve("log.txt")));
    assertEquals(KILLED, victim.get().waitFor(), () -> "not killed");
  }

  /** Kills the program at the second message that comes to this hook, once. */
  private static void strike(
      Process victim, AtomicInteger come, Set<String> struck, MimeMessage mail) {
    if (come.incrementAndGet() == 2) {
      struck.add(MailServer.id(mail));
      victim.destroyForcibly();
      try {
        victim.waitFor();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
