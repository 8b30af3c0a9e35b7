/**
 * Groups of horses, the limits they share, the decision rule and its verdicts.
 *
 * <p>Ways in: {@link rickyard.core.judgement.Conditions} for the groups of a horse, {@link
 * rickyard.core.judgement.LotJudge} for a lot, {@link rickyard.core.judgement.Judge} for any other
 * number against a limit. It knows no ration and proposes nothing.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.judgement;
