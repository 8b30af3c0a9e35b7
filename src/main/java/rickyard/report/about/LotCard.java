package rickyard.report.about;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import rickyard.core.judgement.Word;
import rickyard.report.about.AboutCard.Line;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.LotRow;
import rickyard.report.view.VerdictRow;

/** The card of a lot. */
final class LotCard {
  private static final String EVERY_HORSE = "all";
  private static final List<String> WORDS = Arrays.stream(Word.values()).map(Word::code).toList();
  private static final Comparator<VerdictRow> WORST_LAST =
      Comparator.<VerdictRow>comparingInt(v -> place(v.verdict()))
          .thenComparingDouble(LotCard::chance)
          .thenComparing(VerdictRow::limitId);

  private final AboutFacts facts;
  private final AboutWords words;

  LotCard(AboutFacts facts) {
    this.facts = facts;
    this.words = new AboutWords(facts);
  }

  /** The card of a lot. */
  AboutCard of(LotRow lot) {
    List<Line> lines = new ArrayList<>();
    Double stock = lot.stockKg();
    AboutWords.add(
        lines,
        "about",
        AboutWords.words(lot.material(), lot.cutting().isBlank() ? "" : "cutting " + lot.cutting())
            + (stock == null ? "" : ", " + facts.mass().words(stock) + " in store"));
    AboutWords.add(lines, "tested", AboutWords.words(lot.lab(), lot.sampledOn()));
    AboutWords.add(lines, "NSC", nsc(lot));
    List<VerdictRow> verdicts = worstOfEachGroup(lot);
    verdicts.forEach(v -> AboutWords.add(lines, group(v.group()), verdict(v)));
    if (verdicts.isEmpty()) {
      AboutWords.add(lines, "verdict", lot.reason());
    }
    lot.assumptions().forEach(a -> AboutWords.add(lines, "note", a));
    List<Hay> hay = new ArrayList<>();
    facts
        .hay()
        .forEach(
            (client, all) ->
                all.stream()
                    .filter(h -> h.lot().equals(lot.lot()))
                    .forEach(
                        h -> {
                          hay.add(h);
                          AboutWords.add(lines, "hay", words.client(client) + ", " + h.words());
                        }));
    eaters(lot.lot()).ifPresent(e -> AboutWords.add(lines, "fed to", e));
    words.due(lines, lot.lot());
    Optional<VerdictRow> worst = verdicts.stream().max(WORST_LAST);
    return new AboutCard(
        "lot",
        lot.lot(),
        lot.lot(),
        lot.holder(),
        words.phone(lot.holder()),
        worst.map(VerdictRow::verdict).orElse(""),
        worst.map(VerdictRow::limitId).orElse(""),
        worst.map(VerdictRow::value).orElse(null),
        worst.map(VerdictRow::u).orElse(null),
        worst.map(VerdictRow::pOver).orElse(null),
        words.told(lot.lot()).map(AboutWords::words).orElse(""),
        AboutWords.days(hay),
        lines);
  }

  /**
   * The worst-placed limit of each group; what holds for every horse only where it is in the way.
   */
  private static List<VerdictRow> worstOfEachGroup(LotRow lot) {
    SortedMap<String, VerdictRow> worst = new TreeMap<>();
    lot.verdicts().stream()
        .filter(v -> v.severity().equals("stop") || v.severity().equals("change"))
        .filter(v -> !v.group().equals(EVERY_HORSE) || !v.verdict().equals("clears"))
        .forEach(v -> worst.merge(v.group(), v, BinaryOperator.maxBy(WORST_LAST)));
    return List.copyOf(worst.values());
  }

  private static int place(String verdict) {
    return WORDS.indexOf(verdict);
  }

  private static double chance(VerdictRow verdict) {
    Double over = verdict.pOver();
    return over == null ? 0 : over;
  }

  private static String verdict(VerdictRow row) {
    return Words.of("verdict", row.verdict())
        + AboutWords.figure(
            row.quantity(),
            Shown.withUncertainty(row.value(), row.u()),
            row.limit(),
            row.unit(),
            row.pOver());
  }

  private String nsc(LotRow lot) {
    return lot.verdicts().stream()
        .filter(v -> v.quantity().equals("nsc_wsc"))
        .findFirst()
        .map(
            v ->
                Words.of("quantity", v.quantity())
                    + " "
                    + Shown.withUncertainty(v.value(), v.u())
                    + " "
                    + Words.of("unit", v.unit()))
        .orElse("");
  }

  private Optional<String> eaters(String lot) {
    List<String> names =
        facts.advice().stream()
            .filter(a -> AboutWords.isFed(a.after(), lot))
            .map(a -> words.name(a.horse()))
            .toList();
    return names.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", names));
  }

  private static String group(String group) {
    return group.equals(EVERY_HORSE) ? "any horse" : group;
  }
}
