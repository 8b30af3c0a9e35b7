package rickyard.second;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import rickyard.core.advice.AdviceContext;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.HorseAdviser;
import rickyard.core.nutrition.Horse;

/**
 * Times the search for proposals, never as a test: computing time of one thread, so that others on
 * the machine do not count.
 *
 * <p>{@code ProposalBench ITEMS HORSES [SAMPLE]}: an office of so many lots and feeds and so many
 * horses; of a large one only every so many-th horse is advised, as many as SAMPLE. It prints what
 * the making of the context took, proposals a second, and of the horses with proposals the median
 * and the worst.
 */
public final class ProposalBench {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final long SEED = 99;
  private static final int WARM_UP = 60;

  private ProposalBench() {}

  public static void main(String[] args) throws IOException {
    int items = Integer.parseInt(args[0]);
    int horses = Integer.parseInt(args[1]);
    int sample = args.length > 2 ? Integer.parseInt(args[2]) : horses;
    Path folder = Files.createTempDirectory("bench");
    advise(RemedyOffice.context(new RemedyYard(SEED, 8, WARM_UP), folder.resolve("warm")), 1);
    RemedyYard yard = yard(items, horses);
    long begun = THREADS.getCurrentThreadCpuTime();
    AdviceContext context = RemedyOffice.context(yard, folder.resolve("office"));
    double made = (THREADS.getCurrentThreadCpuTime() - begun) / 1e9;
    print(yard.items(), horses, made, advise(context, Math.max(1, horses / sample)));
  }

  /** The first office of that size: how many feeds there are hangs on its seed. */
  private static RemedyYard yard(int items, int horses) {
    for (long seed = SEED; ; seed++) {
      int feeds = new RemedyYard(seed, 2, 0).items() - 2;
      if (feeds >= 6 && feeds < items - 2) {
        return new RemedyYard(seed, items - feeds, horses);
      }
    }
  }

  private record Timed(double millis, int proposals) {}

  private static List<Timed> advise(AdviceContext context, int every) {
    HorseAdviser adviser = new HorseAdviser(context);
    List<Timed> timed = new ArrayList<>();
    List<Horse> horses = List.copyOf(context.horses().values());
    for (int i = 0; i < horses.size(); i += every) {
      long begun = THREADS.getCurrentThreadCpuTime();
      HorseAdvice advice = adviser.advise(horses.get(i));
      double millis = (THREADS.getCurrentThreadCpuTime() - begun) / 1e6;
      timed.add(new Timed(millis, advice.proposals().size()));
    }
    return timed;
  }

  private static void print(int items, int horses, double context, List<Timed> timed) {
    double all = timed.stream().mapToDouble(Timed::millis).sum();
    int proposals = timed.stream().mapToInt(Timed::proposals).sum();
    List<Double> searched = new ArrayList<>();
    timed.stream().filter(t -> t.proposals() > 0).forEach(t -> searched.add(t.millis()));
    Collections.sort(searched);
    System.out.printf(
        Locale.ROOT,
        "%d items, %d horses, %d advised: context %.2f s; %.1f ms a horse; %d proposals, %.1f a"
            + " second; of %d horses with proposals median %.1f ms, worst %.1f ms%n",
        items,
        horses,
        timed.size(),
        context,
        all / timed.size(),
        proposals,
        1000 * proposals / all,
        searched.size(),
        searched.get(searched.size() / 2),
        searched.get(searched.size() - 1));
  }
}
