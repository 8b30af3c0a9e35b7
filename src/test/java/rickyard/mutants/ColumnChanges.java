package rickyard.mutants;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import rickyard.mutants.Paper.Spot;

/** Alterations of columns and their headings. */
final class ColumnChanges {
  private ColumnChanges() {}

  /** Every figure, or all but the water's, under the other heading. */
  static boolean values(Paper paper, GoodReport report, Random random) {
    List<Site> pairs = report.sites().stream().filter(s -> s.twin().isPresent()).toList();
    boolean some = random.nextInt(3) == 0;
    pairs.stream()
        .filter(s -> !some || random.nextBoolean())
        .forEach(s -> paper.swap(s.value(), s.twin().get()));
    return !pairs.isEmpty();
  }

  static boolean heads(Paper paper, GoodReport report, Random random) {
    Set<List<Spot>> heads =
        report.sites().stream()
            .filter(s -> s.twinHead().isPresent() && s.head().isPresent())
            .map(s -> List.of(s.head().get(), s.twinHead().get()))
            .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    heads.forEach(h -> paper.swap(h.get(0), h.get(1)));
    return !heads.isEmpty();
  }

  static boolean noHeader(Paper paper, GoodReport report, Random random) {
    Optional<Spot> head = headed(report, random).flatMap(Site::head);
    head.ifPresent(h -> paper.lines().get(h.line()).boxes().clear());
    return head.isPresent();
  }

  static boolean noHead(Paper paper, GoodReport report, Random random) {
    Optional<Site> site = headed(report, random);
    Optional<Spot> head =
        random.nextBoolean() ? site.flatMap(Site::head) : site.flatMap(Site::twinHead);
    head.or(() -> site.flatMap(Site::head)).ifPresent(h -> paper.set(h, ""));
    return site.isPresent();
  }

  private static Optional<Site> headed(GoodReport report, Random random) {
    return Draw.site(report, random, s -> s.head().isPresent());
  }

  /** All figures of two samples, or some, change places; the samples' names stay. */
  static boolean samples(Paper paper, GoodReport report, Random random) {
    int count = report.report().samples().size();
    if (count < 2) {
      return false;
    }
    int first = random.nextInt(count);
    int second = (first + 1 + random.nextInt(count - 1)) % count;
    boolean some = random.nextBoolean();
    for (Site site : report.sites()) {
      if (site.sample() == first && (!some || random.nextBoolean())) {
        report.sites().stream()
            .filter(s -> s.sample() == second && s.code().equals(site.code()))
            .findFirst()
            .ifPresent(s -> FigureChanges.exchange(paper, site.value(), s.value()));
      }
    }
    return true;
  }
}
