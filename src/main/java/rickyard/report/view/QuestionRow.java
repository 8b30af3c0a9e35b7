package rickyard.report.view;

/** A row of questions.csv; {@code choices} separated by {@code |}. */
public record QuestionRow(
    String questionId,
    String kind,
    String file,
    String part,
    String about,
    String question,
    String choices,
    String proposed,
    String why) {}
