/**
 * A second computation of requirements, diets and verdicts, by other means than the program's.
 *
 * <p>It was written from the written contract: the definitions of the design, the reference texts
 * and the tables under {@code config/}, which it reads by itself as plain text; not from the
 * program's arithmetic. A ration is a vector of amounts, its foods are the columns of a matrix of
 * contents, an uncertainty is a quadratic form with a covariance matrix, and the normal
 * distribution is that of a general-purpose numeric library. The way in is {@link
 * rickyard.second.Books} for the tables, {@link rickyard.second.Mixture} for a diet and {@link
 * rickyard.second.Ruling} for a verdict.
 *
 * <p>Where the contract leaves a choice open, the comment says which reading was taken. What it
 * does not do: words, notes, proposals and changeovers.
 */
package rickyard.second;
