package rickyard.report.sheet;

import java.util.stream.Stream;

/** How much stands on a sheet, and so how large its letters can be. */
final class PaperRoom {
  /** Lines that a page holds, in units of a line of small print, for each size of letters. */
  private static final int[] ROOM = {44, 55, 68, 84, 105};

  /** The share of a page that surely fits, whatever its paper. */
  private static final double SURE = 0.75;

  private static final int LINE = 62;
  private static final int NARROW = 30;
  private static final int NAME = 18;

  private PaperRoom() {}

  /** 0 for little to {@link HorsePaper#MOST} for very much; reckoned generously. */
  static int size(HorsePaper paper) {
    double lines = lines(paper);
    for (int size = 0; size < ROOM.length; size++) {
      if (lines <= ROOM[size]) {
        return size;
      }
    }
    return HorsePaper.MOST;
  }

  /** Whether it may be more than a page holds, so that it has to be tried. */
  static boolean isTight(HorsePaper paper) {
    return paper.size() >= ROOM.length || lines(paper) > SURE * ROOM[paper.size()];
  }

  private static double lines(HorsePaper paper) {
    double lines = 5 + 4 * rows(paper.horse(), NAME) + rows(paper.banner(), NAME);
    lines += 1.4 * rows(paper.lead(), LINE);
    for (HorsePaper.Weigh row : paper.weigh()) {
      lines += 2.4 * Math.max(1, rows(row.item(), NAME));
    }
    lines += 1.5 * paper.steps().size();
    lines += paper.steps().isEmpty() ? 0 : 3 + paper.columns().size();
    lines += rows(Stream.of(paper.changeNotes(), paper.missing()).flatMap(l -> l.stream()), LINE);
    lines += rows(paper.officeNotes().stream(), LINE);
    double left = rows(paper.watch().stream(), NARROW);
    double right = rows(Stream.concat(paper.vet().stream(), Stream.of(paper.ring())), NARROW);
    lines += 1.2 * Math.max(left, right);
    return lines + rows(Stream.concat(paper.measured().stream(), Stream.of(paper.meaning())), 90);
  }

  private static int rows(Stream<String> texts, int width) {
    return texts.mapToInt(t -> rows(t, width)).sum();
  }

  private static int rows(String text, int width) {
    return 1 + text.codePointCount(0, text.length()) / width;
  }
}
