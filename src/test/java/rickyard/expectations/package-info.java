/**
 * What the decision rule does to plausible hays: makes {@code docs/expectations.md} from the tables
 * in force and holds the page to them.
 */
package rickyard.expectations;
