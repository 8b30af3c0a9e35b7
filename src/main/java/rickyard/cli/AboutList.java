package rickyard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rickyard.report.about.AboutCard;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;
import rickyard.report.text.Harmless;

/** A card in half a screen, or what a name may mean as a list; both as a table too. */
final class AboutList {
  private static final int LABEL = 10;

  private static final List<String> COLUMNS =
      List.of(
          "kind",
          "id",
          "name",
          "client",
          "phone",
          "verdict",
          "limit_id",
          "value",
          "u",
          "p_over",
          "told",
          "hay_days",
          "words");

  private AboutList() {}

  static List<String> of(List<AboutCard> cards) {
    return cards.size() == 1 ? card(cards.get(0)) : several(cards);
  }

  private static List<String> card(AboutCard card) {
    String key = card.name().equals(card.id()) ? "" : " (" + card.id() + ")";
    String phone = card.phone().isBlank() ? "no number" : card.phone();
    String owner = card.client().isBlank() || card.client().equals(card.id()) ? "" : card.client();
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Wrapped.lines(
            Harmless.line(
                card.kind()
                    + " "
                    + card.name()
                    + key
                    + "   "
                    + (owner.isEmpty() ? "" : owner + ", ")
                    + phone)));
    for (AboutCard.Line line : card.lines()) {
      String label = Wrapped.cut(line.label(), LABEL - 1);
      List<String> words = Wrapped.column(line.words(), Wrapped.WIDTH - LABEL);
      lines.add(String.format("%-" + LABEL + "s%s", label, words.get(0)));
      words.stream().skip(1).forEach(w -> lines.add(" ".repeat(LABEL) + w));
    }
    return lines;
  }

  private static List<String> several(List<AboutCard> cards) {
    List<String> lines = new ArrayList<>();
    lines.add("That means " + cards.size() + "; ask again with the key:");
    for (AboutCard card : cards) {
      lines.add(
          String.format(
                  "%-7s %-16s %-24s %-14s %s",
                  card.kind(),
                  Wrapped.cut(card.id(), 16),
                  Wrapped.cut(Harmless.line(card.name()), 24),
                  Wrapped.cut(card.kind().equals("client") ? "" : card.client(), 14),
                  Wrapped.cut(Harmless.line(card.phone()), 15))
              .stripTrailing());
    }
    return lines;
  }

  static Table table(List<AboutCard> cards) {
    return new Table("about.csv", COLUMNS, cards.stream().map(AboutList::row).toList());
  }

  private static List<Field> row(AboutCard card) {
    return List.of(
        Field.text(card.kind()),
        Field.text(card.id()),
        Field.text(card.name()),
        Field.text(card.client()),
        Field.text(card.phone()),
        Field.text(card.verdict()),
        Field.text(card.limitId()),
        Field.number(card.value()),
        Field.number(card.u()),
        Field.number(card.pOver()),
        Field.text(card.told()),
        Field.number(card.hayDays()),
        Field.text(
            card.lines().stream()
                .map(l -> l.label() + ": " + l.words())
                .collect(Collectors.joining("\n"))));
  }
}
