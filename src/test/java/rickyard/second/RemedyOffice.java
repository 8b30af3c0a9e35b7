package rickyard.second;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.advice.AdviceContext;
import rickyard.core.advice.Consumption;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.HorseAdviser;
import rickyard.core.advice.Larder;
import rickyard.core.advice.Scales;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.Analysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.Lot;
import rickyard.core.forage.Subject;
import rickyard.core.judgement.LotJudge;
import rickyard.core.judgement.LotRules;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.remedy.MassUnit;
import rickyard.registers.LoadContext;
import rickyard.registers.Loaded;
import rickyard.registers.Office;
import rickyard.registers.Registers;
import rickyard.tables.JudgementTables;
import rickyard.tables.NutritionTables;
import rickyard.tables.RemedyTables;
import rickyard.tables.UncertaintyTable;

/** A random remedy yard as the program advises on it: from the register text to the proposals. */
final class RemedyOffice {
  private static final String CLIENTS =
      "client_id,name,email,phone,adviser,units\n"
          + "client1,One,one@one.example,555-0001,a,\n"
          + "client2,Two,two@two.example,555-0002,a,lb\n";
  private static final FeedingStandards STANDARDS = NutritionTables.load().standards();
  private static final JudgementTables JUDGEMENT = JudgementTables.load(Optional.empty());
  private static final RemedyTables REMEDY = RemedyTables.load(Optional.empty());
  private static final AnalysisMaker ANALYSES =
      new AnalysisMaker(UncertaintyTable.load(Optional.empty()).uncertainties());

  private RemedyOffice() {}

  /** Writes the registers and makes what advice rests on. */
  static AdviceContext context(RemedyYard yard, Path folder) throws IOException {
    Path registers = Files.createDirectories(folder);
    Files.writeString(registers.resolve("clients.csv"), CLIENTS);
    Files.writeString(registers.resolve("horses.csv"), yard.horses);
    Files.writeString(registers.resolve("lots.csv"), yard.lots);
    Files.writeString(registers.resolve("feeds.csv"), yard.feeds.text);
    Files.writeString(registers.resolve("deliveries.csv"), yard.deliveries);
    Files.writeString(registers.resolve("rations.csv"), yard.rations);
    Loaded loaded = Registers.load(registers, LoadContext.of(RandomYard.DAY));
    if (!loaded.isClean()) {
      throw new IllegalStateException(loaded.fatal() + " " + loaded.badRows());
    }
    return context(yard, loaded.requireUsable());
  }

  private static AdviceContext context(RemedyYard yard, Office office) {
    List<Analysis> analyses = new ArrayList<>();
    SortedMap<String, List<Verdict>> verdicts = new TreeMap<>();
    LotRules rules = JUDGEMENT.lotRules();
    for (Lot lot : office.lots().values()) {
      RandomSheet sheet = yard.sheets.get(lot.id());
      if (sheet == null) {
        verdicts.put(lot.id(), LotJudge.unanalysed("no report", rules));
      } else {
        AccountedAnalysis made = ANALYSES.make(sheet.sample(lot.id()), Subject.ofLot(lot, ""));
        analyses.add(made.analysis());
        verdicts.put(lot.id(), LotJudge.judge(made, rules));
      }
    }
    Larder larder = new Larder(new TreeMap<>(office.lots()), office.feeds(), analyses, STANDARDS);
    return new AdviceContext(
        RandomYard.DAY,
        larder,
        new TreeMap<>(office.horses()),
        office.rations(),
        office.deliveries(),
        office.measures(),
        List.of(),
        STANDARDS,
        JUDGEMENT.conditions(),
        JUDGEMENT.limits(),
        verdicts,
        new TreeMap<>(),
        new TreeMap<>(),
        new TreeSet<>(),
        new TreeSet<>(),
        new TreeSet<>(),
        new TreeMap<>(),
        REMEDY.settings(),
        new Scales(
            yard.isKg ? MassUnit.KG : MassUnit.LB, new TreeMap<>(Map.of("client2", MassUnit.LB))),
        Consumption.perDay(
            office.horses().values(),
            office.rations(),
            office.deliveries(),
            office.measures(),
            larder,
            STANDARDS,
            RandomYard.DAY));
  }

  static List<HorseAdvice> advise(AdviceContext context) {
    HorseAdviser adviser = new HorseAdviser(context);
    return context.horses().values().stream().map(adviser::advise).toList();
  }
}
