package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
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
