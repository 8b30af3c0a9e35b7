package rickyard.core.remedy.share;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;

/**
 * Hay of one lot in one place.
 *
 * @param lot lot id
 * @param client whose horses alone may have it; empty where it is for anybody
 * @param grams dry matter in store, at least 0
 * @param pricePerTonneDm money per tonne of dry matter; 0 for hay that is the client's already,
 *     empty where nobody gave a price
 */
public record Pile(String lot, String client, long grams, OptionalDouble pricePerTonneDm) {

  public Pile {
    requireNonNull(lot, "lot");
    requireNonNull(client, "client");
    if (grams < 0) {
      throw new IllegalArgumentException("a pile must be >= 0 g, was " + grams);
    }
    if (pricePerTonneDm.isPresent() && !(pricePerTonneDm.getAsDouble() >= 0)) {
      throw new IllegalArgumentException("a price must be >= 0, was " + pricePerTonneDm);
    }
  }

  boolean isFor(Need need) {
    return need.may().contains(lot) && (client.isEmpty() || client.equals(need.client()));
  }
}
