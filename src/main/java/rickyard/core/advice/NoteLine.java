package rickyard.core.advice;

import java.io.Serializable;

/** Something to know about a diet: a stable code and a sentence. */
public record NoteLine(String code, String words) implements Serializable {}
