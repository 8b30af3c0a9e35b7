package rickyard.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import rickyard.ledger.DurableFiles;

/** The demo office inside the program. */
final class DemoOffice {
  private static final String ROOT = "/demo/office/";

  private DemoOffice() {}

  /** Copies inbox and registers; a file that is there with the same content is left alone. */
  static void copyTo(Path office) {
    try {
      Resource[] resources =
          new PathMatchingResourcePatternResolver().getResources("classpath*:demo/office/**");
      for (Resource resource : resources) {
        String url = resource.getURL().toString();
        String path =
            URLDecoder.decode(
                url.substring(url.indexOf(ROOT) + ROOT.length()), StandardCharsets.UTF_8);
        if (!path.isEmpty() && !path.endsWith("/") && resource.isReadable()) {
          copy(resource, office.resolve(path));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void copy(Resource resource, Path target) throws IOException {
    byte[] bytes;
    try (InputStream in = resource.getInputStream()) {
      bytes = in.readAllBytes();
    }
    if (!Files.isRegularFile(target) || !Arrays.equals(Files.readAllBytes(target), bytes)) {
      DurableFiles.write(target, bytes);
    }
  }
}
