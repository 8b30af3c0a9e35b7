/**
 * What falls due after a morning: tests, hay that runs out, old weights, unanswered questions,
 * shelf lives, horses to look at again. Way in: {@link rickyard.core.advice.due.FollowUps}. It
 * decides no verdict; it only says when somebody has to come back to one.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.advice.due;
