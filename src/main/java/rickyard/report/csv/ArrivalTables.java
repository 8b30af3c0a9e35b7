package rickyard.report.csv;

import static rickyard.report.csv.Field.count;
import static rickyard.report.csv.Field.number;
import static rickyard.report.csv.Field.place;
import static rickyard.report.csv.Field.text;

import java.util.List;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.OutcomeRow;
import rickyard.report.view.QuestionRow;

/** What arrived and what was read: outcomes, analyses, questions. */
final class ArrivalTables {
  private ArrivalTables() {}

  static Table outcomes(MorningView view) {
    return Table.of(
        "outcomes.csv",
        "file,part,sha256,bytes,kind,outcome,reason_code,reason,lab,report_no,revision,samples,"
            + "layout,layout_note",
        view.outcomes(),
        ArrivalTables::outcome);
  }

  private static List<Field> outcome(OutcomeRow row) {
    return List.of(
        text(row.file()),
        text(row.part()),
        text(row.sha256()),
        count(row.bytes()),
        text(row.kind()),
        text(row.outcome()),
        text(row.reasonCode()),
        text(row.reason()),
        text(row.lab()),
        text(row.reportNo()),
        count(row.revision()),
        count(row.samples()),
        text(row.layout()),
        text(row.layoutNote()));
  }

  static Table analyses(MorningView view) {
    return Table.of(
        "analyses.csv",
        "file,part,page,row,column,lot,lab,report_no,revision,report_status,sampled_on,analyte,raw,"
            + "raw_unit,raw_basis,basis,unit,value,low,high,u,origin,method,state,batch",
        view.analyses(),
        ArrivalTables::analysis);
  }

  private static List<Field> analysis(AnalysisRow row) {
    return List.of(
        text(row.file()),
        text(row.part()),
        place(row.page()),
        place(row.row()),
        text(row.column()),
        text(row.lot()),
        text(row.lab()),
        text(row.reportNo()),
        count(row.revision()),
        text(row.reportStatus()),
        text(row.sampledOn()),
        text(row.analyte()),
        text(row.raw()),
        text(row.rawUnit()),
        text(row.rawBasis()),
        text(row.basis()),
        text(row.unit()),
        number(row.value()),
        number(row.low()),
        number(row.high()),
        number(row.u()),
        text(row.origin()),
        text(row.method()),
        text(row.state()),
        text(row.batch()));
  }

  static Table questions(MorningView view) {
    return Table.of(
        "questions.csv",
        "question_id,kind,file,part,about,question,choices,proposed,why",
        view.questions(),
        ArrivalTables::question);
  }

  private static List<Field> question(QuestionRow row) {
    return List.of(
        text(row.questionId()),
        text(row.kind()),
        text(row.file()),
        text(row.part()),
        text(row.about()),
        text(row.question()),
        text(row.choices()),
        text(row.proposed()),
        text(row.why()));
  }
}
