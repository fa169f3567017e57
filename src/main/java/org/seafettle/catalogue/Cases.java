package org.seafettle.catalogue;

import java.util.List;
import java.util.Optional;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/**
 * The same thing for different boats and engines: the first case that covers is meant.
 *
 * @param cases in order
 */
public record Cases<T>(List<Case<T>> cases) {

  public Cases {
    cases = List.copyOf(cases);
  }

  public static <T> Cases<T> always(T value) {
    return new Cases<>(List.of(new Case<>(Scope.ANY, value)));
  }

  public Optional<T> pick(Survey survey, Component component) {
    return cases.stream()
        .filter(c -> c.scope().covers(survey, component))
        .findFirst()
        .map(Case::value);
  }

  /** What holds within a scope. */
  public record Case<T>(Scope scope, T value) {}
}
