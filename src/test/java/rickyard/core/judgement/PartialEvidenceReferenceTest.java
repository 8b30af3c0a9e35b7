package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import rickyard.core.forage.Method;
import rickyard.core.quantity.Basis;

/** What a report that lacks something allows to conclude; the cases stand in the table. */
class PartialEvidenceReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/partial-evidence.csv", useHeadersInDisplayName = true)
  void concludesOnlyWhatLogicAllows(ArgumentsAccessor row) {
    Basis basis = row.getString(0).equals("af") ? Basis.AS_FED : Basis.DRY_MATTER;
    Hay hay =
        Hay.of()
            .method(Method.WET)
            .printed("DM", row.getString(1), Basis.AS_FED)
            .printed("WSC", row.getString(2), basis)
            .printed("ESC", row.getString(3), basis)
            .printed("STARCH", row.getString(4), basis)
            .printed("NSC_WSC", row.getString(5), basis)
            .printed("NSC_ESC", row.getString(6), basis)
            .printed("NFC", row.getString(7), basis);
    Limit limit =
        Limits.of(
            row.getString(8),
            Bound.MAX,
            row.getDouble(9),
            "% DM",
            OptionalDouble.of(row.getDouble(10)));

    Verdict verdict = hay.judge(limit);

    assertEquals(row.getString(11), verdict.word().code(), verdict.reason());
    assertTrue(
        Arrays.stream(row.getString(12).split("\\|", -1)).anyMatch(verdict.reason()::contains),
        verdict.reason());
  }
}
