package rickyard.morning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rickyard.core.forage.Answer;
import rickyard.core.forage.AnswerUse;
import rickyard.core.forage.Corrected;
import rickyard.core.nutrition.Delivery;
import rickyard.registers.Office;
import rickyard.report.csv.CsvOut;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;

/** {@code answered.csv}: what became of every answer and correction, who gave it and when. */
final class Answered {
  private static final List<String> COLUMNS =
      List.of(
          "question_id",
          "kind",
          "file",
          "part",
          "about",
          "question",
          "answer",
          "by",
          "on",
          "effect");

  private final SettledMorning morning;
  private final Places places;
  private final Set<String> ofHorses = new TreeSet<>();

  Answered(SettledMorning morning, Office office) {
    this.morning = morning;
    this.places = new Places(morning.files());
    for (String horse : office.horses().keySet()) {
      ofHorses.add("q-grazing-" + horse);
      ofHorses.add("q-extras-" + horse);
    }
    for (Delivery delivery : office.deliveries()) {
      ofHorses.add("q-opening-" + delivery.lotId() + "-" + delivery.clientId());
    }
  }

  /** Answers that did nothing, one sentence each. */
  List<String> idle() {
    List<String> sentences = new ArrayList<>();
    for (AnswerUse use : morning.settled().answers()) {
      String effect = effect(use);
      if (!effect.equals(AnswerUse.SETTLED)) {
        sentences.add(
            "answers.csv: the answer \""
                + use.answer().answer()
                + "\" of "
                + use.answer().by()
                + " to "
                + use.answer().questionId()
                + (effect.equals(AnswerUse.NO_SUCH_QUESTION)
                    ? " answers no question of this morning; it did nothing"
                    : " does not settle it; the question stays open"));
      }
    }
    return sentences;
  }

  byte[] bytes() {
    List<List<Field>> rows = new ArrayList<>();
    morning.settled().answers().forEach(use -> rows.add(row(use)));
    morning.settled().corrected().forEach(c -> rows.add(row(c)));
    return CsvOut.bytes(new Table("answered.csv", COLUMNS, rows));
  }

  private List<Field> row(AnswerUse use) {
    Answer answer = use.answer();
    return List.of(
        Field.text(answer.questionId()),
        Field.text(use.kind()),
        Field.text(places.file(use.document())),
        Field.text(places.part(use.document())),
        Field.text(use.about()),
        Field.text(use.question()),
        Field.text(answer.answer()),
        Field.text(answer.by()),
        Field.text(answer.on().toString()),
        Field.text(effect(use)));
  }

  /** Questions about horses are settled where horses are advised. */
  private String effect(AnswerUse use) {
    return ofHorses.contains(use.answer().questionId()) ? AnswerUse.SETTLED : use.effect();
  }

  private List<Field> row(Corrected corrected) {
    var reading = corrected.read();
    return List.of(
        Field.text("decisions.csv row " + corrected.decision().row()),
        Field.text("correction"),
        Field.text(places.file(reading.place().document())),
        Field.text(places.part(reading.place().document())),
        Field.text(corrected.subject() + " " + reading.analyte()),
        Field.text("read \"" + reading.raw() + "\" at " + reading.place().words()),
        Field.text(corrected.decision().value()),
        Field.text(corrected.decision().by()),
        Field.text(corrected.decision().date().toString()),
        Field.text(AnswerUse.SETTLED));
  }
}
