package rickyard.report;

import java.util.Random;

/** Names that want to be something else: markup, formulas, headers, paths, steering characters. */
public final class HostileNames {
  private static final String[] PIECES = {
    "<script>alert(1)</script>",
    "\"><img src=x onerror=alert(1)>",
    "</details></table>",
    "]]>",
    "<!--",
    "-->",
    "&lt;",
    "&#x3c;",
    "&amp;",
    "'",
    "\"",
    "''",
    "\"\"",
    ",",
    ";",
    "\t",
    "\n",
    "\r",
    "\r\n",
    "\u0000",
    "\u001b[31m",
    "\u0007",
    "\u007f",
    "\u0085",
    "\u2028",
    "\u202e",
    "\u2066",
    "\ufeff",
    "\uffff",
    "\ud800",
    "\udc00",
    "=1+1",
    "+44",
    "-2",
    "@SUM(A1)",
    "=HYPERLINK(\"x\")",
    "'=1",
    "''-1",
    "${7*7}",
    "*{x}",
    "__${x}__",
    "[[${x}]]",
    "[(${x})]",
    "~{x::y}",
    "#{x}",
    "@{x}",
    "javascript:x",
    "../../etc",
    "%00",
    "Bräutigam",
    "İıŞ",
    "مرحبا",
    "日本語",
    "\ud83d\udc34",
    "e\u0301",
    "a b",
    "  ",
    "L0",
    "NaN",
    "1e9",
    "null",
    "",
    "|",
    "\\",
    "\\n",
    "$1",
    "{",
    "}",
    "</style>",
    "</title>",
    "</svg>",
    "<svg onload=x>",
    "<a href=javascript:x>",
    "\r\nBcc: x@y.example",
    "\nContent-Type: text/html",
    "=?utf-8?q?=0d=0aBcc:=20x?=",
    "\r\n\r\n.\r\n",
    "--=_all_",
    "a@b.example, c@d.example",
    "C:\\\\con",
    "aux",
    "/"
  };

  private HostileNames() {}

  /** The next one; no two numbers give the same. */
  public static String next(Random random, int number) {
    StringBuilder name = new StringBuilder();
    int pieces = 1 + random.nextInt(4);
    for (int i = 0; i < pieces; i++) {
      name.append(
          random.nextInt(5) == 0
              ? Character.toString(random.nextInt(0x3000))
              : PIECES[random.nextInt(PIECES.length)]);
    }
    return random.nextBoolean() ? name.append(number).toString() : number + name.toString();
  }
}
