package rickyard.second;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.advice.AdviceContext;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;

/** Every proposal of seeded random offices, held against the contract by the second computation. */
class RandomRemediesTest {
  private static final int OFFICES = Integer.getInteger("rickyard.offices", 12);
  private static final long SEED = 41_000;

  @TempDir Path folder;

  private final Books books = new Books();
  private final List<String> wrong = new ArrayList<>();
  private final Map<String, Integer> counts = new TreeMap<>();

  @Test
  void everyProposalShownPassesAnIndependentRecheck() throws IOException {
    for (int i = 0; i < OFFICES; i++) {
      RemedyYard yard = new RemedyYard(SEED + i);
      RemedyStable stable = new RemedyStable(books, yard);
      for (HorseAdvice advice :
          RemedyOffice.advise(RemedyOffice.context(yard, folder.resolve("office" + i)))) {
        recheck(SEED + i, yard, stable, advice);
      }
    }
    if (OFFICES > 100) {
      System.out.println(counts);
    }
    for (String kind : List.of("blend", "controlled", "swap", "controlled not enough")) {
      assertTrue(counts.getOrDefault(kind, 0) > OFFICES / 4, () -> "too few to prove: " + counts);
    }
    assertTrue(
        wrong.isEmpty(),
        () ->
            wrong.size()
                + " wrong\n"
                + String.join("\n", wrong.subList(0, Math.min(60, wrong.size()))));
  }

  @Test
  void repeatsAreBitEqualInOneThreadAndInTwo() throws Exception {
    List<AdviceContext> contexts = new ArrayList<>();
    for (int i = 0; i < (OFFICES > 100 ? OFFICES : 6); i++) {
      contexts.add(RemedyOffice.context(new RemedyYard(SEED + i), folder.resolve("same" + i)));
    }
    List<byte[]> alone = new ArrayList<>();
    for (AdviceContext context : contexts) {
      alone.add(bytes(RemedyOffice.advise(context)));
    }
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      List<Callable<byte[]>> tasks = new ArrayList<>();
      contexts.forEach(c -> tasks.add(() -> bytes(RemedyOffice.advise(c))));
      Collections.reverse(tasks);
      List<Future<byte[]>> together = two.invokeAll(tasks);
      for (int i = 0; i < contexts.size(); i++) {
        byte[] second = together.get(contexts.size() - 1 - i).get();
        assertArrayEquals(alone.get(i), second, "seed " + (SEED + i));
      }
    } finally {
      two.shutdown();
    }
  }

  private static byte[] bytes(List<HorseAdvice> advice) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      for (HorseAdvice one : advice) {
        out.writeUnshared(one);
        out.reset();
      }
    }
    return bytes.toByteArray();
  }

  private void recheck(long seed, RemedyYard yard, RemedyStable stable, HorseAdvice advice) {
    Map<String, String> horse = stable.horses().get(advice.horse());
    count("horses");
    if (!advice.problems().isEmpty()) {
      count("problems");
      wrong.add(seed + " " + advice.horse() + " " + advice.problems());
      return;
    }
    if (advice.proposals().isEmpty()) {
      count("nothing proposed, " + advice.priority());
    }
    boolean isKg = yard.isKg && horse.get("client_id").equals("client1");
    Recheck recheck = new Recheck(books, stable, RandomYard.DAY, isKg);
    List<Portioned> now = stable.portions(horse);
    boolean wasHard = false;
    boolean wasShort = false;
    for (Proposal proposal : advice.proposals()) {
      String name = seed + " " + advice.horse() + " " + proposal.rank() + " " + proposal.kind();
      count(proposal.kind() + (proposal.enough() ? "" : " not enough"));
      if (proposal.items().isEmpty()) {
        continue;
      }
      Recheck.Changed changed = changed(stable, now, proposal);
      List<String> objections = new ArrayList<>(recheck.objections(horse, changed));
      boolean isHard = recheck.isHardToChew(horse, changed);
      if (proposal.enough() && isHard != proposal.why().contains("long stem")) {
        objections.add("chewing");
      }
      if (proposal.enough() && wasHard && !isHard) {
        objections.add("chewing rank");
      }
      boolean isShort = recheck.isNewlyShortByReports(horse, now, changed.then());
      if (proposal.enough() && isHard == wasHard && wasShort && !isShort && !isHold(proposal)) {
        objections.add("shortage rank");
      }
      wasShort = proposal.enough() && (isShort || (wasShort && isHard == wasHard));
      wasHard |= proposal.enough() && isHard;
      if (proposal.enough() != objections.isEmpty()) {
        wrong.add(
            name + (proposal.enough() ? " " : " NOT ") + objections + " :: " + proposal.why());
        objections.forEach(o -> count("wrong: " + o.split(" ", -1)[0]));
        if (objections.isEmpty()) {
          count("wrong: no objection");
        }
      }
      newlyShort(name, recheck, horse, now, changed, proposal.why());
      compare(name, proposal, changed);
    }
  }

  private static boolean isHold(Proposal proposal) {
    return proposal.kind().equals("hold");
  }

  /** What a changed ration lacks and today's does not must be said. */
  private void newlyShort(
      String name,
      Recheck recheck,
      Map<String, String> horse,
      List<Portioned> now,
      Recheck.Changed changed,
      String why) {
    SortedMap<String, String> before = recheck.shortOf(horse, now);
    recheck.shortOf(horse, changed.then()).keySet().stream()
        .filter(code -> !before.containsKey(code))
        .forEach(
            code -> {
              count("newly short of something");
              if (!why.matches(".* falls short of [^.]*\\b" + code + "\\b.*")) {
                wrong.add(name + " newly short of " + code + " :: " + why);
              }
            });
  }

  private void compare(String name, Proposal proposal, Recheck.Changed changed) {
    Mixture mixture = new Mixture(books, changed.then().stream().filter(p -> p.kg() > 0).toList());
    if (proposal.diet() == null) {
      wrong.add(name + " has items but no diet");
      return;
    }
    near(name + " DM", proposal.diet().dmKg(), mixture.totalDm());
    Num nsc = mixture.content("NSC_WSC").filter(Num::isBounded).orElse(Num.plain(-1, 0, -1, ""));
    Double best = proposal.diet().nscWscPercent();
    near(name + " NSC", best == null ? -1 : best, nsc.best());
    Double u = proposal.diet().nscWscU();
    near(name + " u", u == null ? -1 : u, nsc.u());
  }

  private void near(String what, double first, double second) {
    if (Math.abs(first - second) > 1e-9 * Math.max(Math.abs(first), Math.abs(second))) {
      wrong.add(what + " " + first + ", second computation " + second);
    }
  }

  private static Recheck.Changed changed(
      RemedyStable stable, List<Portioned> now, Proposal proposal) {
    SortedMap<String, Double> nowKg = new TreeMap<>();
    List<Portioned> then = new ArrayList<>();
    now.forEach(p -> nowKg.merge(p.food().key(), p.kg(), Double::sum));
    for (ProposalItem item : proposal.items()) {
      String key = item.item() + (item.batch().isEmpty() ? "" : " " + item.batch());
      Food food = stable.food(key);
      Portioned fed =
          now.stream()
              .filter(p -> p.food().key().equals(key))
              .findFirst()
              .orElse(new Portioned(food, 0, 0, !food.isForage(), OptionalInt.empty()));
      assertEquals(nowKg.getOrDefault(key, 0.0), item.nowKg(), 1e-9, key + " now");
      then.add(new Portioned(food, item.thenKg(), 0, fed.isBucket(), fed.meals()));
    }
    return new Recheck.Changed(proposal.kind(), nowKg, then);
  }

  private void count(String what) {
    counts.merge(what, 1, Integer::sum);
  }
}
