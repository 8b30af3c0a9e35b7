package rickyard.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.report.text.Cut;
import rickyard.report.text.Languages;
import rickyard.report.text.Phrases;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.PaperFacts;

/** Puts into words, for paper, what a morning says of each horse. */
public final class HorsePapers {
  private static final int LONGEST_NOTE = 200;

  private final MorningView view;
  private final PaperFacts facts;
  private final Languages languages;
  private final Map<String, LotRow> lots;
  private final Contents contents;

  public HorsePapers(MorningView view, PaperFacts facts, Languages languages) {
    this.view = view;
    this.facts = facts;
    this.languages = languages;
    this.lots = Findings.byLot(view);
    this.contents = new Contents(view);
  }

  /** The texts in the language of a client. */
  public Phrases texts(String client) {
    return languages.of(facts.languages().getOrDefault(client, Languages.FIRST));
  }

  /** What paper says of a horse. */
  public HorsePaper of(HorseAdvice horse) {
    Course course = Course.of(horse);
    Voice voice = Voice.of(horse, view, texts(horse.client()));
    List<Given> given = Given.of(horse, course, facts.servings(horse.horse()));
    List<Given> moving = course == Course.CHANGE ? FeedRows.moving(horse, given) : List.<Given>of();
    Findings findings = new Findings(horse, lots, contents, voice);
    List<HorsePaper.Step> steps = FeedRows.steps(horse, moving, voice);
    List<HorsePaper.Weigh> weigh = FeedRows.weigh(given, !steps.isEmpty(), voice);
    List<String> missing = course == Course.MISSING ? Gaps.missing(horse, voice) : List.of();
    List<String> notes = officeNotes(horse, course, voice);
    List<String> changeNotes = changeNotes(horse, course, given, voice);
    boolean isComing = course == Course.KEEP && !changeNotes.isEmpty();
    HorsePaper paper =
        new HorsePaper(
            voice.horse(),
            voice.client(),
            course.code(),
            voice.say("sheet.for", "day", voice.texts().day(view.asOf())),
            voice.say("banner." + (isComing ? "keep-new" : course.code())),
            isComing ? voice.say("lead.keep-new") : lead(horse, course, voice),
            weigh,
            moving.stream().map(voice::item).toList(),
            steps,
            changeNotes,
            missing,
            notes,
            findings.measured(course),
            findings.meaning(course),
            findings.then(course),
            course == Course.VET_FIRST ? List.of() : Gaps.unknown(horse, voice),
            Gaps.asks(horse, voice),
            more(horse, course, voice),
            watch(horse, course, steps.isEmpty() ? given : List.of(), voice, conditions(horse)),
            vet(course, voice),
            voice.ring(),
            voice.say("sheet.foot", "day", voice.texts().day(view.asOf())),
            0);
    return paper.withSize(PaperRoom.size(paper));
  }

  /** Whether the ration that the paper tells is another one than before. */
  public boolean isChanged(HorseAdvice horse) {
    Course course = Course.of(horse);
    return course == Course.CHANGE
        || course == Course.HOLD
        || Given.of(horse, course, facts.servings(horse.horse())).stream()
            .anyMatch(Given::isChanged);
  }

  private static String lead(HorseAdvice horse, Course course, Voice voice) {
    if (course != Course.KEEP) {
      return voice.say("lead." + course.code());
    }
    DietSummary after = horse.after();
    String verdict = after == null ? "" : after.verdict();
    return switch (verdict) {
      case "clears" -> voice.say("lead.keep");
      case "no-limit" -> voice.say("lead.keep-no-limit");
      default -> voice.say("lead.keep-told");
    };
  }

  /** Rows of registers stand in English, as the office knows them; never where no amount may. */
  private static List<String> officeNotes(HorseAdvice horse, Course course, Voice voice) {
    return course == Course.MISSING
        ? horse.problems().stream()
            .map(p -> voice.say("sheet.office", "note", Cut.line(p, LONGEST_NOTE)))
            .toList()
        : List.of();
  }

  private List<String> changeNotes(
      HorseAdvice horse, Course course, List<Given> given, Voice voice) {
    return switch (course) {
      case CHANGE -> ofChange(horse, given, voice);
      case KEEP, BORDERLINE -> ofDelivery(horse, given, voice);
      default -> List.of();
    };
  }

  private static List<String> ofChange(HorseAdvice horse, List<Given> given, Voice voice) {
    List<String> notes = new ArrayList<>();
    boolean isForage = given.stream().anyMatch(g -> g.isForage() && g.isChanged());
    if (horse.groups().contains("HYPP") && isForage) {
      notes.add(voice.say("change.hypp"));
    }
    if (isForage && FeedRows.days(horse) <= 1) {
      notes.add(voice.say("change.at-once"));
    }
    if (!isForage) {
      notes.add(voice.say("change.bucket"));
    }
    if (Course.chosen(horse).filter(p -> p.kind().equals("blend")).isPresent()) {
      notes.add(voice.say("change.mixed"));
    }
    return notes;
  }

  /** A delivery that waits for its day: until then the old hay is fed. */
  private List<String> ofDelivery(HorseAdvice horse, List<Given> given, Voice voice) {
    List<String> notes = new ArrayList<>();
    for (Given item : given) {
      Optional<String> opens = facts.opening(horse.client(), item.item());
      if (opens.isPresent() && item.isChanged()) {
        String key = opens.get().isEmpty() ? "change.opens-unknown" : "change.opens";
        notes.add(voice.texts().say(key, "item", voice.item(item), "day", voice.day(opens.get())));
        notes.add(voice.say("change.new-hay"));
      }
    }
    return notes.stream().distinct().toList();
  }

  private static List<String> more(HorseAdvice horse, Course course, Voice voice) {
    List<String> more = new ArrayList<>();
    if (course == Course.MISSING && Course.chosen(horse).isPresent()) {
      more.add(voice.say("letter.could"));
    }
    boolean isRetest = horse.proposals().stream().anyMatch(p -> p.kind().equals("retest"));
    if (isRetest || course == Course.BORDERLINE) {
      more.add(voice.say("letter.retest"));
    }
    String shortfalls =
        course == Course.KEEP || course == Course.BORDERLINE ? Gaps.shortfalls(horse, voice) : "";
    if (!shortfalls.isEmpty()) {
      more.add(shortfalls);
    }
    return more;
  }

  private static List<String> watch(
      HorseAdvice horse, Course course, List<Given> given, Voice voice, String conditions) {
    Set<String> watch = new LinkedHashSet<>();
    given.stream()
        .filter(Given::isStopped)
        .forEach(g -> watch.add(voice.say("watch.old-hay", "item", voice.item(g))));
    for (String group : groups(horse)) {
      String key = "watch." + group;
      if (voice.texts().find(key).isPresent()) {
        watch.add(voice.say(key));
      }
    }
    if (conditions.contains("dental")) {
      watch.add(voice.say("watch.dental"));
    }
    if (course == Course.CHANGE) {
      watch.add(voice.say("watch.change"));
    }
    watch.add(voice.say("watch.all"));
    return new ArrayList<>(watch);
  }

  private String conditions(HorseAdvice horse) {
    HorseFacts facts = view.horseFacts().get(horse.horse());
    return facts == null ? "" : facts.conditions();
  }

  private static List<String> groups(HorseAdvice horse) {
    List<String> groups = new ArrayList<>(horse.groups());
    DietSummary after = horse.after();
    LimitLine worst = after == null ? null : after.worst();
    if (worst != null && !groups.contains(worst.group())) {
      groups.add(worst.group());
    }
    groups.remove("all");
    return groups;
  }

  private static List<String> vet(Course course, Voice voice) {
    return course == Course.VET_FIRST
        ? List.of(voice.say("vet.first"), voice.say("vet.words"))
        : List.of(voice.say("vet.words"));
  }
}
