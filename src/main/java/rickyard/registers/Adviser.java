package rickyard.registers;

/**
 * An adviser of the office.
 *
 * @param id as clients.csv names it
 * @param name as people say it
 * @param email where its alerts are sent; empty if not said
 * @param phone that clients may ring; empty if not said
 */
public record Adviser(String id, String name, String email, String phone) {}
