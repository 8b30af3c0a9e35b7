package rickyard.intake.isolate;

/** A child gave no usable answer on one file. */
final class ChildFaultException extends Exception {
  private static final long serialVersionUID = 1L;
  private final Fault fault;

  ChildFaultException(Fault fault) {
    super(fault.code());
    this.fault = fault;
  }

  Fault fault() {
    return fault;
  }
}
