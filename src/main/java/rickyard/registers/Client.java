package rickyard.registers;

/**
 * A client of the office; contact data stays in the registers and never enters the ledger.
 *
 * @param language of sheets and letters, for example {@code de}; empty if not said
 */
public record Client(
    String id,
    String name,
    String email,
    String phone,
    String adviser,
    String units,
    String language) {

  /** A client who names no language. */
  public Client(String id, String name, String email, String phone, String adviser, String units) {
    this(id, name, email, phone, adviser, units, "");
  }
}
