package org.seafettle.catalogue;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Chemistry;
import org.seafettle.survey.Circuit;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.Feature;
import org.seafettle.survey.Survey;
import org.seafettle.survey.Water;

/**
 * For what a check, or one of its limits, is true. An empty set asks nothing. What the survey does
 * not say never excludes: a check applies until the survey tells that it does not.
 *
 * @param engines the kinds of engine; for a component of the boat one such engine aboard suffices
 * @param circuits how the engine is cooled
 * @param waters in which the boat lies
 * @param chemistries what the battery is made of
 * @param afloat afloat ({@code true}) or ashore ({@code false}) on the day
 * @param features what the boat must have or must not have
 */
public record Scope(
    Set<EngineType> engines,
    Set<Circuit> circuits,
    Set<Water> waters,
    Set<Chemistry> chemistries,
    Optional<Boolean> afloat,
    Map<Feature, Boolean> features) {

  /** True for everything. */
  public static final Scope ANY =
      new Scope(Set.of(), Set.of(), Set.of(), Set.of(), Optional.empty(), Map.of());

  public Scope {
    engines = Set.copyOf(engines);
    circuits = Set.copyOf(circuits);
    waters = Set.copyOf(waters);
    chemistries = Set.copyOf(chemistries);
    features = features.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(features));
  }

  public boolean covers(Survey survey, Component component) {
    return coversEngine(survey, component)
        && coversBattery(component)
        && admits(waters, survey.boat().water())
        && survey.occasion().conditions().afloat().map(this::admitsAfloat).orElse(true)
        && features.entrySet().stream()
            .allMatch(f -> survey.boat().has(f.getKey()).map(f.getValue()::equals).orElse(true));
  }

  private boolean coversEngine(Survey survey, Component component) {
    if (component instanceof Engine engine) {
      return coversEngine(engine);
    }
    return survey.engines().stream().anyMatch(this::coversEngine);
  }

  private boolean coversEngine(Engine engine) {
    return covers(engine.type()) && admits(circuits, engine.circuit());
  }

  /** Whether it is true for this kind of engine, whatever else it asks for. */
  public boolean covers(EngineType type) {
    return admits(engines, Optional.of(type));
  }

  private boolean coversBattery(Component component) {
    return !(component instanceof Battery battery) || admits(chemistries, battery.chemistry());
  }

  private boolean admitsAfloat(boolean isAfloat) {
    return afloat.map(wanted -> wanted == isAfloat).orElse(true);
  }

  private static <T> boolean admits(Set<T> wanted, Optional<T> actual) {
    return wanted.isEmpty() || actual.map(wanted::contains).orElse(true);
  }
}
