package org.seafettle.catalogue;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.seafettle.survey.Component;
import org.seafettle.survey.Purpose;
import org.seafettle.survey.Survey;

/**
 * Something to look at.
 *
 * @param id the word by which findings name it
 * @param subsystem in which it is graded
 * @param on the kind of component that it is on
 * @param scope for what it is true
 * @param guidance how it is done, and why
 * @param criterion how it is judged
 * @param outcomes what it can find, in the order of the catalogue
 * @param expected for which purposes a survey has to cover it
 */
public record Check(
    String id,
    Subsystem subsystem,
    Component.Kind on,
    Scope scope,
    Guidance guidance,
    Criterion criterion,
    List<Outcome> outcomes,
    Set<Purpose> expected) {

  public Check {
    outcomes = List.copyOf(outcomes);
    expected = expected.isEmpty() ? Set.of() : EnumSet.copyOf(expected);
  }

  /**
   * How a check is done, and why.
   *
   * @param title its name, as a report prints it
   * @param how the steps, each a sentence in the imperative
   * @param why what depends on it
   * @param instrument what is needed
   * @param since the catalogue's version that brought it
   * @param again the months after which to look again at what was well, common practice
   */
  public record Guidance(
      String title,
      List<String> how,
      String why,
      String instrument,
      String since,
      OptionalInt again) {

    public Guidance {
      how = List.copyOf(how);
    }
  }

  /** The outcome of a name that is meant for a component. */
  public Optional<Outcome> outcome(String name, Survey survey, Component component) {
    return outcomes.stream()
        .filter(o -> o.name().equals(name) && o.scope().covers(survey, component))
        .findFirst();
  }

  /** The worst that it can reveal on a component. */
  public Outcome worst(Survey survey, Component component) {
    return outcomes.stream()
        .filter(o -> outcome(o.name(), survey, component).filter(o::equals).isPresent())
        .max(Comparator.comparing(Outcome::findingClass))
        .orElseThrow();
  }

  /** The words that a finding may use, in the order of the catalogue. */
  public List<String> words() {
    return outcomes.stream().filter(Outcome::sayable).map(Outcome::name).distinct().toList();
  }
}
