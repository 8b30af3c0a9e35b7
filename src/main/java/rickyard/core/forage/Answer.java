package rickyard.core.forage;

import java.time.LocalDate;

/** What the office answered to a question: a row of answers.csv. */
public record Answer(String questionId, String answer, String by, LocalDate on, String note) {}
