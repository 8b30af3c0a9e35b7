package rickyard.report.letter;

import java.util.List;

/** A letter as its templates see it. */
public record LetterPage(
    String subject,
    String greeting,
    String intro,
    List<LetterHorse> horses,
    List<String> vet,
    String ring,
    String close,
    String from,
    String caution) {
  public LetterPage {
    horses = List.copyOf(horses);
    vet = List.copyOf(vet);
  }
}
