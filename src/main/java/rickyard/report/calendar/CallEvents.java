package rickyard.report.calendar;

import biweekly.ICalDataType;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.parameter.Related;
import biweekly.property.Trigger;
import biweekly.util.Duration;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Date;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.report.text.Plain;

/** The calls of the morning as entries of its day, with the number and an alarm. */
final class CallEvents {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
  private static final int ALARM_HOUR = 8;
  private static final int ID_LENGTH = 16;

  private CallEvents() {}

  static boolean isCall(HorseAdvice horse) {
    return horse.priority() == Priority.CALL_NOW || horse.priority() == Priority.CALL_TODAY;
  }

  static VEvent of(HorseAdvice horse, LocalDate asOf, Callers callers) {
    VEvent event = new VEvent();
    event.setUid("call-" + asOf + "-" + id(horse.horse()) + "@rickyard.invalid");
    event.setDateTimeStamp(Date.from(asOf.atStartOfDay(ZoneOffset.UTC).toInstant()));
    event.addExperimentalProperty("DTSTART", ICalDataType.DATE, DAY.format(asOf));
    String when = horse.priority() == Priority.CALL_NOW ? "Call now" : "Call today";
    String who = callers.find(horse.horse()).orElse("no number in the register");
    event.setSummary(when + ": " + callers.name(horse.horse()) + ", " + who);
    event.setDescription(description(horse));
    event.addCategories("call");
    event.setTransparency(Boolean.TRUE);
    event.setSequence(Math.toIntExact(asOf.toEpochDay()));
    Duration morning = Duration.builder().hours(ALARM_HOUR).build();
    event.addAlarm(VAlarm.display(new Trigger(morning, Related.START), when));
    return event;
  }

  private static String description(HorseAdvice horse) {
    List<String> lines = new ArrayList<>();
    lines.add(Plain.sentence(horse.say()));
    lines.add(Plain.sentence(horse.reason()));
    lines.removeIf(String::isEmpty);
    return String.join("\n", lines);
  }

  private static String id(String horse) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(horse.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash).substring(0, ID_LENGTH);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
