package rickyard.core.season;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rickyard.core.forage.LotTest;

/** The laboratories of many tests, each under one of the spellings that its reports print. */
public final class Laboratories {
  private final Map<String, Laboratory> byKey = new TreeMap<>();

  /** The spelling printed most often stands for all; of several the first of the alphabet. */
  Laboratories(List<String> printed) {
    Map<String, Map<String, Integer>> spellings = new TreeMap<>();
    for (String name : printed) {
      spellings
          .computeIfAbsent(Laboratory.key(name), k -> new TreeMap<>())
          .merge(name, 1, Integer::sum);
    }
    spellings.forEach((key, names) -> byKey.put(key, new Laboratory(key, mostOften(names))));
  }

  /** The laboratories of all these tests. */
  public static Laboratories of(List<LotTest> tests) {
    return new Laboratories(tests.stream().map(LotTest::lab).toList());
  }

  private static String mostOften(Map<String, Integer> names) {
    String best = "";
    int most = 0;
    for (Map.Entry<String, Integer> name : names.entrySet()) {
      if (name.getValue() > most) {
        best = name.getKey();
        most = name.getValue();
      }
    }
    return best;
  }

  /** The laboratory that prints this name. */
  public Laboratory get(String printed) {
    return byKey.getOrDefault(Laboratory.key(printed), Laboratory.of(printed));
  }
}
