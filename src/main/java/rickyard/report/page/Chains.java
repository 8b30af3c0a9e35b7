package rickyard.report.page;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.standard.expression.IStandardVariableExpression;
import org.thymeleaf.standard.expression.IStandardVariableExpressionEvaluator;
import org.thymeleaf.standard.expression.StandardExpressionExecutionContext;
import org.thymeleaf.standard.expression.StandardExpressions;

/**
 * Works out the expressions of the page's own templates that only walk from a variable through
 * methods without arguments, as {@code h.sheet().isEmpty()}; all others go to the usual evaluator.
 * The page has some hundred thousand of them, and the usual one looks each of their methods up
 * anew. Not for templates of an office: it asks nothing about what may be called.
 */
final class Chains implements IStandardVariableExpressionEvaluator {
  private static final Pattern CHAIN =
      Pattern.compile("[A-Za-z][A-Za-z0-9]*(\\.[A-Za-z][A-Za-z0-9]*\\(\\))*");

  private final IStandardVariableExpressionEvaluator usual;
  private final Map<String, Optional<List<String>>> parsed = new ConcurrentHashMap<>();
  private final Map<Call, Method> methods = new ConcurrentHashMap<>();

  Chains(IStandardVariableExpressionEvaluator usual) {
    this.usual = usual;
  }

  /** A method as an expression calls it. */
  private record Call(Class<?> type, String name) {}

  @Override
  public @Nullable Object evaluate(
      IExpressionContext context,
      IStandardVariableExpression expression,
      StandardExpressionExecutionContext execution) {
    Optional<List<String>> chain =
        parsed.computeIfAbsent(expression.getExpression(), Chains::parsed);
    if (chain.isEmpty()
        || expression.getUseSelectionAsRoot()
        || !context.containsVariable(chain.get().get(0))) {
      return usual.evaluate(context, expression, execution);
    }
    Object found = walk(context, chain.get());
    return execution.getPerformTypeConversion()
        ? StandardExpressions.getConversionService(context.getConfiguration())
            .convert(context, found, String.class)
        : found;
  }

  private static Optional<List<String>> parsed(String expression) {
    return CHAIN.matcher(expression).matches()
        ? Optional.of(List.of(expression.replace("()", "").split("\\.", -1)))
        : Optional.empty();
  }

  private @Nullable Object walk(IExpressionContext context, List<String> chain) {
    Object at = context.getVariable(chain.get(0));
    for (String name : chain.subList(1, chain.size())) {
      if (at == null) {
        throw new IllegalStateException("nothing to ask for " + name + " in " + chain);
      }
      at = called(at, name);
    }
    return at;
  }

  private @Nullable Object called(Object target, String name) {
    Method method =
        methods.computeIfAbsent(
            new Call(target.getClass(), name), call -> method(call.type(), name));
    try {
      return method.invoke(target);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(name + " of " + target.getClass() + " cannot be called", e);
    }
  }

  /** The method where it may be called: of a public type, for example the interface of a list. */
  private static Method method(Class<?> type, String name) {
    return find(type, name)
        .orElseThrow(() -> new IllegalStateException("no " + name + " of " + type));
  }

  private static Optional<Method> find(Class<?> type, String name) {
    if (Modifier.isPublic(type.getModifiers())) {
      try {
        return Optional.of(type.getMethod(name));
      } catch (NoSuchMethodException e) {
        return Optional.empty();
      }
    }
    return Stream.concat(Stream.ofNullable(type.getSuperclass()), Stream.of(type.getInterfaces()))
        .flatMap(above -> find(above, name).stream())
        .findFirst();
  }
}
