package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

/**
 * What a role of a feed or a material of a lot means for the diet.
 *
 * @param role the register's word
 * @param isForage whether it counts as forage
 * @param isStraw whether it counts as straw
 * @param silenceIsZero whether a content that is not declared counts as none; else it is unknown
 * @param source table row
 */
public record FeedRole(
    String role, boolean isForage, boolean isStraw, boolean silenceIsZero, Source source) {
  public FeedRole {
    requireNonNull(role, "role");
    requireNonNull(source, "source");
  }
}
