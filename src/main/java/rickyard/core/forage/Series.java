package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Sorts reports into series: one report with its revisions and what it replaces. */
final class Series {
  private Series() {}

  /** The samples of each series, in the order of arrival; series sorted by their key. */
  static List<List<Held>> of(List<Held> all) {
    Map<String, Set<String>> labsByNumber = new TreeMap<>();
    for (Held held : all) {
      String lab = lab(held.report);
      if (!lab.isEmpty()) {
        labsByNumber
            .computeIfAbsent(Precedence.number(held.report.reportNo()), n -> new TreeSet<>())
            .add(lab);
      }
    }
    Map<String, String> parent = new TreeMap<>();
    for (Held held : all) {
      String own = key(held.report, held.report.reportNo(), labsByNumber);
      join(parent, own, own);
      if (!held.report.replaces().isBlank()) {
        join(parent, own, key(held.report, held.report.replaces(), labsByNumber));
      }
    }
    Map<String, List<Held>> groups = new TreeMap<>();
    for (Held held : all) {
      String own = key(held.report, held.report.reportNo(), labsByNumber);
      groups.computeIfAbsent(root(parent, own), k -> new ArrayList<>()).add(held);
    }
    return new ArrayList<>(groups.values());
  }

  private static String lab(Report report) {
    return report.lab().strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ");
  }

  /** A report without a laboratory's name joins the one laboratory that has its number. */
  private static String key(Report report, String number, Map<String, Set<String>> labsByNumber) {
    String no = Precedence.number(number);
    if (no.isEmpty()) {
      return "document " + report.document();
    }
    String lab = lab(report);
    Set<String> labs = labsByNumber.getOrDefault(no, Set.of());
    if (lab.isEmpty() && labs.size() == 1) {
      lab = labs.iterator().next();
    }
    return "report " + lab + " / " + no;
  }

  private static void join(Map<String, String> parent, String a, String b) {
    String first = root(parent, a);
    String second = root(parent, b);
    String low = first.compareTo(second) <= 0 ? first : second;
    parent.put(first, low);
    parent.put(second, low);
  }

  private static String root(Map<String, String> parent, String key) {
    String now = key;
    String next = parent.getOrDefault(now, now);
    while (!next.equals(now)) {
      now = next;
      next = parent.getOrDefault(now, now);
    }
    return now;
  }

  /** Whether two reports of one sample each are revisions of one another. */
  static boolean areSheetsOfOneSample(Held a, Held b) {
    return !a.key.document().equals(b.key.document())
        && ((!differ(a.sample.labNo(), b.sample.labNo()) && !areSheetsOfOneReport(a, b))
            || sameLabel(a.sample, b.sample)
            || names(a.report, b.report)
            || names(b.report, a.report));
  }

  /** One file for each sample of a report: other labels, other figures, the same revision. */
  private static boolean areSheetsOfOneReport(Held a, Held b) {
    boolean sameLabNo = !a.sample.labNo().isBlank() && !b.sample.labNo().isBlank();
    return !sameLabNo
        && a.report.revision() == b.report.revision()
        && a.report.status() == b.report.status()
        && differ(a.sample.label(), b.sample.label())
        && !SameContent.exactly(a.sample, b.sample);
  }

  private static boolean names(Report newer, Report older) {
    String replaced = Precedence.number(newer.replaces());
    return !replaced.isEmpty()
        && replaced.equals(Precedence.number(older.reportNo()))
        && !replaced.equals(Precedence.number(newer.reportNo()));
  }

  private static boolean sameLabel(Sample a, Sample b) {
    return !a.label().isBlank()
        && !differ(a.label(), b.label())
        && Precedence.number(a.batch()).equals(Precedence.number(b.batch()));
  }

  private static boolean differ(String a, String b) {
    return !a.isBlank() && !b.isBlank() && !Precedence.number(a).equals(Precedence.number(b));
  }
}
