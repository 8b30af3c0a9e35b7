/**
 * The pages of {@code docs/} that list numbers, written from the tables and the code.
 *
 * <p>{@code mvn -Drickyard.docs.write=true -Dtest=GeneratedDocsTest test} writes them; without the
 * property the test compares.
 */
package rickyard.docs;
