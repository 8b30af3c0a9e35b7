package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Portion;
import rickyard.core.remedy.MassUnit;

/** A ration that a client accepted, as the value of a decision gives it. */
sealed interface AcceptedRation {
  /** {@code ITEM [BATCH] [SHARE %]}. */
  Pattern SHARE =
      Pattern.compile("(?<item>\\S+)(?:\\s+(?<batch>[^\\s%]+))??(?:\\s+(?<share>[0-9]{1,3}) ?%)?");

  /** {@code ITEM [BATCH] AMOUNT kg}; several with {@code ;} between. */
  Pattern AMOUNT =
      Pattern.compile(
          "(?<item>\\S+)(?:\\s+(?<batch>\\S+))??\\s+(?<amount>[0-9]{1,3}(?:\\.[0-9]{1,9})?) ?(?<unit>kg|lb)");

  /** What it is, without amounts. */
  String words();

  /** The ration as it is accepted, from the one that would be fed without. */
  List<Portion> applied(List<Portion> portions, Larder larder);

  /** The ration of a value; empty if it is none or names what no register knows. */
  static Optional<AcceptedRation> parse(String value, Larder larder) {
    String text = value.strip();
    Optional<AcceptedRation> whole = whole(text, larder);
    return whole.isPresent() ? whole : share(text, larder);
  }

  private static Optional<AcceptedRation> share(String text, Larder larder) {
    Matcher value = SHARE.matcher(text);
    if (!value.matches()) {
      return Optional.empty();
    }
    double share =
        Optional.ofNullable(value.group("share")).map(Double::parseDouble).orElse(100.0) / 100;
    return share > 0 && share <= 1
        ? food(value, larder).map(food -> new ShareOfHay(food, share))
        : Optional.empty();
  }

  private static Optional<AcceptedRation> whole(String text, Larder larder) {
    List<Amount> amounts = new ArrayList<>();
    for (String part : text.split(";", -1)) {
      Matcher value = AMOUNT.matcher(part.strip());
      Optional<Foodstuff> food = value.matches() ? food(value, larder) : Optional.empty();
      if (food.isEmpty()) {
        return Optional.empty();
      }
      MassUnit unit = MassUnit.named(value.group("unit"));
      amounts.add(new Amount(food.get(), Double.parseDouble(value.group("amount")) * unit.kg()));
    }
    return Optional.of(new Whole(amounts));
  }

  private static Optional<Foodstuff> food(Matcher value, Larder larder) {
    return larder.find(value.group("item"), Optional.ofNullable(value.group("batch")).orElse(""));
  }

  /**
   * An item in the place of a share of the hay, at equal dry matter.
   *
   * @param food what takes its place
   * @param share of the dry matter of the hay, in (0, 1]
   */
  record ShareOfHay(Foodstuff food, double share) implements AcceptedRation {
    @Override
    public String words() {
      return String.format(Locale.ROOT, "%s for %.0f %% of the hay", food.key(), 100 * share);
    }

    @Override
    public List<Portion> applied(List<Portion> portions, Larder larder) {
      List<Portion> changed = new ArrayList<>();
      for (Portion portion : portions) {
        boolean isHay =
            portion.asForage()
                && larder.findLot(portion.food().id()).isPresent()
                && !portion.food().key().equals(food.key());
        if (!isHay) {
          changed.add(portion);
          continue;
        }
        if (share < 1) {
          changed.add(portion.withKg(portion.kgAsFed() * (1 - share)));
        }
        Portion taken = portion.withKg(portion.kgAsFed() * share);
        changed.add(ComingRation.atEqualDryMatter(taken, food));
      }
      return List.copyOf(changed);
    }
  }

  /** An item of a whole ration, kg as fed per day. */
  record Amount(Foodstuff food, double kg) {}

  /**
   * Every item with its amount; what is not named is fed no more.
   *
   * @param amounts at least one
   */
  record Whole(List<Amount> amounts) implements AcceptedRation {
    public Whole {
      amounts = List.copyOf(amounts);
    }

    @Override
    public String words() {
      return amounts.stream()
          .filter(a -> a.kg() > 0)
          .map(a -> a.food().key())
          .collect(Collectors.joining(", ", "a ration of ", ""));
    }

    @Override
    public List<Portion> applied(List<Portion> portions, Larder larder) {
      return amounts.stream().filter(a -> a.kg() > 0).map(a -> portion(a, portions)).toList();
    }

    /** An item that is fed already is fed on in the same way. */
    private static Portion portion(Amount amount, List<Portion> portions) {
      return portions.stream()
          .filter(p -> p.food().key().equals(amount.food().key()))
          .findFirst()
          .map(p -> p.withKg(amount.kg()))
          .orElseGet(() -> Portion.of(amount.food(), amount.kg(), amount.food().isForage()));
    }
  }
}
