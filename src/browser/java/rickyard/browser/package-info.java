/**
 * The page as people meet it: in a real browser, from disk, without a network. Runs with {@code mvn
 * -P browser verify}; needs Debian's chromium and chromium-driver.
 */
package rickyard.browser;
