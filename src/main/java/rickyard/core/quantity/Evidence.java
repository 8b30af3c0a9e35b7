package rickyard.core.quantity;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;

/** What a number rests on. Every number on a page leads back through these to cells and tables. */
public sealed interface Evidence extends Serializable {

  /** The word of the output columns: reported, derived, assumed or answered. */
  String origin();

  /** Printed by a laboratory. */
  record Reported(Place place, String raw) implements Evidence {
    public Reported {
      requireNonNull(place, "place");
      requireNonNull(raw, "raw");
    }

    @Override
    public String origin() {
      return "reported";
    }
  }

  /**
   * Printed by a laboratory that leaves something open which a hint for its layout fills.
   *
   * @param hint what was filled, and the row that says so
   */
  record Hinted(Place place, String raw, String hint) implements Evidence {
    public Hinted {
      requireNonNull(place, "place");
      requireNonNull(raw, "raw");
      requireNonNull(hint, "hint");
    }

    @Override
    public String origin() {
      return "assumed";
    }
  }

  /**
   * Computed from other numbers.
   *
   * @param formula the formula in the field's words, for example {@code WSC + starch}
   * @param inputs the numbers that went in, in the order of the formula
   */
  record Derived(String formula, List<Term> inputs) implements Evidence {
    public Derived {
      requireNonNull(formula, "formula");
      inputs = List.copyOf(inputs);
    }

    @Override
    public String origin() {
      return "derived";
    }
  }

  /**
   * Taken from a table because nobody measured it.
   *
   * @param table name and version of the table, for example {@code typical-values 1}
   * @param row the row's key
   */
  record Assumed(String table, String row) implements Evidence {
    public Assumed {
      requireNonNull(table, "table");
      requireNonNull(row, "row");
    }

    @Override
    public String origin() {
      return "assumed";
    }
  }

  /** Printed on a feed's label or entered in a register of the office. */
  record Registered(String register, int row, String column, String raw) implements Evidence {
    public Registered {
      requireNonNull(register, "register");
      requireNonNull(column, "column");
      requireNonNull(raw, "raw");
    }

    @Override
    public String origin() {
      return "reported";
    }
  }

  /** Said by a person in answer to a question. */
  record Answered(String questionId, String by, String on) implements Evidence {
    public Answered {
      requireNonNull(questionId, "questionId");
      requireNonNull(by, "by");
      requireNonNull(on, "on");
    }

    @Override
    public String origin() {
      return "answered";
    }
  }

  /** A named number inside a formula. */
  record Term(String name, Measured value) implements Serializable {
    public Term {
      requireNonNull(name, "name");
      requireNonNull(value, "value");
    }
  }
}
