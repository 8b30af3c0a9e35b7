package rickyard.core.remedy.share;

/**
 * Hay of one pile for one need.
 *
 * @param need id of the need
 * @param lot of the pile
 * @param client of the pile; empty where it is for anybody
 * @param grams dry matter, above 0
 */
public record Allotment(String need, String lot, String client, long grams) {}
