package rickyard.cli;

/** The command line of Rickyard. */
public final class Rickyard {
  private Rickyard() {}

  public static void main(String[] args) {
    System.out.println("ok");
  }
}
