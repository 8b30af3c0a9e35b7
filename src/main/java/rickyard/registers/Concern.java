package rickyard.registers;

/** What a bad row of a register is about, and so what cannot be judged because of it. */
public enum Concern {
  HORSE,
  LOT,
  FEED,
  CLIENT,
  ADVISER,
  ANSWER,
  DECISION
}
