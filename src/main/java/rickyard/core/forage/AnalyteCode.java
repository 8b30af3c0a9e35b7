package rickyard.core.forage;

import java.io.Serializable;

/**
 * The code of an analyte as outputs write it, for example {@code WSC}. The analytes themselves are
 * rows of {@code config/analytes.csv}; the constants are those that formulas name.
 *
 * @param value upper-case letters, digits and underscores
 */
public record AnalyteCode(String value) implements Comparable<AnalyteCode>, Serializable {
  public static final AnalyteCode DM = new AnalyteCode("DM");
  public static final AnalyteCode MOISTURE = new AnalyteCode("MOISTURE");
  public static final AnalyteCode CP = new AnalyteCode("CP");
  public static final AnalyteCode ADICP = new AnalyteCode("ADICP");
  public static final AnalyteCode NDICP = new AnalyteCode("NDICP");
  public static final AnalyteCode LYS = new AnalyteCode("LYS");
  public static final AnalyteCode ADF = new AnalyteCode("ADF");
  public static final AnalyteCode NDF = new AnalyteCode("NDF");
  public static final AnalyteCode LIGNIN = new AnalyteCode("LIGNIN");
  public static final AnalyteCode WSC = new AnalyteCode("WSC");
  public static final AnalyteCode ESC = new AnalyteCode("ESC");
  public static final AnalyteCode STARCH = new AnalyteCode("STARCH");
  public static final AnalyteCode NSC_WSC = new AnalyteCode("NSC_WSC");
  public static final AnalyteCode NSC_ESC = new AnalyteCode("NSC_ESC");
  public static final AnalyteCode FRUCTAN = new AnalyteCode("FRUCTAN");
  public static final AnalyteCode NFC = new AnalyteCode("NFC");
  public static final AnalyteCode EE = new AnalyteCode("EE");
  public static final AnalyteCode ASH = new AnalyteCode("ASH");
  public static final AnalyteCode DE = new AnalyteCode("DE");
  public static final AnalyteCode CA = new AnalyteCode("CA");
  public static final AnalyteCode P = new AnalyteCode("P");
  public static final AnalyteCode MG = new AnalyteCode("MG");
  public static final AnalyteCode K = new AnalyteCode("K");
  public static final AnalyteCode NA = new AnalyteCode("NA");
  public static final AnalyteCode CL = new AnalyteCode("CL");
  public static final AnalyteCode S = new AnalyteCode("S");
  public static final AnalyteCode FE = new AnalyteCode("FE");
  public static final AnalyteCode ZN = new AnalyteCode("ZN");
  public static final AnalyteCode CU = new AnalyteCode("CU");
  public static final AnalyteCode MN = new AnalyteCode("MN");
  public static final AnalyteCode MO = new AnalyteCode("MO");
  public static final AnalyteCode SE = new AnalyteCode("SE");
  public static final AnalyteCode I = new AnalyteCode("I");
  public static final AnalyteCode CO = new AnalyteCode("CO");
  public static final AnalyteCode NO3_N = new AnalyteCode("NO3_N");
  public static final AnalyteCode NO3 = new AnalyteCode("NO3");
  public static final AnalyteCode OXALATE = new AnalyteCode("OXALATE");
  public static final AnalyteCode CA_OXALATE = new AnalyteCode("CA_OXALATE");
  public static final AnalyteCode ERGOVALINE = new AnalyteCode("ERGOVALINE");
  public static final AnalyteCode RFV = new AnalyteCode("RFV");
  public static final AnalyteCode CA_P = new AnalyteCode("CA_P");
  public static final AnalyteCode VIT_A = new AnalyteCode("VIT_A");
  public static final AnalyteCode VIT_D = new AnalyteCode("VIT_D");
  public static final AnalyteCode VIT_E = new AnalyteCode("VIT_E");

  public AnalyteCode {
    if (!isCode(value)) {
      throw new IllegalArgumentException("not an analyte code: " + value);
    }
  }

  private static boolean isCode(String value) {
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      boolean isLetter = c >= 'A' && c <= 'Z';
      if (!isLetter && (i == 0 || !(c == '_' || (c >= '0' && c <= '9')))) {
        return false;
      }
    }
    return !value.isEmpty();
  }

  /** Written out: codes are compared more often than anything else, also before Java is warm. */
  @Override
  public boolean equals(Object other) {
    return other instanceof AnalyteCode code && value.equals(code.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public int compareTo(AnalyteCode other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
