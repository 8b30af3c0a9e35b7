package rickyard.report.letter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.Priority;
import rickyard.report.OutputFile;
import rickyard.report.template.Templates;
import rickyard.report.text.Cut;
import rickyard.report.text.FileName;
import rickyard.report.text.Harmless;
import rickyard.report.text.Languages;
import rickyard.report.text.Phrases;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.MorningView;
import rickyard.report.view.PaperFacts;

/** A draft for each adviser with calls to make, in the order to make them. */
public final class Alerts {
  /** Folder of the alerts. */
  public static final String FOLDER = "alerts/";

  private static final int LONGEST_NAME = 80;

  private final MorningView view;
  private final PaperFacts facts;
  private final Templates templates;
  private final Languages languages;
  private final Phrases texts;

  public Alerts(MorningView view, PaperFacts facts, Templates templates, Languages languages) {
    this.view = view;
    this.facts = facts;
    this.templates = templates;
    this.languages = languages;
    this.texts = languages.of(Languages.FIRST);
  }

  /** The path of an adviser's alert. */
  public static String path(String adviser) {
    return FOLDER + FileName.of(adviser) + ".eml";
  }

  /** All alerts by path. */
  public SortedMap<String, OutputFile> files() {
    SortedMap<String, OutputFile> files = new TreeMap<>();
    calls()
        .forEach(
            (adviser, calls) -> {
              Draft draft = draft(adviser, calls);
              files.put(path(adviser), out -> Eml.write(draft, out));
            });
    return files;
  }

  /** Horses to call about by adviser and client, the most urgent client first. */
  private SortedMap<String, Map<String, List<HorseAdvice>>> calls() {
    SortedMap<String, Map<String, List<HorseAdvice>>> calls = new TreeMap<>();
    view.horses().stream()
        .filter(Alerts::isCall)
        .sorted(Comparator.comparing(HorseAdvice::priority))
        .forEach(
            h ->
                calls
                    .computeIfAbsent(adviser(h.client()), a -> new LinkedHashMap<>())
                    .computeIfAbsent(h.client(), c -> new ArrayList<>())
                    .add(h));
    return calls;
  }

  private static boolean isCall(HorseAdvice horse) {
    return horse.priority() == Priority.CALL_NOW || horse.priority() == Priority.CALL_TODAY;
  }

  private String adviser(String client) {
    ClientFacts known = view.clientFacts().get(client);
    return known == null ? "" : known.adviser().strip();
  }

  private String name(String adviser) {
    return view.clientFacts().values().stream()
        .filter(c -> c.adviser().strip().equals(adviser))
        .map(ClientFacts::adviserName)
        .findFirst()
        .orElse(adviser);
  }

  private Draft draft(String adviser, Map<String, List<HorseAdvice>> calls) {
    List<AlertPage.Call> shown = new ArrayList<>();
    calls.forEach((client, horses) -> shown.add(call(client, horses)));
    String day = texts.day(view.asOf());
    String name = Cut.name(name(adviser), texts.text("alert.nobody"), LONGEST_NAME);
    AlertPage page =
        new AlertPage(
            shown.size() == 1
                ? texts.say("alert.subject-one", "day", day)
                : texts.say("alert.subject", "number", shown.size() + " clients", "day", day),
            texts.say("alert.intro", "adviser", name),
            shown,
            notes(adviser),
            texts.text("alert.caution"));
    Map<String, Object> values = Map.of("a", page, "t", texts);
    return new Draft(
        Address.of(facts.advisers().getOrDefault(adviser, "")),
        name,
        page.subject(),
        Letters.crlf(templates.fill("alert/alert.txt", values)),
        Letters.crlf(templates.fill("alert/alert.html", values)),
        List.of(),
        view.asOf());
  }

  private AlertPage.Call call(String client, List<HorseAdvice> horses) {
    ClientFacts known = view.clientFacts().get(client);
    String phone = known == null ? "" : Cut.line(known.phone(), LONGEST_NAME);
    return new AlertPage.Call(
        client(client),
        phone.isEmpty() ? texts.text("alert.no-phone") : phone,
        horses.stream().map(this::item).toList(),
        Letters.path(client));
  }

  private AlertPage.Item item(HorseAdvice horse) {
    HorseFacts known = view.horseFacts().get(horse.horse());
    DietSummary diet = horse.after();
    String verdict = horse.vetFirst() ? "vet called" : diet == null ? "" : diet.verdict();
    return new AlertPage.Item(
        Cut.name(known == null ? "" : known.name(), horse.horse(), LONGEST_NAME),
        texts.text(horse.priority() == Priority.CALL_NOW ? "alert.now" : "alert.today"),
        Plain.sentence(horse.say()),
        Plain.sentence(horse.reason()),
        figure(diet == null || horse.vetFirst() ? null : diet.worst()),
        Harmless.line(
            view.asOf() + "," + horse.horse() + ",told," + verdict + ",," + Letters.NOBODY + ","));
  }

  private String figure(@org.jspecify.annotations.Nullable LimitLine worst) {
    if (worst == null || worst.pOver() == null) {
      return "";
    }
    String unit = " " + texts.word("unit", worst.unit());
    return texts.say(
        "alert.figure",
        "subject",
        texts.word("subject", worst.subject()),
        "quantity",
        texts.word("quantity", worst.quantity()),
        "value",
        Shown.figure(worst.verdict(), worst.value(), worst.low(), worst.high(), worst.u()) + unit,
        "limit",
        Shown.number(Double.valueOf(worst.limit())) + unit,
        "chance",
        Shown.chance(worst.pOver()));
  }

  /** What is wrong with the drafts of this adviser's clients. */
  private List<String> notes(String adviser) {
    List<String> notes = new ArrayList<>();
    Set<String> told = Letters.clients(view);
    for (String client : told) {
      if (!adviser(client).equals(adviser)) {
        continue;
      }
      ClientFacts known = view.clientFacts().get(client);
      if (known == null || Address.of(known.email()).isEmpty()) {
        notes.add(texts.say("alert.no-address", "client", client(client)));
      }
      String language = facts.languages().getOrDefault(client, Languages.FIRST);
      if (!languages.knows(language)) {
        notes.add(
            texts.say(
                "alert.no-language",
                "client",
                client(client),
                "language",
                Cut.line(language, LONGEST_NAME)));
      }
    }
    return notes;
  }

  private String client(String id) {
    ClientFacts known = view.clientFacts().get(id);
    return Cut.name(known == null ? "" : known.name(), id, LONGEST_NAME);
  }
}
