package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/**
 * The summary with script off: everything that counts is there, nothing offers what cannot work.
 */
class WithoutScriptInBrowser {
  @Test
  void readsAndOpensWithoutScript() {
    try (Chromium browser = Chromium.withoutScript()) {
      browser.wide(1280, 900).go(Demo.file("summary.html"));

      assertFalse(
          browser.one("body").getDomAttribute("class") != null
              && browser.one("body").getDomAttribute("class").contains("with-script"),
          "script ran");
      assertTrue(browser.one("#calls").isDisplayed());
      assertTrue(browser.one(".call .say").isDisplayed());
      assertTrue(browser.one(".call .blank").isDisplayed(), "a line to write on");
      assertFalse(browser.one("#find").isDisplayed());
      assertFalse(browser.one("#told-rows").isDisplayed());
      WebElement horse = browser.one("details[data-entry=horse]");
      browser.click(horse.findElement(By.tagName("summary")));
      assertEquals("true", horse.getDomProperty("open"));
      browser.quiet();
    }
  }
}
