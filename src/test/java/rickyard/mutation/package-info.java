/**
 * The page about changes that no test sees: read from the reports of the mutation tester, with the
 * reasons of those that change nothing. Runs no mutation itself; see profile {@code mutation}.
 */
package rickyard.mutation;
