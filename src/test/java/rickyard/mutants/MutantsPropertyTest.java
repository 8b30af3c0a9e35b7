package rickyard.mutants;

import java.util.*;
import org.junit.jupiter.api.Test;
import java.nio.file.*;
import rickyard.core.forage.*;
import rickyard.fixtures.RandomReports;
import rickyard.intake.interpret.Dictionary;
import rickyard.tables.DictionaryTables;

class MutantsPropertyTest {
  @Test
  void explore() throws Exception {
    Dictionary dictionary = DictionaryTables.load(Optional.empty());
    Reader reader = new Reader(dictionary);
    List<GoodReport> goods = new ArrayList<>();
    RandomReports random = new RandomReports(7);
    for (int i = 0; i < Integer.getInteger("reports", 56); i++) {
      RandomReports.Made made = random.next();
      List<GoodReport> found = reader.reports(made.name(), made.bytes());
      if (found.isEmpty()) System.out.println("UNREAD " + made.name());
      for (GoodReport g : found) { goods.add(g);
        g.report().samples().forEach(s -> { s.doubts().forEach(d -> System.out.println("BASE DOUBT " + g.name() + " " + d.code() + " " + d.question()));
          s.checks().stream().filter(c -> !c.holds()).forEach(c -> System.out.println("BASE CHECK " + g.name() + " " + c)); });
        if (i < 14) System.out.println(g.name() + " " + g.kind() + " samples " + g.report().samples().size() + " readings " + g.report().samples().stream().mapToInt(s -> s.readings().size()).sum() + " sites " + g.sites().size() + " twins " + g.sites().stream().filter(s -> s.twin().isPresent()).count() + " units " + g.sites().stream().filter(s -> s.unit().isPresent()).count() + " printed " + made.figures().size());
      }
    }
    List<Lot> lots = new ArrayList<>(Court.demoLots());
    random.lots().forEach(l -> lots.add(Court.lot(l, "grass-hay")));
    Court court = new Court(dictionary, lots);
    Random r = new Random(11);
    int clears = 0; int total = 0;
    for (GoodReport g : goods) for (Court.Ruling ru : court.judge(List.of(g.report())).rulings().values()) { total++; if (ru.clears().contains("id-nsc-lot")) clears++; }
    System.out.println("lots " + total + " clear ID " + clears);
    Map<Kind, int[]> table = new EnumMap<>(Kind.class);
    long t = System.currentTimeMillis();
    int n = 0;
    for (int round = 0; round < Integer.getInteger("rounds", 2); round++)
    for (GoodReport g : goods) {
      Court.Trial before = court.judge(List.of(g.report()));
      for (Kind k : Kind.values()) {
        Paper p = g.paper().copy();
        if (!k.apply(p, g, r)) continue;
        n++;
        Optional<Report> rep;
        PrintedAs form = null;
        if (g.kind().equals("pdf") || r.nextBoolean()) rep = reader.report(p);
        else { form = p.kind() == rickyard.intake.grid.Grid.Kind.PLACED ? PrintedAs.LINES : List.of(PrintedAs.SEMICOLONS, PrintedAs.TABS, PrintedAs.HTML, PrintedAs.MAILED).get(r.nextInt(4)); rep = reader.report(form, p); }
        Court.Trial after = court.judge(rep.map(List::of).orElse(List.of()));
        Inquest q = Inquest.of(before, after, court);
        table.computeIfAbsent(k, x -> new int[5])[q.fate().ordinal()]++;
        if (q.fate() == Fate.FALSE_CLEAR) System.out.println("FALSE " + k + " " + g.name() + " " + form + " " + q.falseClears() + " wrong " + q.wrong());
      }
    }
    System.out.println(n + " mutants in " + (System.currentTimeMillis() - t) + " ms");
    table.forEach((k, c) -> System.out.println(k + " " + Arrays.toString(c)));
  }
}
