/**
 * The smallest change that puts a diet right, and the days over which it is made.
 *
 * <p>The way in is {@link rickyard.core.remedy.RemedySearch#search}. The room proposes; whether a
 * proposal is enough is said by the diet code that judged the ration in the first place, through
 * {@link rickyard.core.remedy.DietCheck}. It computes no requirement and words no verdict.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.remedy;
