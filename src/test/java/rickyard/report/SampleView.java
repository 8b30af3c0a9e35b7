package rickyard.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import rickyard.core.advice.ChangeoverLine;
import rickyard.core.advice.DietLine;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.HorseQuestion;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.NoteLine;
import rickyard.core.advice.PortionLine;
import rickyard.core.advice.Priority;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;
import rickyard.core.advice.TripLine;
import rickyard.core.advice.TripPlan;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Method;
import rickyard.core.quantity.Unit;
import rickyard.core.season.Course;
import rickyard.core.season.DayValue;
import rickyard.core.season.FieldCourse;
import rickyard.core.season.Laboratory;
import rickyard.core.season.LaboratoryPair;
import rickyard.core.season.LotCourse;
import rickyard.core.season.OverTime;
import rickyard.core.season.OverTimeRules;
import rickyard.core.season.PairedDifference;
import rickyard.core.season.YearValue;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.Counts;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.OutcomeRow;
import rickyard.report.view.PaperLinks;
import rickyard.report.view.QuestionRow;
import rickyard.report.view.RecallRow;
import rickyard.report.view.SeasonLot;
import rickyard.report.view.SeasonView;
import rickyard.report.view.TableRowUsed;
import rickyard.report.view.VerdictRow;

/** Invented mornings to look at and to test with; no figure in them is a reference. */
final class SampleView {
  private static final String[] HORSES = {
    "Bramble",
    "Quill",
    "Tansy",
    "Old Moss",
    "Fennel",
    "Juniper",
    "Pebble",
    "Sorrel",
    "Wick",
    "Hazel",
    "Dapple",
    "Ember"
  };
  private static final String[] CLIENTS = {
    "Ada Thornbeck", "Low Hollow Livery", "M. Ferrier", "Tam & Jo Wether"
  };
  private static final String[] MATERIALS = {
    "grass-hay", "mixed-hay", "haylage", "cereal-hay", "straw"
  };

  private final UnaryOperator<String> text;
  private final int horses;
  private final int lots;

  private SampleView(int horses, int lots, UnaryOperator<String> text) {
    this.horses = horses;
    this.lots = lots;
    this.text = text;
  }

  /** A morning of so many horses and lots. */
  static MorningView of(int horses, int lots) {
    return of(horses, lots, UnaryOperator.identity());
  }

  /** The same with every text that comes from outside put through {@code text}. */
  static MorningView of(int horses, int lots, UnaryOperator<String> text) {
    return new SampleView(horses, lots, text).view();
  }

  /** What a file holds. */
  static byte[] bytes(OutputFile file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      file.write(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** A morning on which nothing came to an office that knows nothing. */
  static MorningView empty() {
    return new MorningView(
        LocalDate.of(2026, 11, 24),
        "kg",
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        "The rule.",
        List.of(),
        new TreeMap<>(),
        new TreeMap<>(),
        new Counts(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
        true,
        SeasonView.none(),
        List.of(),
        List.of(),
        PaperLinks.none());
  }

  private MorningView view() {
    TreeMap<String, HorseFacts> horseFacts = new TreeMap<>();
    TreeMap<String, ClientFacts> clientFacts = new TreeMap<>();
    List<HorseAdvice> advice = new ArrayList<>();
    for (int i = 0; i < horses; i++) {
      String id = horse(i);
      horseFacts.put(id, facts(i));
      advice.add(advice(i));
    }
    for (int i = 0; i < CLIENTS.length; i++) {
      String id = client(i);
      clientFacts.put(
          id,
          new ClientFacts(
              id,
              text.apply(CLIENTS[i]),
              text.apply(i == 2 ? "" : "0555 01" + i + " 23"),
              text.apply("c" + i + "@valley.example"),
              text.apply("R. Adler"),
              "kg"));
    }
    advice.sort(java.util.Comparator.comparing(HorseAdvice::priority));
    List<OutcomeRow> outcomes = outcomes();
    return new MorningView(
        LocalDate.of(2026, 11, 24),
        "kg",
        outcomes,
        analyses(),
        lotRows(),
        advice,
        questions(),
        followUps(),
        List.of(
            new RecallRow(
                lot(1),
                client(0),
                horse(0),
                "2026-11-02",
                "",
                text.apply("Do not open lot L2."),
                "2026-11-20")),
        List.of(
            text.apply(
                "Report 2211 for lot L2 was amended: WSC + starch 9.1 is now 11.9 % of dry"
                    + " matter; what was said on 2026-11-17 is open again.")),
        List.of(
            text.apply(
                "horses.csv, row 9, column \"body_weight_kg\": expected a number above 0, found"
                    + " \"?\"")),
        List.of(text.apply("horses.csv, row 4: the weight is 14 months old.")),
        text.apply(
            "P(over) = Φ((y − L)/u); guard band w = z(risk)·u; clears when y ≤ L − w, exceeds"
                + " when y ≥ L + w, in between it is borderline and not cleared."),
        List.of(
            new TableRowUsed("limits.csv", "1", "9f2c1a7be0d4" + "0".repeat(52), false),
            new TableRowUsed("uncertainties.csv", "1", "0a1b2c3d4e5f" + "0".repeat(52), true)),
        horseFacts,
        clientFacts,
        counts(outcomes),
        false,
        season(),
        List.of(),
        List.of(),
        PaperLinks.none());
  }

  private SeasonView season() {
    List<SeasonLot> found = new ArrayList<>();
    for (int i = 0; i < lots; i++) {
      TreeMap<String, SeasonLot.Content> contents = new TreeMap<>();
      contents.put("NSC_WSC", new SeasonLot.Content(8.1 + i, "% DM"));
      found.add(
          new SeasonLot(
              lot(i),
              text.apply("grass-hay"),
              client(i),
              text.apply("Fellside Forage"),
              "202" + (5 + i % 2),
              "2026-0" + (1 + i % 3),
              contents,
              i % 2 == 0 ? List.of("ID") : List.of(),
              i % 2 == 0 ? List.of() : List.of("ID"),
              List.of("PSSM")));
    }
    Laboratory first = Laboratory.of(text.apply("Brook Vale"));
    Laboratory second = Laboratory.of(text.apply("Fellside Forage"));
    TreeSet<Laboratory> one = new TreeSet<>(List.of(first));
    TreeSet<Laboratory> other = new TreeSet<>(List.of(second));
    DayValue early = new DayValue(LocalDate.of(2026, 3, 1), 8.2, 0.9, 1, one);
    DayValue late = new DayValue(LocalDate.of(2026, 5, 2), 11.9, 1.0, 1, other);
    OverTime overTime =
        new OverTime(
            new OverTimeRules(List.of(AnalyteCode.NSC_WSC), 5, 3, 3, 0.05),
            List.of(
                new LotCourse(
                    lot(0),
                    AnalyteCode.NSC_WSC,
                    Unit.PERCENT,
                    List.of(early, late),
                    3.7,
                    1.35,
                    Optional.empty(),
                    Course.CHANGED)),
            List.of(
                new FieldCourse(
                    text.apply("Long Acre"),
                    text.apply("1"),
                    text.apply("grass-hay"),
                    AnalyteCode.NSC_WSC,
                    Unit.PERCENT,
                    List.of(new YearValue(2025, 1, 9.1, 0.9), new YearValue(2026, 2, 9.4, 0.7)),
                    0.3,
                    1.14,
                    Optional.empty(),
                    Course.STEADY)),
            List.of(
                new LaboratoryPair(
                    first,
                    second,
                    AnalyteCode.NSC_WSC,
                    Unit.PERCENT,
                    6,
                    Optional.of(PairedDifference.of(List.of(0.9, 1.1, 0.7, 1.0, 0.8, 0.9))),
                    new TreeSet<>(List.of(Method.NIR)),
                    new TreeSet<>(List.of(Method.WET)),
                    OptionalDouble.of(21))),
            List.of(
                new LaboratoryPair(
                    first,
                    first,
                    AnalyteCode.NSC_WSC,
                    Unit.PERCENT,
                    2,
                    Optional.empty(),
                    new TreeSet<>(),
                    new TreeSet<>(),
                    OptionalDouble.empty())));
    return new SeasonView(
        List.of("NSC_WSC"), found, lots == 0 ? Optional.empty() : Optional.of(overTime));
  }

  private String horse(int i) {
    return text.apply("H" + (i + 1));
  }

  private String client(int i) {
    return text.apply("C" + (i % CLIENTS.length + 1));
  }

  private String lot(int i) {
    return text.apply("L" + (i + 1));
  }

  private HorseFacts facts(int i) {
    return new HorseFacts(
        horse(i),
        text.apply(HORSES[i % HORSES.length]),
        i % 3 == 0 ? "pony" : "horse",
        "maintenance",
        320 + 20 * (i % 12),
        i % 2 == 0 ? "tape" : "scale",
        i % 4 == 0 ? null : Double.valueOf(6),
        text.apply(i % 2 == 0 ? "laminitis-past;overweight" : ""));
  }

  private static Priority priority(int i) {
    return switch (i % 12) {
      case 0, 11 -> Priority.CALL_NOW;
      case 1, 4 -> Priority.CALL_TODAY;
      case 2 -> Priority.ASK;
      case 3, 5 -> Priority.NOTE;
      case 6 -> Priority.STANDING;
      default -> Priority.NONE;
    };
  }

  private HorseAdvice advice(int i) {
    Priority priority = priority(i);
    boolean calls = priority.compareTo(Priority.ASK) < 0;
    boolean vetFirst = i % 12 == 11;
    double nsc = calls ? 13.27 + 0.1 * i % 2 : 7.4 + 0.31 * (i % 9);
    DietSummary before = i % 5 == 4 ? null : diet(8.9, 8.2, i);
    DietSummary after = priority == Priority.ASK ? null : diet(nsc, 8.2, i);
    return new HorseAdvice(
        horse(i),
        client(i),
        i % 4 == 3 ? List.of() : List.of("ID", "laminitis"),
        priority,
        text.apply(reason(priority)),
        calls
            ? text.apply(
                "Please do not open the new stack L2: its sugar and starch came back at 13.3 %,"
                    + " over the 10 % line. Stay on L1; it lasts 18 more days.")
            : "",
        before,
        after,
        calls ? List.of(text.apply("Lot L2 takes the place of L1 from 2026-11-25.")) : List.of(),
        priority == Priority.ASK
            ? List.of(text.apply("rations.csv, row 12: the net of hay was never weighed."))
            : List.of(),
        calls ? proposals(i) : List.of(),
        calls ? changeover() : List.of(),
        vetFirst,
        calls,
        i % 6 == 1
            ? List.of(
                new HorseQuestion(
                    text.apply("grazing-" + i),
                    "grazing",
                    horse(i),
                    text.apply("How many hours a day is it on grass?"),
                    List.of(text.apply("0")),
                    text.apply("The whole diet cannot be judged without it.")))
            : List.of(),
        i % 12 == 3 ? trip() : null);
  }

  private static String reason(Priority priority) {
    return switch (priority) {
      case CALL_NOW -> "Lot L2 opens tomorrow and puts the whole diet over the 10 % line.";
      case CALL_TODAY -> "Lot L2 opens on 2026-12-02 and puts the whole diet over the 10 % line.";
      case ASK -> "The weight of a net is not known, so the diet cannot be computed.";
      case NOTE -> "The diet stands just under the line; a test with 20 cores would settle it.";
      case STANDING -> "Told on 2026-11-17; nothing has changed.";
      case NONE -> "Nothing changed.";
    };
  }

  private DietSummary diet(double nsc, double dm, int i) {
    double u = 1.03;
    List<LimitLine> limits =
        i % 4 == 3
            ? List.of()
            : List.of(
                limit("laminitis-nsc-diet", "laminitis", 10, nsc, u, 1.6449, "stop"),
                limit("id-nsc-diet", "ID", 10, nsc, u, 0.8416, "change"),
                limit("id-nsc12-diet", "ID", 12, nsc, u, 1.96, "stop"),
                new LimitLine(
                    "id-nsc-meal",
                    "ID",
                    "bucket-meal",
                    "nsc_wsc",
                    0.1,
                    "g/kg BW",
                    0.04,
                    0.03,
                    0.05,
                    0.005,
                    0.0000001,
                    "clears",
                    "change",
                    text.apply("The bucket holds 14 g in two meals.")));
    return new DietSummary(
        9.45,
        dm,
        1.82,
        nsc,
        u,
        nsc - 2,
        nsc * dm * 10,
        List.of(
            new PortionLine(
                lot(i % Math.max(1, lots)),
                "",
                text.apply("Long Meadow, 2nd cut"),
                "forage",
                true,
                9,
                7.8,
                nsc,
                1.1),
            new PortionLine(
                text.apply("balancer-a"),
                text.apply("B-77"),
                text.apply("Valley balancer"),
                "balancer",
                false,
                0.45,
                0.4,
                8.0,
                0.4),
            new PortionLine(
                text.apply("salt"), "", text.apply("Salt"), "salt", false, 0.03, 0.03, 0.0, 0.0)),
        nutrients(),
        limits,
        limits.isEmpty() ? null : limits.get(0),
        List.of(
            new NoteLine(
                "forage-floor",
                text.apply(
                    "Forage 1.73 % of body weight as dry matter: above the floor of 1.5 %.")),
            new NoteLine(
                "grazing", text.apply("Grazing was not asked: the ration recorded is judged."))));
  }

  private LimitLine limit(
      String id, String group, double limit, double value, double u, double z, String severity) {
    String verdict = verdict(value, limit, z * u);
    return new LimitLine(
        id,
        group,
        "diet",
        "nsc_wsc",
        limit,
        "% DM",
        value,
        value - 2 * u,
        value + 2 * u,
        u,
        normal((value - limit) / u),
        verdict,
        severity,
        text.apply("WSC + starch against " + limit + " %: " + verdict + "."));
  }

  private static String verdict(double value, double limit, double guard) {
    if (value <= limit - guard) {
      return "clears";
    }
    if (value <= limit) {
      return "borderline-under";
    }
    return value < limit + guard ? "borderline-over" : "exceeds";
  }

  /** Good enough to draw with. */
  private static double normal(double z) {
    return 1 / (1 + StrictMath.exp(-1.702 * z));
  }

  private static List<DietLine> nutrients() {
    return List.of(
        new DietLine("DM", "kg", 8.2, 8.1, 8.3, 6.8, null, "meets", "reported"),
        new DietLine("DE", "Mcal", 16.9, 15.8, 18.0, 15.2, null, "meets", "reported"),
        new DietLine("CP", "g", 610.0, 540.0, 680.0, 576.0, null, "not-assured", "reported"),
        new DietLine("LYS", "g", 21.0, 12.0, 30.0, 24.8, null, "below", "assumed"),
        new DietLine("CA", "g", 36.0, 30.0, 42.0, 18.3, 164.0, "meets", "reported"),
        new DietLine("P", "g", 15.1, 13.0, 17.2, 12.8, 82.0, "meets", "reported"),
        new DietLine("CA_P", "1", 2.4, 1.9, 2.9, 1.0, null, "meets", "reported"),
        new DietLine("NA", "g", 12.5, 11.0, 14.0, 9.2, null, "meets", "part-assumed"),
        new DietLine("CU", "mg", 101.0, 80.0, 122.0, 91.4, 2050.0, "not-assured", "part-assumed"),
        new DietLine("ZN", "mg", 420.0, 380.0, 460.0, 366.0, 4100.0, "meets", "part-assumed"),
        new DietLine("SE", "mg", 2.1, 1.1, 3.1, 0.91, 2.5, "above-ceiling", "assumed"),
        new DietLine("FE", "mg", 1800.0, 1200.0, 2400.0, 366.0, 4100.0, "meets", "reported"),
        new DietLine("VIT_E", "IU", null, null, null, 457.0, null, "unknown", "assumed"));
  }

  private List<Proposal> proposals(int i) {
    List<ProposalItem> swap =
        List.of(
            new ProposalItem(
                lot(1), "", text.apply("Long Meadow, 2nd cut"), "forage", 9, 0, null, 0.0, null),
            new ProposalItem(
                lot(0), "", text.apply("Upper Ley"), "forage", 0, 8.75, 13.1, 1.97, 41.0),
            new ProposalItem(
                text.apply("balancer-a"),
                text.apply("B-77"),
                text.apply("Valley balancer"),
                "balancer",
                0.45,
                0.45,
                0.68,
                0.9,
                null),
            new ProposalItem(
                text.apply("salt"), "", text.apply("Salt"), "salt", 0.03, 0.03, null, null, null));
    return List.of(
        new Proposal(
            1,
            "hold",
            true,
            text.apply("Stay on L1, which clears; it lasts 18 days."),
            List.of(),
            null),
        new Proposal(
            2,
            "swap",
            true,
            text.apply("Lot L1 in place of L2: WSC + starch comes to 7.4 %."),
            swap,
            diet(7.4, 8.0, i)),
        new Proposal(
            3,
            "blend",
            false,
            text.apply("Half and half of L1 and L2, mixed at every feeding, is not enough."),
            swap,
            diet(10.2, 8.1, i)));
  }

  private List<ChangeoverLine> changeover() {
    List<ChangeoverLine> lines = new ArrayList<>();
    for (int day = 1; day <= 8; day++) {
      double share = Math.ceil(day / 2.0) / 4;
      lines.add(new ChangeoverLine(2, day, lot(1), 9 * (1 - share)));
      lines.add(new ChangeoverLine(2, day, lot(0), 8.75 * share));
      lines.add(new ChangeoverLine(2, day, text.apply("balancer-a"), 0.45));
      lines.add(new ChangeoverLine(2, day, text.apply("salt"), 0.03));
    }
    return lines;
  }

  private List<LotRow> lotRows() {
    List<LotRow> rows = new ArrayList<>();
    for (int i = 0; i < lots; i++) {
      rows.add(lotRow(i));
    }
    return rows;
  }

  private LotRow lotRow(int i) {
    boolean missing = i % 7 == 6;
    Double nsc = missing ? null : Double.valueOf(6.8 + 1.37 * i % 11);
    double u = 0.9 + 0.07 * (i % 5);
    List<VerdictRow> verdicts = new ArrayList<>();
    verdicts.add(row(i, "laminitis", "laminitis-nsc-lot", 10, nsc, u, 0.05));
    verdicts.add(row(i, "ID", "id-nsc-lot", 10, nsc, u, 0.2));
    verdicts.add(row(i, "ID", "id-nsc12-lot", 12, nsc, u, 0.025));
    verdicts.add(row(i, "PSSM", "pssm-nsc12-lot", 12, nsc, u, 0.025));
    verdicts.add(
        new VerdictRow(
            lot(i),
            "all",
            "all-nitrate-lot-1000",
            "no3_n",
            1000,
            "mg/kg DM",
            210.0,
            180.0,
            240.0,
            20.0,
            0.0,
            "clears",
            text.apply("Well under."),
            null,
            "info"));
    List<String> suits = new ArrayList<>();
    List<String> notFor = new ArrayList<>();
    List<String> undecided = new ArrayList<>();
    for (VerdictRow row : verdicts.subList(0, 3)) {
      List<String> list =
          row.verdict().equals("clears")
              ? suits
              : row.verdict().equals("exceeds") ? notFor : undecided;
      if (!list.contains(row.group())) {
        list.add(row.group());
      }
    }
    return new LotRow(
        lot(i),
        i % 3 == 0 ? "co-op" : client(i),
        MATERIALS[i % MATERIALS.length],
        text.apply("2"),
        i % 4 == 3 ? null : Double.valueOf(1200 + 350 * i),
        nsc,
        nsc == null ? Double.valueOf(6.1) : Double.valueOf(nsc - 1.9),
        nsc == null ? null : Double.valueOf(1.2),
        suits,
        notFor,
        undecided,
        text.apply(
            missing
                ? "Starch is missing; a test of starch would settle it."
                : "Judged by WSC + starch."),
        verdicts,
        List.of(text.apply("3 cores assumed"), text.apply("method not stated, NIR assumed")),
        text.apply(i % 2 == 0 ? "Fernhill Laboratory" : "Weirside Analytics"),
        "2026-11-0" + (i % 9 + 1));
  }

  private VerdictRow row(
      int i,
      String group,
      String id,
      double limit,
      @org.jspecify.annotations.Nullable Double nsc,
      double u,
      double risk) {
    if (nsc == null) {
      return new VerdictRow(
          lot(i),
          group,
          id,
          "nsc_wsc",
          limit,
          "% DM",
          null,
          null,
          null,
          null,
          null,
          "cannot-judge",
          text.apply("Starch is missing; a test of starch would settle it."),
          risk,
          "stop");
    }
    double z = risk == 0.05 ? 1.6449 : risk == 0.2 ? 0.8416 : 1.96;
    String verdict = verdict(nsc, limit, z * u);
    return new VerdictRow(
        lot(i),
        group,
        id,
        "nsc_wsc",
        limit,
        "% DM",
        nsc,
        nsc - 0.05,
        nsc + 0.05,
        u,
        normal((nsc - limit) / u),
        verdict,
        text.apply("WSC + starch: " + verdict + "."),
        risk,
        limit == 10 && group.equals("ID") ? "change" : "stop");
  }

  private List<AnalysisRow> analyses() {
    List<AnalysisRow> rows = new ArrayList<>();
    for (int i = 0; i < lots; i++) {
      String file = text.apply("report-" + (i + 1) + ".pdf");
      String[] codes = {"DM", "WSC", "STARCH", "CP"};
      for (int c = 0; c < codes.length; c++) {
        rows.add(
            new AnalysisRow(
                file,
                "",
                1,
                12 + c,
                text.apply("Dry matter basis"),
                lot(i),
                text.apply("Fernhill Laboratory"),
                text.apply("22" + i),
                1,
                "final",
                "2026-11-02",
                codes[c],
                text.apply("9,4"),
                text.apply("%"),
                text.apply("TS"),
                "dm",
                "%",
                9.4,
                9.35,
                9.45,
                0.52,
                "reported",
                "nir",
                "in-force",
                "",
                false,
                ""));
      }
      rows.add(
          new AnalysisRow(
              "",
              "",
              0,
              0,
              "",
              lot(i),
              "",
              "",
              1,
              "final",
              "2026-11-02",
              "NSC_WSC",
              "",
              "",
              "",
              "dm",
              "%",
              10.6,
              10.5,
              10.7,
              0.9,
              "derived",
              "",
              "in-force",
              "",
              false,
              ""));
    }
    return rows;
  }

  private List<OutcomeRow> outcomes() {
    String digest = "ab".repeat(32);
    return List.of(
        new OutcomeRow(
            text.apply("mail-1.eml"),
            "",
            digest,
            40211,
            "mail",
            "question",
            "part",
            text.apply("One of its parts waits for an answer."),
            "",
            "",
            1,
            2),
        new OutcomeRow(
            text.apply("mail-1.eml"),
            text.apply("report-1.pdf"),
            digest,
            20100,
            "pdf",
            "accepted",
            "read",
            text.apply("Every line was understood."),
            text.apply("Fernhill Laboratory"),
            text.apply("2211"),
            2,
            1),
        new OutcomeRow(
            text.apply("mail-1.eml"),
            text.apply("scan.png"),
            digest,
            9100,
            "image",
            "question",
            "no-text",
            text.apply("A picture without text: a person must read it."),
            "",
            "",
            1,
            0),
        new OutcomeRow(
            text.apply("night.csv"),
            "",
            digest,
            1200,
            "csv",
            "accepted",
            "read",
            text.apply("Every line was understood."),
            text.apply("Weirside Analytics"),
            text.apply("W-9"),
            1,
            6),
        new OutcomeRow(
            text.apply("night (1).csv"),
            "",
            digest,
            1200,
            "csv",
            "duplicate",
            "same",
            text.apply("The same bytes as night.csv."),
            "",
            "",
            1,
            0),
        new OutcomeRow(
            text.apply("bad.pdf"),
            "",
            digest,
            12,
            "pdf",
            "refused",
            "broken",
            text.apply("The file ends in the middle of a page."),
            "",
            "",
            1,
            0),
        new OutcomeRow(
            text.apply("old.pdf"),
            "",
            digest,
            12000,
            "pdf",
            "known",
            "known",
            text.apply("Settled on 2026-11-23."),
            "",
            "",
            1,
            1));
  }

  private Counts counts(List<OutcomeRow> outcomes) {
    int[] n = new int[7];
    List<String> words =
        List.of("accepted", "question", "duplicate", "superseded", "refused", "known");
    for (OutcomeRow row : outcomes) {
      n[row.part().isEmpty() ? words.indexOf(row.outcome()) : 6]++;
    }
    int files = outcomes.size() - n[6];
    return new Counts(files, n[6], n[0], n[1], n[2], n[3], n[4], n[5], 9, lots, horses, 0);
  }

  private List<QuestionRow> questions() {
    return List.of(
        new QuestionRow(
            text.apply("q-71ac"),
            "lot",
            text.apply("mail-1.eml"),
            text.apply("report-1.pdf"),
            text.apply("L0"),
            text.apply("Which lot is 'L0'?"),
            text.apply("LO") + "|" + text.apply("L10") + "|none",
            text.apply("L10"),
            text.apply("The report says 'L0'; the register has 'LO' and 'L10'.")),
        new QuestionRow(
            text.apply("q-9b02"),
            "basis",
            text.apply("night.csv"),
            "",
            text.apply("L4"),
            text.apply("Are the figures as fed or of dry matter?"),
            "as fed|dry matter",
            "",
            text.apply("No column says so.")));
  }

  private List<FollowUpRow> followUps() {
    return List.of(
        new FollowUpRow(
            "2026-11-20",
            "weight",
            horse(0),
            text.apply("Weigh Bramble."),
            text.apply("The tape is 14 months old."),
            "f-1"),
        new FollowUpRow(
            "2026-12-01",
            "retest",
            lot(3),
            text.apply("Take 20 cores of L4."),
            text.apply("Just under the line."),
            text.apply("f-2")));
  }

  /** A trip of one day with a step before it and one after it. */
  private TripPlan trip() {
    LocalDate from = LocalDate.of(2026, 12, 4);
    return new TripPlan(
        from,
        from,
        List.of(
            new TripLine(from.minusDays(2), TripLine.BEFORE, lot(0), 6),
            new TripLine(from.minusDays(2), TripLine.BEFORE, text.apply("CHOP"), 2),
            new TripLine(from.minusDays(1), TripLine.BEFORE, lot(0), 6),
            new TripLine(from.minusDays(1), TripLine.BEFORE, text.apply("CHOP"), 2),
            new TripLine(from, TripLine.AWAY, text.apply("CHOP"), 8),
            new TripLine(from.plusDays(1), TripLine.BACK, lot(0), 8)),
        List.of(text.apply("Take 8.0 kg of CHOP along.")));
  }
}
