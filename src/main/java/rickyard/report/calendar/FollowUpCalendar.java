package rickyard.report.calendar;

import biweekly.ICalDataType;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import rickyard.report.text.Plain;
import rickyard.report.text.Words;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.MorningView;

/**
 * follow-ups.ics: an entry for the whole day for each row of follow-ups.csv. An entry keeps its UID
 * from one morning to the next, so that a calendar that reads the next file moves what it has and
 * doubles nothing; what was due before today stands on today. The calls of the morning stand on its
 * day, with an alarm. Stamps are the morning's day.
 */
public final class FollowUpCalendar {
  private static final String PRODUCT = "-//Rickyard//Follow-ups//EN";

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);

  private FollowUpCalendar() {}

  /** The whole file. */
  public static byte[] bytes(MorningView view) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      write(view, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** Writes the whole file; the stream stays open. */
  public static void write(MorningView view, OutputStream out) throws IOException {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.addExperimentalProperty("X-WR-CALNAME", "Follow-ups");
    Callers callers = new Callers(view);
    view.followUps().forEach(row -> calendar.addEvent(event(row, view.asOf(), callers)));
    view.horses().stream()
        .filter(horse -> CallEvents.isCall(horse))
        .forEach(horse -> calendar.addEvent(CallEvents.of(horse, view.asOf(), callers)));
    ICalWriter writer = new ICalWriter(new FoldedLines(out), ICalVersion.V2_0);
    writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
    writer.write(calendar);
    writer.flush();
  }

  private static VEvent event(FollowUpRow row, LocalDate asOf, Callers callers) {
    LocalDate due = LocalDate.parse(row.due());
    VEvent event = new VEvent();
    event.setUid(text(row.id()) + "@rickyard.invalid");
    event.setDateTimeStamp(Date.from(asOf.atStartOfDay(ZoneOffset.UTC).toInstant()));
    // As text: the library counts a day from midnight in the zone of this machine.
    event.addExperimentalProperty(
        "DTSTART", ICalDataType.DATE, DAY.format(due.isBefore(asOf) ? asOf : due));
    event.setSummary(callers.name(row.about()) + ": " + kind(row) + text(row.what()));
    event.setDescription(description(row, due, asOf, callers));
    event.addCategories(row.kind());
    // A note, not an hour that is taken; a later file takes the place of an earlier one.
    event.setTransparency(Boolean.TRUE);
    event.setSequence(Math.toIntExact(asOf.toEpochDay()));
    return event;
  }

  private static String description(
      FollowUpRow row, LocalDate due, LocalDate asOf, Callers callers) {
    List<String> lines = new ArrayList<>();
    if (due.isBefore(asOf)) {
      lines.add("Due since " + due + ".");
    }
    if (!row.why().isBlank()) {
      lines.add(Plain.sentence(row.why()));
    }
    callers.find(row.about()).ifPresent(lines::add);
    return String.join("\n", lines);
  }

  /** What it is of, where what is to be done does not say so itself. */
  private static String kind(FollowUpRow row) {
    return row.kind().equals("stock") || row.kind().equals("question") || row.kind().equals("trip")
        ? Words.of("followup", row.kind()) + ", "
        : "";
  }

  private static String text(String raw) {
    return Plain.line(raw);
  }
}
