package rickyard.mutants;

import java.util.List;
import rickyard.core.forage.Report;

/**
 * A report as it should be, and what the reader makes of it.
 *
 * @param name of the file and the part in it
 * @param kind csv, pdf, html, text
 * @param paper its cells
 * @param sites where its figures stand
 * @param report as read
 */
record GoodReport(String name, String kind, Paper paper, List<Site> sites, Report report) {
  GoodReport {
    sites = List.copyOf(sites);
  }
}
