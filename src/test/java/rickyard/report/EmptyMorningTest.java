package rickyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

/** A morning without lots is written without the library that counts them. */
class EmptyMorningTest {

  /** Loads everything anew and notes each class of the library that is asked for. */
  private static final class Watching extends URLClassLoader {
    private final List<String> counting = new CopyOnWriteArrayList<>();

    Watching(URL[] urls) {
      super(urls, ClassLoader.getPlatformClassLoader());
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      if (name.startsWith("tech.tablesaw.")) {
        counting.add(name);
      }
      return super.loadClass(name, resolve);
    }
  }

  /** Called by name in the other loader. */
  public static final class Run {
    private Run() {}

    public static void empty() {
      Outputs.of(SampleView.empty(), Set.of(Outputs.DATA, Outputs.PAGE));
    }

    public static void full() {
      Outputs.of(SampleView.of(2, 3), Set.of(Outputs.DATA, Outputs.PAGE));
    }
  }

  private static List<String> loadedBy(String method) throws Exception {
    URL[] urls =
        Arrays.stream(System.getProperty("java.class.path").split(java.io.File.pathSeparator, -1))
            .map(
                entry -> {
                  try {
                    return Path.of(entry).toUri().toURL();
                  } catch (java.net.MalformedURLException e) {
                    throw new IllegalArgumentException(entry, e);
                  }
                })
            .toArray(URL[]::new);
    try (Watching loader = new Watching(urls)) {
      loader.loadClass(Run.class.getName()).getMethod(method).invoke(null);
      return List.copyOf(loader.counting);
    }
  }

  @Test
  void anEmptyMorningLoadsNoneOfIt() throws Exception {
    assertEquals(List.of(), loadedBy("empty"));
  }

  @Test
  void aMorningWithLotsDoes() throws Exception {
    assertTrue(
        loadedBy("full").contains("tech.tablesaw.api.Table"), "the watch sees what it is for");
  }
}
