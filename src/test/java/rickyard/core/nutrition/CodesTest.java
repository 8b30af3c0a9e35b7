package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The words of registers, tables and outputs; they are a contract. */
class CodesTest {

  @Test
  void registersAreWrittenInTheseWords() {
    assertEquals(
        List.of("maintenance", "work", "pregnant", "lactating", "growing", "stallion"),
        Arrays.stream(HorseStatus.values()).map(HorseStatus::code).toList());
    assertEquals(
        List.of("none", "treats", "shared", "unknown"),
        Arrays.stream(Extras.values()).map(Extras::code).toList());
  }

  @Test
  void dietsSayHowANutrientStandsInTheseWords() {
    assertEquals(
        List.of("below", "not-assured", "meets", "above-ceiling", "unknown", "no-requirement"),
        Arrays.stream(NutrientStatus.values()).map(NutrientStatus::code).toList());
  }

  @Test
  void whatACoefficientIsMultipliedByHasItsWordAndItsUnit() {
    assertEquals("gain_age_squared", Driver.GAIN_AGE_SQUARED.code());
    assertEquals("kg gain a day x age in months squared", Driver.GAIN_AGE_SQUARED.words());
    for (Driver driver : Driver.values()) {
      assertEquals(Optional.of(driver), Driver.findByCode(driver.code()));
    }
    assertEquals(Optional.empty(), Driver.findByCode("weight"));
  }

  @Test
  void aSourceIsSaidWithItsRowAndHowWellItIsSupported() {
    assertEquals(
        "minerals.csv 1, row 12 (s3: 20 g at 500 kg; secondary)",
        new Source("minerals.csv 1", 12, "s3", "20 g at 500 kg", Standing.SECONDARY).words());
    assertEquals(
        "roles.csv, row 0 (assumed; assumed)",
        new Source("roles.csv", 0, "assumed", "", Standing.ASSUMED).words());
  }

  @Test
  void aStandingIsFoundByItsWordOnly() {
    assertEquals(Optional.of(Standing.COMMON_PRACTICE), Standing.findByCode("common-practice"));
    assertEquals(Optional.of(Standing.VERIFIED), Standing.findByCode("verified"));
    assertEquals(Optional.empty(), Standing.findByCode("hearsay"));
  }
}
