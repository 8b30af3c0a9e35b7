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

  /** The document that took its place; empty while it stands. */
  String replacedBy = "";

  Held(Received received, Report report, int index, Sample sample) {
    this.received = received;
    this.report = report;
    this.key = new SampleKey(report.document(), index);
    this.sample = sample;
  }

  void stand(Standing standing, String code, String reason) {
    this.standing = standing;
    this.reasonCode = code;
    this.reason = reason;
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
