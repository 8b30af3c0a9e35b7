package rickyard.core.forage;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Which of two reports of one series is the newer, from what they say and never from arrival. */
final class Precedence {
  private static final Pattern SPACES = Pattern.compile("\\s+");

  private final List<Report> series;

  Precedence(List<Report> series) {
    this.series = List.copyOf(series);
  }

  /**
   * Whether {@code a} is certainly newer than {@code b}: it replaces it, has the higher revision,
   * or is the later issue. Evidence that contradicts itself decides nothing.
   */
  boolean isNewer(Report a, Report b) {
    boolean forth = replaces(a, b);
    boolean back = replaces(b, a);
    if (forth || back) {
      return forth && !back;
    }
    int byRevision = byRevision(a, b);
    int byDate = byDate(a, b);
    if (isWithdrawalWithoutNumber(a) != isWithdrawalWithoutNumber(b) && byDate != 0) {
      return byDate > 0;
    }
    return byRevision == 0 ? byDate > 0 : byRevision > 0 && byDate >= 0;
  }

  private static boolean isWithdrawalWithoutNumber(Report report) {
    return report.status() == ReportStatus.WITHDRAWN && report.revision() == 0;
  }

  /** Positive if {@code a} is the later by its revision and status, 0 if they do not tell. */
  private static int byRevision(Report a, Report b) {
    boolean unnumbered =
        (a.status() == ReportStatus.AMENDED && a.revision() == 0 && b.revision() > 0)
            || (b.status() == ReportStatus.AMENDED && b.revision() == 0 && a.revision() > 0);
    if (unnumbered) {
      return 0;
    }
    if (a.status() == ReportStatus.WITHDRAWN && a.revision() == 0) {
      return b.status() == ReportStatus.WITHDRAWN ? 0 : 1;
    }
    if (b.status() == ReportStatus.WITHDRAWN && b.revision() == 0) {
      return -1;
    }
    int byNumber = Integer.compare(a.revision(), b.revision());
    return byNumber != 0 ? byNumber : Integer.compare(rank(a), rank(b));
  }

  private static int rank(Report report) {
    return switch (report.status()) {
      case PRELIMINARY -> 0;
      case FINAL -> 1;
      case AMENDED -> 2;
      case WITHDRAWN -> 3;
    };
  }

  private static int byDate(Report a, Report b) {
    if (a.reportedOn().isEmpty() || b.reportedOn().isEmpty()) {
      return 0;
    }
    return a.reportedOn().get().compareTo(b.reportedOn().get());
  }

  /** Whether {@code a} names {@code b}, or one that names it, as the report it replaces. */
  boolean replaces(Report a, Report b) {
    Set<String> named = new TreeSet<>();
    String next = number(a.replaces());
    String own = number(a.reportNo());
    while (!next.isEmpty() && !next.equals(own) && named.add(next)) {
      if (next.equals(number(b.reportNo()))) {
        return true;
      }
      next = replacedBy(next);
    }
    return false;
  }

  private String replacedBy(String reportNo) {
    return series.stream()
        .filter(r -> number(r.reportNo()).equals(reportNo))
        .map(r -> number(r.replaces()))
        .filter(n -> !n.isEmpty())
        .sorted()
        .findFirst()
        .orElse("");
  }

  static String number(String reportNo) {
    String number = reportNo.strip().toUpperCase(Locale.ROOT);
    boolean spaced = number.chars().anyMatch(c -> c <= ' ');
    return spaced ? SPACES.matcher(number).replaceAll(" ") : number;
  }
}
