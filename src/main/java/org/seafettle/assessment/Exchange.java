package org.seafettle.assessment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Survey;

/** Something that is not what it was, so that what was read before does not go on from there. */
public sealed interface Exchange {

  /** What it is on, as it is now. */
  Component now();

  /**
   * Another engine or battery under the name of an earlier one.
   *
   * @param then what was there
   * @param now what is there now
   * @param seen the last survey of what was there
   */
  record Renewed(Component then, Component now, LocalDate seen) implements Exchange {}

  /**
   * An hour meter that shows less than before.
   *
   * @param now the engine
   * @param before what the meter showed
   * @param after what it showed next
   */
  record SetBack(Engine now, Meter.Point before, Meter.Point after) implements Exchange {}

  /**
   * All that the surveys tell of, in the order of the components.
   *
   * @param earlier oldest first
   */
  static List<Exchange> of(Survey survey, List<Survey> earlier) {
    var all = new ArrayList<Exchange>();
    survey.components().forEach(c -> renewed(c, earlier).ifPresent(all::add));
    survey.engines().forEach(e -> Meter.of(survey, earlier, e).setBack(e).ifPresent(all::add));
    return all;
  }

  private static Optional<Renewed> renewed(Component now, List<Survey> earlier) {
    return earlier.stream()
        .flatMap(
            s ->
                s
                    .component(now.id())
                    .map(then -> new Renewed(then, now, s.occasion().date()))
                    .stream())
        .reduce((older, newer) -> newer)
        .filter(last -> !now.isSameAs(last.then()));
  }
}
