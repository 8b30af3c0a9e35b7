package rickyard.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rickyard.core.forage.Answer;
import rickyard.core.forage.Choices;
import rickyard.morning.OfficeSettle;
import rickyard.morning.OpenQuestion;
import rickyard.morning.UsageException;

/**
 * Walks through the open questions with a person. Each answer is kept before the next question is
 * asked, so that the end of the input loses nothing.
 */
final class SettleTalk {
  private final OfficeSettle office;
  private final BufferedReader in;
  private final PrintWriter out;
  private final LocalDate on;
  private final Set<String> passed = new TreeSet<>();
  private int kept;

  SettleTalk(OfficeSettle office, BufferedReader in, PrintWriter out, LocalDate on) {
    this.office = office;
    this.in = in;
    this.out = out;
    this.on = on;
  }

  /** Asks until nothing is open, the person stops, or the input ends; the answers kept. */
  int talk(String name) throws IOException {
    Optional<OpenQuestion> next = next();
    String by = next.isPresent() && name.isBlank() ? line("Your name: ").orElse("") : name;
    while (next.isPresent() && !by.isBlank()) {
      if (!ask(next.get(), by)) {
        break;
      }
      next = next();
    }
    out.println();
    out.flush();
    return kept;
  }

  private Optional<OpenQuestion> next() {
    return office.questions().stream().filter(q -> !passed.contains(q.id())).findFirst();
  }

  /** Whether to go on. */
  private boolean ask(OpenQuestion question, String by) throws IOException {
    show(question);
    passed.add(question.id());
    while (true) {
      Optional<String> typed = line("Number, your own words, Enter to skip, q to stop: ");
      if (typed.isEmpty() || typed.get().equals("q")) {
        return false;
      }
      if (typed.get().isEmpty()) {
        return true;
      }
      Optional<String> said = said(question, typed.get());
      if (said.isEmpty()) {
        return false;
      }
      if (isKept(question, said.get(), by)) {
        return true;
      }
    }
  }

  private boolean isKept(OpenQuestion question, String said, String by) {
    try {
      Answer answer = office.accept(new Answer(question.id(), said, by, on, ""));
      office.keep(List.of(answer));
      kept++;
      out.println("Kept: " + answer.answer());
      return true;
    } catch (UsageException e) {
      out.println(e.getMessage());
      return false;
    }
  }

  /** What was meant: a choice by its number, or words; '=4' is the number 4 itself. */
  private Optional<String> said(OpenQuestion question, String typed) throws IOException {
    if (typed.startsWith("=")) {
      return Optional.of(typed.substring(1).strip());
    }
    if (!typed.matches("[0-9]{1,3}")) {
      return Optional.of(typed);
    }
    int number = Integer.parseInt(typed);
    if (number < 1 || number > question.choices().size()) {
      return Optional.of(typed);
    }
    String choice = question.choices().get(number - 1);
    return Choices.isOwn(choice) ? line(choice + " ") : Optional.of(choice);
  }

  private void show(OpenQuestion question) {
    out.println();
    int left = office.questions().size();
    out.println(left + " open. " + question.id() + ", " + question.kind());
    question.seen().forEach(cell -> wrapped("  seen: " + cell));
    if (question.seen().isEmpty() && !question.file().isEmpty()) {
      out.println("  in " + question.file());
    }
    wrapped(question.question());
    wrapped(question.why());
    Map<String, String> follows = office.consequences(question);
    for (int i = 0; i < question.choices().size(); i++) {
      String choice = question.choices().get(i);
      String mark = choice.equals(question.proposed()) ? "  (proposed)" : "";
      wrapped("  " + (i + 1) + "  " + choice + mark);
      if (follows.containsKey(choice)) {
        wrapped("       then " + follows.get(choice));
      }
    }
  }

  private void wrapped(String text) {
    if (!text.isBlank()) {
      Wrapped.lines(text).forEach(out::println);
    }
  }

  private Optional<String> line(String prompt) throws IOException {
    out.print(prompt);
    out.flush();
    String line = in.readLine();
    return Optional.ofNullable(line).map(String::strip);
  }
}
