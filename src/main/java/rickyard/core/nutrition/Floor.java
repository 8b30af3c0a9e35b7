package rickyard.core.nutrition;

/** How the forage of a diet stands against the floors of its type. */
public enum Floor {
  FINE("fine"),
  /** Below the usual floor, or below the vet's line with a vet plan on record: said. */
  WARN("warn"),
  /** Below the line that needs a vet plan, and none is on record. */
  NEEDS_VET_PLAN("needs-vet-plan"),
  /** Below what is proposed at all. */
  REFUSE("refuse");

  private final String code;

  Floor(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
