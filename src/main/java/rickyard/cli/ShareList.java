package rickyard.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rickyard.report.csv.ShareTables;
import rickyard.report.csv.Table;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Shown;
import rickyard.report.view.CoOpView;
import rickyard.report.view.RetestRow;
import rickyard.report.view.ShareRow;
import rickyard.report.view.ShortageRow;

/** A sharing as a table for eyes, as CSV and as JSON. */
final class ShareList {
  private static final int VERDICT = Wrapped.WIDTH - 14 - 10 - 14 - 8 - 7 - 10;

  private ShareList() {}

  /** At most 80 columns where ids are short. */
  static String of(CoOpView view, String units) {
    List<String> lines = new ArrayList<>();
    if (view.hasNothing()) {
      lines.add("Nothing to share out: no lot is a co-op's or for sale, or no horse eats hay.");
    } else {
      shares(view, Mass.named(units), lines);
      shortages(view, lines);
      retests(view, Mass.named(units), lines);
      view.notes().forEach(note -> lines.addAll(Wrapped.lines(note)));
    }
    return String.join(System.lineSeparator(), lines) + System.lineSeparator();
  }

  private static void shares(CoOpView view, Mass mass, List<String> lines) {
    lines.add(row("horse", "clear for", "lot", mass.unit() + "/day", "days", "then its diet"));
    for (ShareRow r : view.shares()) {
      Double perDay = r.kgPerDay();
      lines.add(
          row(
              r.horse(),
              r.group().isEmpty() ? "-" : r.group(),
              r.lot().isEmpty() ? "nothing" : r.lot(),
              perDay == null ? "-" : mass.digits(perDay),
              Shown.number(r.days()),
              r.verdict().isEmpty() ? "-" : r.verdict()));
    }
  }

  private static String row(
      String horse, String group, String lot, String perDay, String days, String verdict) {
    return String.format(
            Locale.ROOT,
            "%-14s  %-10s  %-14s  %8s  %7s  %s",
            Wrapped.cut(horse, 14),
            Wrapped.cut(group, 10),
            Wrapped.cut(lot, 14),
            perDay,
            days,
            Wrapped.cut(verdict, VERDICT))
        .stripTrailing();
  }

  private static void shortages(CoOpView view, List<String> lines) {
    lines.add("");
    if (view.shortages().isEmpty()) {
      lines.add("Nothing is short.");
    }
    for (ShortageRow r : view.shortages()) {
      String group = r.group().isEmpty() ? "horses that need no cleared hay" : r.group();
      lines.addAll(Wrapped.lines("Short for " + group + ": " + r.why() + "."));
      lines.addAll(Wrapped.lines("  " + String.join(", ", r.horses())));
    }
  }

  private static void retests(CoOpView view, Mass mass, List<String> lines) {
    if (!view.retests().isEmpty()) {
      lines.add("");
      lines.add("What a second test might free:");
    }
    for (RetestRow r : view.retests()) {
      Double expected = r.expectedKg();
      lines.addAll(
          Wrapped.lines(
              r.rank()
                  + ". "
                  + r.lot()
                  + ": "
                  + mass.words(r.freesKg())
                  + " if it clears, "
                  + (expected == null ? Shown.UNKNOWN : mass.words(expected))
                  + " to be expected; "
                  + r.why()));
    }
  }

  static String csv(CoOpView view, ShareCommand.Part part) {
    Table table =
        switch (part) {
          case SHARE -> ShareTables.share(view);
          case SHORTAGE -> ShareTables.shortage(view);
          case RETESTS -> ShareTables.ranked(view);
        };
    return Shape.csv(table);
  }

  static String json(CoOpView view) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("share", Shape.rows(ShareTables.share(view)));
    all.put("shortage", Shape.rows(ShareTables.shortage(view)));
    all.put("retests", Shape.rows(ShareTables.ranked(view)));
    all.put("notes", view.notes().stream().map(Harmless::line).toList());
    return Shape.json(all);
  }
}
