package rickyard.intake.grid.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * How the lines of a text are divided: by one of the usual delimiters, by runs of spaces, or not at
 * all. Judged over all lines: how many are divided, how alike neighbours are, and how clean the
 * fields come out. A decimal comma makes the comma look like a delimiter; the fields betray it.
 */
enum Layout {
  SEMICOLON(';'),
  TAB('\t'),
  PIPE('|'),
  COMMA(','),
  /** Columns by position. */
  LISTING(' ');

  private static final int LINES = 2000;
  private static final double LEAST = 0.3;
  private static final Pattern NUMBER = Pattern.compile("[<>≤≥~]?\\s*[-+−]?\\d[\\d.,' ]*\\s*%?");

  /** A line drawn with characters, as around and between rows. */
  static final Pattern RULED = Pattern.compile("[-=_+|:*~ \\t]{3,}");

  private static final Pattern INNER_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
  private static final Pattern POINTED = Pattern.compile("[<>]?\\s*\\d+\\.\\d+");
  private static final Pattern WORDS = Pattern.compile(" +");
  private static final Pattern DECIMAL = Pattern.compile("[^,;|\\d]*\\d+,\\d+[^,;|]*[,;]?");
  private static final String OTHERS = ";\t|,";
  private static final Pattern GAP = Pattern.compile("\\S {2,}\\S");

  private final char mark;

  Layout(char mark) {
    this.mark = mark;
  }

  /** The delimiter; meaningless for {@link #LISTING}. */
  char mark() {
    return mark;
  }

  /** The layout that explains the lines best. */
  static Layout of(List<String> lines) {
    List<String> told =
        lines.stream()
            .filter(l -> !l.isBlank() && !RULED.matcher(l).matches())
            .limit(LINES)
            .toList();
    Layout best = LISTING;
    double bestScore = Math.max(LEAST, LISTING.score(told));
    for (Layout each : List.of(SEMICOLON, TAB, PIPE, COMMA)) {
      double score = each.score(told);
      if (score > bestScore * (best == LISTING ? 1 : 1.02)) {
        best = each;
        bestScore = score;
      }
    }
    return best;
  }

  /** From 0 to 1. */
  double score(List<String> lines) {
    int divided = 0;
    int alike = 0;
    int fields = 0;
    int clean = 0;
    int before = -1;
    boolean doubtful = this == COMMA && !hasHead(lines) && !hasPoint(lines);
    for (String line : lines) {
      List<String> split = split(line);
      int width = split.size();
      divided += width > 1 ? 1 : 0;
      alike += width > 1 && width == before ? 1 : 0;
      before = width;
      if (width > 1) {
        boolean mayBeDecimal = this == COMMA && mayBeDecimal(line, doubtful);
        for (String field : split) {
          fields += field.isBlank() ? 0 : 1;
          clean += !field.isBlank() && !mayBeDecimal && isClean(field.strip()) ? 1 : 0;
        }
      }
    }
    if (divided == 0) {
      return 0;
    }
    double share = (double) divided / lines.size();
    double likeness = divided < 2 ? 0.5 : (double) alike / (divided - 1);
    double purity = fields == 0 ? 1 : (double) clean / fields;
    return share * (0.4 + 0.6 * likeness) * purity * purity;
  }

  /** Whether a line of names is divided as most lines are. */
  private boolean hasHead(List<String> lines) {
    int usual = usualWidth(lines);
    return usual > 1 && lines.stream().anyMatch(line -> isHead(line, usual));
  }

  private boolean isHead(String line, int usual) {
    List<String> fields = split(line);
    return fields.size() == usual
        && !line.contains(", ")
        && !INNER_COMMA.matcher(line).find()
        && fields.stream().allMatch(f -> f.isBlank() || Character.isLetter(f.strip().charAt(0)));
  }

  /** Whether some field is a figure with a decimal point: then no comma is one. */
  private boolean hasPoint(List<String> lines) {
    return lines.stream()
        .flatMap(line -> split(line).stream())
        .anyMatch(field -> POINTED.matcher(field.strip()).matches());
  }

  /**
   * Whether a comma between digits may be a decimal comma: no point stands in either figure, and
   * either no head tells of columns or a name with a colon stands before it.
   */
  private boolean mayBeDecimal(String line, boolean headless) {
    if (line.indexOf('"') >= 0) {
      return false;
    }
    List<String> fields = split(line);
    for (int at = 1; at < fields.size(); at++) {
      String pair = fields.get(at - 1) + mark + fields.get(at);
      boolean named = fields.get(at - 1).indexOf(':') >= 0 || fields.get(at - 1).indexOf('=') >= 0;
      if ((headless || named) && pair.indexOf('.') < 0 && INNER_COMMA.matcher(pair).find()) {
        return true;
      }
    }
    return false;
  }

  private boolean isClean(String field) {
    if (NUMBER.matcher(field).matches()) {
      return true;
    }
    if (this != LISTING && GAP.matcher(field).find()) {
      return false;
    }
    for (String word : WORDS.split(field, -1)) {
      if (!isCleanWord(word)) {
        return false;
      }
    }
    return true;
  }

  /**
   * A comma or semicolon at the end of a word is ordinary, a decimal comma too; a mark between
   * words without a space looks like a delimiter that was overlooked.
   */
  private boolean isCleanWord(String word) {
    for (int at = 0; at < word.length(); at++) {
      char c = word.charAt(at);
      if (OTHERS.indexOf(c) < 0 || c == mark) {
        continue;
      }
      boolean last = at == word.length() - 1;
      boolean ordinary = (c == ',' || c == ';') && last && at > 0 && this != LISTING;
      if (!ordinary && !DECIMAL.matcher(word).matches()) {
        return false;
      }
    }
    return true;
  }

  /** Fields of one line: quotes kept together, trimmed ends ignored. */
  private List<String> split(String line) {
    if (this == LISTING && line.indexOf('\t') >= 0) {
      // A tab is a delimiter before it is a run of spaces.
      return List.of(line);
    }
    if (this == LISTING) {
      return Listing.pieces(line).stream().map(Listing.Piece::text).toList();
    }
    List<String> fields = new ArrayList<>();
    boolean quoted = false;
    StringBuilder field = new StringBuilder();
    for (int at = 0; at < line.length(); at++) {
      char c = line.charAt(at);
      if (c == '"' && (quoted || field.toString().isBlank())) {
        quoted = !quoted;
      } else if (c == mark && !quoted) {
        fields.add(field.toString());
        field.setLength(0);
      } else {
        field.append(quoted && OTHERS.indexOf(c) >= 0 ? ' ' : c);
      }
    }
    fields.add(field.toString());
    return fields;
  }

  /** The most frequent number of fields above one among the lines; 0 where none is divided. */
  int usualWidth(List<String> lines) {
    Map<Integer, Integer> counts = new TreeMap<>();
    for (String line : lines) {
      int width = split(line).size();
      if (width > 1) {
        counts.merge(width, 1, Integer::sum);
      }
    }
    int usual = 0;
    int most = 0;
    for (Map.Entry<Integer, Integer> each : counts.entrySet()) {
      if (each.getValue() >= most) {
        most = each.getValue();
        usual = each.getKey();
      }
    }
    return usual;
  }
}
