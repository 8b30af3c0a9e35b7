package rickyard.bench;

import org.junit.jupiter.api.Test;

/** Writes docs/benchmarks.md: {@code mvn -P bench verify}, on a machine that does nothing else. */
class PageBench {

  @Test
  void writesThePage() throws Exception {
    Benchmarks.main(
        new String[] {
          System.getProperty("rickyard.bench.times", "5"),
          System.getProperty("rickyard.bench.parts", "a,b,c,e")
        });
  }
}
