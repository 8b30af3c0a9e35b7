package rickyard.mutants;

import java.util.Random;

/** The ways in which a good report is altered. */
enum Kind {
  COLUMN_VALUES("figures of as fed and dry matter exchanged", ColumnChanges::values),
  COLUMN_HEADS("headings of as fed and dry matter exchanged", ColumnChanges::heads),
  TIMES_TEN("one line ten times as large", (p, g, r) -> FigureChanges.scaled(p, g, r, 1)),
  A_TENTH("one line a tenth as large", (p, g, r) -> FigureChanges.scaled(p, g, r, -1)),
  NO_HEADER("header row dropped", ColumnChanges::noHeader),
  NO_HEAD("one column heading dropped", ColumnChanges::noHead),
  WATER("moisture and dry matter exchanged", NameChanges::water),
  POINT_MOVED("decimal mark moved by one place", FigureChanges::pointMoved),
  POINT_COMMA("decimal point and comma exchanged", FigureChanges::pointComma),
  NITRATE("NO3 and NO3-N exchanged", NameChanges::nitrate),
  NO_STARCH("starch cell blanked", FigureChanges::noStarch),
  ESC_AS_WSC("ESC named WSC", (p, g, r) -> NameChanges.named(p, g, r, "ESC", "WSC")),
  WSC_AS_ESC("WSC named ESC", (p, g, r) -> NameChanges.named(p, g, r, "WSC", "ESC")),
  ESC_WSC("names of ESC and WSC exchanged", NameChanges::carbohydrates),
  SHIFTED("figures one row up or down against the names", FigureChanges::shifted),
  LOT_LETTER("one character of the lot changed", NameChanges::lotLetter),
  SAMPLES("figures of two samples exchanged", ColumnChanges::samples),
  UNIT("% and g/kg exchanged", UnitChanges::exchanged),
  NO_SENTENCE("sentence of the basis dropped", UnitChanges::noSentence),
  TWICE("a row repeated with another figure", FigureChanges::twice),
  BASIS_WORD("as fed and dry matter exchanged in words", UnitChanges::basisWord),
  NO_DM("line of the dry matter deleted", FigureChanges::noDryMatter),
  LESS_THAN("'<' put or taken away", FigureChanges::lessThan),
  STARCH_WSC("figures of starch and WSC exchanged", FigureChanges::starchWsc),
  NO_UNIT("unit dropped", UnitChanges::dropped);

  /** An alteration. */
  @FunctionalInterface
  interface Alteration {
    /**
     * Alters the paper, a copy of the report's.
     *
     * @return false if the report has nothing to alter in this way
     */
    boolean apply(Paper paper, GoodReport report, Random random);
  }

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // a function without state
  private final Alteration alteration;

  Kind(String words, Alteration alteration) {
    this.words = words;
    this.alteration = alteration;
  }

  String words() {
    return words;
  }

  boolean apply(Paper paper, GoodReport report, Random random) {
    return alteration.apply(paper, report, random);
  }
}
