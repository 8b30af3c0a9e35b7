package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.FluentWait;

/**
 * A headless Chromium without a network: every name resolves to nothing and the proxy is a closed
 * door. What the page asks for and what its console says is kept.
 */
final class Chromium implements AutoCloseable {
  private static final Pattern ASKED =
      Pattern.compile("\"method\":\"Network.requestWillBeSent\".*?\"url\":\"([^\"]*)\"");

  private final ChromeDriver driver;

  private Chromium(ChromeDriver driver) {
    this.driver = driver;
  }

  static Chromium withScript() {
    return open(true);
  }

  static Chromium withoutScript() {
    return open(false);
  }

  private static String program(String variable, String usual) {
    String named = System.getenv(variable);
    return named == null ? usual : named;
  }

  private static Chromium open(boolean script) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(program("RICKYARD_CHROMIUM", "/usr/bin/chromium"));
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--host-resolver-rules=MAP * ~NOTFOUND",
        "--proxy-server=127.0.0.1:9",
        "--window-size=1280,900");
    if (!script) {
      options.setExperimentalOption(
          "prefs", Map.of("profile.managed_default_content_settings.javascript", 2));
    }
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, java.util.logging.Level.ALL);
    logs.enable(LogType.PERFORMANCE, java.util.logging.Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(
                Path.of(program("RICKYARD_CHROMEDRIVER", "/usr/bin/chromedriver")).toFile())
            .usingAnyFreePort()
            .build();
    return new Chromium(new ChromeDriver(service, options));
  }

  /** The window as a screen of this many CSS pixels: narrower than a window can be made. */
  Chromium wide(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 500));
    return this;
  }

  /** Opens a file from disk. */
  Chromium go(Path file) {
    driver.get(file.toUri().toString());
    return this;
  }

  ChromeDriver driver() {
    return driver;
  }

  WebElement one(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  /**
   * Presses what can be seen. Entries out of sight are laid out when the page is scrolled to them,
   * so what is pressed may still move after the scroll: it is brought to the middle and pressed
   * when it has come to rest.
   */
  void click(WebElement element) {
    AtomicReference<String> before = new AtomicReference<>("");
    new FluentWait<>(driver)
        .withTimeout(Duration.ofSeconds(10))
        .pollingEvery(Duration.ofMillis(100))
        .withMessage("it rests and nothing lies over it")
        .until(
            d -> {
              String place = middled(element);
              return !place.isEmpty() && place.equals(before.getAndSet(place));
            });
    element.click();
  }

  /** Where it lies once it was scrolled to the middle; empty if a click would meet another. */
  private String middled(WebElement element) {
    return String.valueOf(
        ask(
            "const e = arguments[0];"
                + " e.scrollIntoView({block: 'center', behavior: 'instant'});"
                + " const r = e.getBoundingClientRect();"
                + " const x = r.left + r.width / 2, y = r.top + r.height / 2;"
                + " return e.contains(document.elementFromPoint(x, y)) ? x + ' ' + y : ''",
            element));
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /** What a line of script in the page answers. */
  Object ask(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  long number(String script, Object... arguments) {
    return ((Number) ask("return " + script, arguments)).longValue();
  }

  @SuppressWarnings("unchecked")
  List<String> texts(String script, Object... arguments) {
    return (List<String>) ask(script, arguments);
  }

  /** Presses keys where the focus is. */
  void press(CharSequence... keys) {
    new Actions(driver).sendKeys(keys).perform();
  }

  WebElement focused() {
    return driver.switchTo().activeElement();
  }

  /** Goes on by the tabulator until something that fits has the focus; false if nothing does. */
  boolean tabTo(String selector, int most) {
    for (int i = 0; i < most; i++) {
      press(Keys.TAB);
      if (Boolean.TRUE.equals(
          ask("return document.activeElement.matches(arguments[0])", selector))) {
        return true;
      }
    }
    return false;
  }

  /** Nothing was asked for but the file itself and what stands in it; the console is empty. */
  void quiet() {
    List<String> console = new ArrayList<>();
    for (LogEntry line : driver.manage().logs().get(LogType.BROWSER)) {
      console.add(line.getLevel() + " " + line.getMessage());
    }
    assertEquals(List.of(), console, "console");
    List<String> asked = new ArrayList<>();
    for (LogEntry line : driver.manage().logs().get(LogType.PERFORMANCE)) {
      Matcher m = ASKED.matcher(line.getMessage());
      while (m.find()) {
        if (!m.group(1).startsWith("file:") && !m.group(1).startsWith("data:")) {
          asked.add(m.group(1));
        }
      }
    }
    assertEquals(List.of(), asked, "asked for outside the page");
  }

  /** A picture for people, below target/browser. */
  Path picture(String name) throws IOException {
    Path file = Path.of("target/browser", name + ".png");
    Files.createDirectories(file.getParent());
    Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
    return file;
  }

  /** The page as its own print layout makes it, in inches. */
  byte[] printed(double paperWidth, double paperHeight) {
    Map<String, Object> pdf =
        driver.executeCdpCommand(
            "Page.printToPDF",
            Map.of(
                "paperWidth",
                paperWidth,
                "paperHeight",
                paperHeight,
                "printBackground",
                false,
                "preferCSSPageSize",
                false));
    return Base64.getDecoder().decode((String) pdf.get("data"));
  }

  @Override
  public void close() {
    driver.quit();
  }
}
