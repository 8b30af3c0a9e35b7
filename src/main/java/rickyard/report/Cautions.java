package rickyard.report;

import java.util.List;

/** The sentences that stand wherever a decision is read. */
public final class Cautions {
  /** Said of a horse whose amounts only a veterinarian's plan may show. */
  public static final String VET_FIRST =
      "Vet first: this horse has acute laminitis on record and no veterinary plan. No amounts are"
          + " shown.";

  private static final List<String> ALL =
      List.of(
          "Feeding advice, not a diagnosis.",
          "Signs of laminitis or colic: call the veterinarian first.",
          "Local rules and licensed practice prevail.");

  private Cautions() {}

  /** All of them, in the order of reading. */
  public static List<String> all() {
    return ALL;
  }
}
