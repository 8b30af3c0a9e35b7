package rickyard.registers;

/** A client of the office; contact data stays in the registers and never enters the ledger. */
public record Client(
    String id, String name, String email, String phone, String adviser, String units) {}
