package rickyard.report.view;

/**
 * Whom to call; from the register, never from the ledger.
 *
 * @param adviser the key under which its calls are gathered
 * @param adviserName as people call the adviser
 * @param adviserPhone that the client may ring; empty if not said
 */
public record ClientFacts(
    String client,
    String name,
    String phone,
    String email,
    String adviser,
    String units,
    String adviserName,
    String adviserPhone) {

  /** A client whose adviser has no other name than its key. */
  public ClientFacts(
      String client, String name, String phone, String email, String adviser, String units) {
    this(client, name, phone, email, adviser, units, adviser, "");
  }
}
