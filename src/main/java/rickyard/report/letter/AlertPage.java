package rickyard.report.letter;

import java.util.List;

/** An alert as its templates see it. */
public record AlertPage(
    String subject, String intro, List<Call> calls, List<String> notes, String caution) {
  public AlertPage {
    calls = List.copyOf(calls);
    notes = List.copyOf(notes);
  }

  /**
   * A call to one client.
   *
   * @param letter where its draft lies
   */
  public record Call(String client, String phone, List<Item> items, String letter) {
    public Call {
      items = List.copyOf(items);
    }
  }

  /**
   * A horse in a call.
   *
   * @param when now or today, in words
   * @param figure the figure behind it; empty where there is none
   * @param register the row that tells the next morning
   */
  public record Item(
      String horse, String when, String say, String why, String figure, String register) {}
}
