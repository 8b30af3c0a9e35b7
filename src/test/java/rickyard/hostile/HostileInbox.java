package rickyard.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import rickyard.BuiltJar;

/**
 * An office whose inbox holds good reports and hostile files, shuffled by numbers before their
 * names.
 */
final class HostileInbox {
  private final Path office;
  private final Map<String, HostileFile> hostile = new TreeMap<>();
  private final Map<String, String> good = new TreeMap<>();

  private HostileInbox(Path office) {
    this.office = office;
  }

  /** Every file of our own making, bombs too. */
  static List<HostileFile> all(Paper paper) {
    List<HostileFile> files = new ArrayList<>(quick(paper));
    files.addAll(Bulk.all(paper));
    return files;
  }

  /** All that is quickly made. */
  static List<HostileFile> quick(Paper paper) {
    List<HostileFile> files = new ArrayList<>(Zips.all(paper));
    files.addAll(Pdfs.all(paper));
    files.addAll(HiddenText.all(paper));
    files.addAll(Mails.all(paper));
    files.addAll(Texts.all(paper));
    files.addAll(Markup.all(paper));
    files.addAll(Odd.all(paper));
    files.addAll(Odd.names(paper));
    return files;
  }

  /**
   * Copies an office and mixes hostile files into its inbox.
   *
   * @param lots registered in any case, so that two offices differ in their inbox only
   * @param seed of the order; without hostile files the good ones keep their names
   */
  static HostileInbox of(
      Path from, Path office, List<HostileFile> files, List<String> lots, long seed)
      throws IOException {
    BuiltJar.copy(from, office);
    HostileInbox made = new HostileInbox(office);
    made.register(lots);
    if (!files.isEmpty()) {
      made.mix(files, new Random(seed));
    }
    return made;
  }

  private void register(List<String> lots) throws IOException {
    Path registers = office.resolve("registers");
    StringBuilder rows = new StringBuilder();
    lots.forEach(
        lot ->
            rows.append(lot)
                .append(",hxhostel,grass-hay,0,1,2025-07-08,100,18,,no,20,2026-03-02,warden\n"));
    append(registers.resolve("lots.csv"), rows.toString());
    append(
        registers.resolve("clients.csv"),
        "hxhostel,The Hostel,hostel@hostel.example,555-0199,quillow,kg\n");
  }

  private static void append(Path file, String rows) throws IOException {
    String before = Files.readString(file);
    String end = before.endsWith("\n") ? "" : "\n";
    Files.writeString(file, end + rows, StandardCharsets.UTF_8, StandardOpenOption.APPEND);
  }

  private void mix(List<HostileFile> files, Random random) throws IOException {
    Path inbox = office.resolve("inbox");
    List<Path> papers;
    try (Stream<Path> listed = Files.list(inbox)) {
      papers = listed.sorted().toList();
    }
    List<Integer> places = new ArrayList<>();
    for (int place = 1000; place < 1000 + files.size() + papers.size(); place++) {
      places.add(place);
    }
    Collections.shuffle(places, random);
    int next = 0;
    for (Path paper : papers) {
      String before = places.get(next++) + "-";
      Files.move(paper, inbox.resolve(before + paper.getFileName()));
      good.put(before + paper.getFileName(), paper.getFileName().toString());
    }
    hostile.putAll(Entries.make(inbox));
    for (HostileFile file : files) {
      // A name that is the point of the file stays as it is, in a folder of its own.
      boolean named = file.kind().equals("name");
      String step = places.get(next++) + "!HX";
      Path folder = named ? Files.createDirectory(inbox.resolve(step)) : inbox;
      Path target = folder.resolve(named ? file.name() : step + "-" + file.name());
      Files.write(target, file.bytes());
      hostile.put(step, file);
    }
  }

  Path office() {
    return office;
  }

  /** Hostile files by the mark that their path begins with. */
  Map<String, HostileFile> hostile() {
    return hostile;
  }

  /** Good files by the name that they have now: the name that they had. */
  Map<String, String> good() {
    return good;
  }
}
