package rickyard.intake.interpret;

/** What a spelling of {@code config/spellings.csv} stands for. */
public enum Kind {
  /** An analyte; meaning: its code. */
  ANALYTE,
  /** Added to an analyte it makes a figure that never scales and is not taken: '% of CP'. */
  RATIO,
  /** A unit; meaning: its code. */
  UNIT,
  /** A basis where a heading, a unit or a label names it; meaning: af or dm. */
  BASIS,
  /** A basis said in words that stand for themselves in a sentence; meaning: af or dm. */
  STATEMENT,
  /** A method; meaning: nir, wet or calc. */
  METHOD,
  /** What a column holds; meaning: analyte, unit, basis, method, result, lod or foreign. */
  ROLE,
  /** A field of the report's head; meaning: the field's name. */
  FIELD,
  /** The standing of the report; meaning: final, preliminary, amended or withdrawn. */
  STATUS,
  /** A word in place of a figure; meaning: nd, trace or absent. */
  QUALIFIER,
  /** A group of analytes in a note of units; meaning: their codes, or * for the rest. */
  GROUP,
  /** What the report says an open name stands for; meaning: open code and code. */
  DEFINITION,
  /** Words that make a sentence one about the results: 'all results'. */
  SUBJECT,
  /** Words that take something out of a statement: 'except'. */
  EXCEPT,
  /** Words that turn a statement round: 'not'. */
  NOT,
  /** Words that leave a sentence open or make it speak of something else: 'typical', 'may'. */
  HEDGE,
  /** Words of a letterhead: 'laboratory'. */
  LETTERHEAD,
  /** Words without weight. */
  FILLER
}
