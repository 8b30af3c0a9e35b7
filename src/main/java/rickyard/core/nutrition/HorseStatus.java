package rickyard.core.nutrition;

/** The state of life that decides which requirement applies. */
public enum HorseStatus {
  MAINTENANCE("maintenance"),
  WORK("work"),
  PREGNANT("pregnant"),
  LACTATING("lactating"),
  GROWING("growing"),
  STALLION("stallion");

  private final String code;

  HorseStatus(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
