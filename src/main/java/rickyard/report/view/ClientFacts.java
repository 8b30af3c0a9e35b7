package rickyard.report.view;

/** Whom to call; from the register, never from the ledger. */
public record ClientFacts(
    String client, String name, String phone, String email, String adviser, String units) {}
