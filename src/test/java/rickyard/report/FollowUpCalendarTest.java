package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TimeZone;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import rickyard.report.text.Harmless;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.MorningView;

/** The calendar, read by another library than the one that wrote it. */
class FollowUpCalendarTest {
  private static final Set<String> FAMILY = Set.of(Outputs.CALENDAR);

  @Test
  void everyFollowUpIsAnEntryForTheWholeDay() throws Exception {
    MorningView view = SampleView.of(12, 8);
    List<VEvent> events = events(bytes(view));

    assertEquals(view.followUps().size() + calls(view), events.size());
    // due four days before the morning: it stands on the morning's day and says so
    assertEquals("20261124", value(events.get(0), Property.DTSTART));
    assertEquals("Bramble (H1): Weigh Bramble.", value(events.get(0), Property.SUMMARY));
    assertEquals(
        "Due since 2026-11-20.\nThe tape is 14 months old.\nAda Thornbeck, 0555 010 23",
        value(events.get(0), Property.DESCRIPTION));
    assertEquals("20261201", value(events.get(1), Property.DTSTART));
    assertEquals("f-2@rickyard.invalid", value(events.get(1), Property.UID));
    for (VEvent event : events) {
      assertEquals("20261124T000000Z", value(event, Property.DTSTAMP));
      event.validate();
    }
  }

  @Test
  void everyCallIsAnEntryOfTheDayWithTheNumberAndAnAlarm() throws Exception {
    MorningView view = SampleView.of(12, 8);
    List<VEvent> calls =
        events(bytes(view)).stream()
            .filter(e -> value(e, Property.UID).startsWith("call-"))
            .toList();
    assertEquals(calls(view), calls.size());
    assertTrue(!calls.isEmpty());
    VEvent first = calls.get(0);
    assertEquals("20261124", value(first, Property.DTSTART));
    assertEquals(
        "Call now: Bramble (H1), Ada Thornbeck, 0555 010 23", value(first, Property.SUMMARY));
    assertEquals(1, first.getAlarms().size());
    assertEquals(calls.size(), calls.stream().map(e -> value(e, Property.UID)).distinct().count());
  }

  @Test
  void anEmptyMorningHasAnEmptyCalendar() throws Exception {
    assertTrue(events(bytes(SampleView.empty())).isEmpty());
  }

  @Test
  void theSameMorningGivesTheSameBytesInEveryZoneAndLanguage() {
    byte[] first = bytes(SampleView.of(12, 8));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String id :
          List.of("Pacific/Kiritimati", "Pacific/Pago_Pago", "America/Sao_Paulo", "Asia/Gaza")) {
        TimeZone.setDefault(TimeZone.getTimeZone(id));
        Locale.setDefault(Locale.forLanguageTag("th-TH-u-nu-thai-ca-buddhist"));
        assertArrayEquals(first, bytes(SampleView.of(12, 8)), id);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void hostileTextStaysInItsEntryAndNoLineIsTooLong() throws Exception {
    Random random = new Random(11);
    for (int round = 0; round < 200; round++) {
      String about = "seed 11, round " + round;
      int at = round;
      MorningView view =
          SampleView.of(7, 4, t -> HostileNames.next(random, at) + "END:VEVENT\r\nBEGIN:VEVENT");
      byte[] bytes = bytes(view);
      List<VEvent> events = events(bytes);
      assertEquals(view.followUps().size() + calls(view), events.size(), about);
      Set<String> ids = new HashSet<>();
      for (int i = 0; i < view.followUps().size(); i++) {
        FollowUpRow row = view.followUps().get(i);
        assertTrue(ids.add(value(events.get(i), Property.UID)), about);
        String summary = value(events.get(i), Property.SUMMARY);
        assertTrue(
            summary.contains(Harmless.line(row.what())),
            about + " " + summary + " | " + Harmless.line(row.what()));
      }
      for (String line : new String(bytes, UTF_8).split("\r\n", -1)) {
        assertTrue(line.getBytes(UTF_8).length <= 75, about + ": " + line);
        assertTrue(line.chars().noneMatch(c -> c < ' ' && c != '\t'), about + ": " + line);
      }
    }
  }

  private static long calls(MorningView view) {
    return view.horses().stream().filter(h -> h.priority().code().startsWith("call")).count();
  }

  private static byte[] bytes(MorningView view) {
    return requireNonNull(Outputs.of(view, FAMILY).get("follow-ups.ics"));
  }

  private static List<VEvent> events(byte[] bytes) throws Exception {
    Calendar calendar = new CalendarBuilder().build(new ByteArrayInputStream(bytes));
    return calendar.<VEvent>getComponents(Component.VEVENT);
  }

  private static String value(VEvent event, String property) {
    return event.getProperty(property).getValue();
  }
}
