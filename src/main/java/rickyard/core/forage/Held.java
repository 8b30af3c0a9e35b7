package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;

/** One sample while it is being settled: its standing is found step by step. */
final class Held {
  final Received received;
  final Report report;
  final SampleKey key;
  final List<Question> open = new ArrayList<>();
  Sample sample;
  boolean blocked;
  boolean provisional;
  Standing standing = Standing.IN_FORCE;
  String reasonCode = "in-force";
  String reason = "";
  String subject = "";
  String batch = "";

  /** What a person decided about it, with name and day; empty if nobody had to. */
  String note = "";

  /** The document that took its place; empty while it stands. */
  String replacedBy = "";

  Held(Received received, Report report, int index, Sample sample) {
    this.received = received;
    this.report = report.standingFor(sample);
    this.key = new SampleKey(report.document(), index);
    this.sample = sample;
  }

  void stand(Standing standing, String code, String reason) {
    this.standing = standing;
    this.reasonCode = code;
    this.reason = reason;
  }

  /** Left out by a person, who is named. */
  void leaveOut(Taken taken) {
    stand(Standing.QUARANTINED, "left-out", "left out by an answer, " + taken.words());
  }

  /** The report in words a person finds in the inbox, with enough of its hash to be unique. */
  String name() {
    String number = report.reportNo().isBlank() ? "" : report.reportNo().strip() + " ";
    String path = received.path();
    String file = path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('!')) + 1);
    String hash = key.document().substring(0, Math.min(6, key.document().length()));
    String sample = report.samples().size() > 1 ? ", sample " + (key.index() + 1) : "";
    return (number + file + sample + " (" + hash + ")").replace('|', '/');
  }

  boolean stands() {
    return standing == Standing.IN_FORCE;
  }

  SettledSample settled() {
    return new SettledSample(key, sample, standing, reasonCode, reason, subject, batch);
  }

  /** How much of it can be used: of two copies the fuller one counts. */
  long settledReadings() {
    return sample.readings().stream().filter(Reading::isSettled).count();
  }
}
