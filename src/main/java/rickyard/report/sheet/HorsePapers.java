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
import rickyard.core.advice.Proposal;
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
  private static final int MONTH_DAYS = 30;

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
    Optional<TripRows> trip = trip(horse, course);
    List<Given> given = given(horse, course);
    List<Given> moving =
        course == Course.CHANGE
            ? FeedRows.moving(horse, given)
            : trip.map(TripRows::moving).orElse(List.of());
    Findings findings = new Findings(horse, lots, contents, voice);
    List<HorsePaper.Step> steps =
        trip.map(t -> t.steps(voice)).orElseGet(() -> FeedRows.steps(horse, moving, voice));
    List<HorsePaper.Weigh> weigh = FeedRows.weigh(given, trip.isEmpty() && !steps.isEmpty(), voice);
    List<String> missing = course == Course.MISSING ? Gaps.missing(horse, voice) : List.of();
    List<String> notes = officeNotes(horse, course, voice);
    List<String> changeNotes =
        trip.isPresent()
            ? List.of(voice.say("change.trip"))
            : changeNotes(horse, course, given, !steps.isEmpty(), voice);
    boolean isComing = trip.isEmpty() && course == Course.KEEP && !changeNotes.isEmpty();
    String banner = trip.isPresent() ? "trip" : isComing ? "keep-new" : course.code();
    HorsePaper paper =
        new HorsePaper(
            voice.horse(),
            voice.client(),
            course.code(),
            voice.say("sheet.for", "day", voice.texts().day(view.asOf())),
            voice.say("banner." + banner),
            trip.map(t -> lead(t, voice))
                .orElseGet(
                    () ->
                        isComing ? voice.say("lead.keep-new") : lead(horse, course, given, voice)),
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
            vet(horse, course, voice),
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
        || given(horse, course).stream().anyMatch(Given::isChanged);
  }

  private Optional<TripRows> trip(HorseAdvice horse, Course course) {
    return TripRows.of(horse, course, view.asOf(), facts.servings(horse.horse()));
  }

  private List<Given> given(HorseAdvice horse, Course course) {
    return trip(horse, course)
        .map(t -> t.on(view.asOf()))
        .orElseGet(() -> Given.of(horse, course, facts.servings(horse.horse())));
  }

  private static String lead(TripRows trip, Voice voice) {
    return voice
        .texts()
        .say(
            "lead.trip",
            "horse",
            voice.horse(),
            "from",
            voice.day(trip.from()),
            "to",
            voice.day(trip.to()));
  }

  private String lead(HorseAdvice horse, Course course, List<Given> given, Voice voice) {
    if (course != Course.KEEP) {
      return voice.say("lead." + course.code());
    }
    DietSummary after = horse.after();
    String verdict = after == null ? "" : after.verdict();
    return switch (verdict) {
      case "clears" -> voice.say(cleared(horse, given));
      case "no-limit" -> voice.say("lead.keep-no-limit");
      default -> voice.say("lead.keep-told");
    };
  }

  /** What else has to be said of a ration that clears. */
  private String cleared(HorseAdvice horse, List<Given> given) {
    if (isUnderPlan(horse)) {
      return "lead.keep-vet";
    }
    boolean isFree = given.stream().anyMatch(g -> g.serving().isOpen());
    if (!isFree) {
      return "lead.keep";
    }
    return Findings.isOfAnother(horse) ? "lead.keep-shared" : "lead.keep-open";
  }

  /** Acute laminitis with a veterinarian's plan: that plan decides, whatever clears. */
  private boolean isUnderPlan(HorseAdvice horse) {
    return !horse.vetFirst()
        && Optional.ofNullable(view.horseFacts().get(horse.horse()))
            .filter(f -> f.conditions().contains("laminitis-acute"))
            .isPresent();
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
      HorseAdvice horse, Course course, List<Given> given, boolean isStepwise, Voice voice) {
    return switch (course) {
      case CHANGE -> ofChange(horse, given, isStepwise, voice);
      case KEEP, BORDERLINE -> ofDelivery(horse, given, voice);
      default -> List.of();
    };
  }

  private static List<String> ofChange(
      HorseAdvice horse, List<Given> given, boolean isStepwise, Voice voice) {
    List<String> notes = new ArrayList<>();
    boolean isForage = given.stream().anyMatch(g -> g.isForage() && g.isChanged());
    given.stream()
        .filter(g -> g.isForage() && g.nowKg() <= 0 && g.kg() > 0)
        .forEach(g -> notes.add(fetched(g, voice)));
    if (isStepwise) {
      notes.add(voice.say("change.after-steps"));
      uncleared(horse, voice).ifPresent(notes::add);
    }
    if (isStepwise && isForage && !horse.groups().contains("HYPP")) {
      notes.add(voice.say("change.ask-vet"));
    }
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

  /** What a month of a new forage comes to: it has to be there before the change. */
  private static String fetched(Given given, Voice voice) {
    double kg = MONTH_DAYS * given.kg();
    return voice
        .texts()
        .say(
            "change.fetch",
            "item",
            voice.item(given),
            "amount",
            voice.amount(kg),
            "other",
            voice.other(kg));
  }

  private static Optional<String> uncleared(HorseAdvice horse, Voice voice) {
    int days = Course.chosen(horse).map(Proposal::unclearedDays).orElse(0);
    return days < 1
        ? Optional.empty()
        : Optional.of(voice.say("change.uncleared", "days", String.valueOf(days)));
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

  private List<String> more(HorseAdvice horse, Course course, Voice voice) {
    List<String> more = new ArrayList<>();
    if (isUnderPlan(horse)) {
      more.add(voice.say("vet.plan"));
    }
    if (course == Course.MISSING && Course.chosen(horse).isPresent()) {
      more.add(voice.say("letter.could"));
    }
    boolean isRetest = horse.proposals().stream().anyMatch(p -> p.kind().equals("retest"));
    if (isRetest || course == Course.BORDERLINE) {
      boolean isDisputed = new Findings(horse, lots, contents, voice).isDisputed();
      more.add(voice.say(isDisputed ? "letter.retest-again" : "letter.retest"));
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

  private List<String> vet(HorseAdvice horse, Course course, Voice voice) {
    if (course == Course.VET_FIRST) {
      return List.of(voice.say("vet.first"), voice.say("vet.words"));
    }
    return isUnderPlan(horse)
        ? List.of(voice.say("vet.plan"), voice.say("vet.words"))
        : List.of(voice.say("vet.words"));
  }
}
