package rickyard.intake.interpret;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.forage.Doubt;

/** What a person must confirm where a program read a picture. */
final class ScanDoubts {
  /** Each figure waits with this code until a person has compared it with the picture. */
  static final String FIGURE = "read-by-ocr";

  /** The whole sample waits with this one: a wrong lot is worse than a wrong figure. */
  static final String NAMES = "names-read-by-ocr";

  private ScanDoubts() {}

  /** The question about names and dates, which holds the sample until it is answered. */
  static Doubt of(SampleDraft draft, Front front, List<Resolved> readings) {
    String names =
        Stream.of(
                said("lot", draft.field("lot")),
                said("sample", draft.field("sample")),
                said("laboratory number", draft.field("lab_no")),
                said("sampled", draft.field("sampled")),
                said("report", front.field("report_no")),
                "status \"" + front.status().code() + "\"")
            .filter(s -> !s.isEmpty())
            .collect(Collectors.joining(", "));
    return new Doubt(
        NAMES,
        "report",
        Optional.empty(),
        "The report was read from a picture: are its names right ("
            + names
            + "; "
            + readings.size()
            + " figures)?",
        List.of("yes", "leave out"),
        "",
        "Programs misread pictures; compare it with the paper.");
  }

  private static String said(String name, String text) {
    return text.isEmpty() ? "" : name + " \"" + text + "\"";
  }
}
