package rickyard.morning;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.advice.HayEaten;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.due.FollowUpContext;
import rickyard.core.advice.due.FollowUps;
import rickyard.core.advice.due.OpenPoint;
import rickyard.core.forage.Lot;
import rickyard.core.forage.QuestionId;
import rickyard.registers.Office;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.OutcomeRow;
import rickyard.report.view.QuestionRow;

/** Gathers what decides what falls due. */
final class FollowUpDesk {
  private FollowUpDesk() {}

  static List<FollowUpRow> rows(
      Inputs inputs,
      HayEaten eaten,
      Judged judged,
      List<HorseAdvice> advice,
      List<LotRow> lots,
      List<QuestionRow> questions,
      List<OutcomeRow> outcomes) {
    Office office = inputs.registers().office();
    Tables tables = inputs.tables();
    FollowUpContext context =
        new FollowUpContext(
            inputs.asOf(),
            office.horses(),
            office.lots(),
            office.feeds(),
            office.deliveries(),
            eaten,
            office.decisions(),
            advice,
            judged.verdicts(),
            sampledOn(office, lots),
            Stream.concat(
                    questions.stream().map(FollowUpDesk::open),
                    outcomes.stream().filter(FollowUpDesk::isLost).map(FollowUpDesk::again))
                .toList(),
            tables.remedy().settings(),
            tables.followUps().settings());
    return FollowUps.of(context).stream()
        .map(
            f ->
                new FollowUpRow(
                    f.due().toString(), f.kind().code(), f.about(), f.what(), f.why(), f.id()))
        .toList();
  }

  /** A file that may be a report and cannot be opened; what is no report is nobody's business. */
  private static boolean isLost(OutcomeRow outcome) {
    return outcome.outcome().equals("refused") && !outcome.reasonCode().equals("no-analytes");
  }

  private static OpenPoint again(OutcomeRow outcome) {
    String file =
        outcome.part().isEmpty() ? outcome.file() : outcome.file() + ", " + outcome.part();
    return new OpenPoint(
        "f-" + QuestionId.digest("again", file, outcome.sha256()),
        file,
        "Ask whoever sent it for this file again: what it reports is not known.",
        outcome.reason());
  }

  /** A question on a report says in which file it stands. */
  private static OpenPoint open(QuestionRow question) {
    String file = question.file().isEmpty() ? "" : "in " + question.file();
    String why =
        Stream.of(file, question.why()).filter(s -> !s.isEmpty()).collect(Collectors.joining(": "));
    return new OpenPoint(question.questionId(), question.about(), question.question(), why);
  }

  /** As the report says it, else as the register does. */
  private static SortedMap<String, LocalDate> sampledOn(Office office, List<LotRow> lots) {
    SortedMap<String, LocalDate> days = new TreeMap<>();
    for (LotRow lot : lots) {
      Optional<LocalDate> printed =
          lot.sampledOn().isEmpty()
              ? Optional.empty()
              : Optional.of(LocalDate.parse(lot.sampledOn()));
      printed
          .or(() -> office.findLot(lot.lot()).flatMap(Lot::sampledOn))
          .ifPresent(day -> days.put(lot.lot(), day));
    }
    return days;
  }
}
