package org.seafettle.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Outcome;
import org.seafettle.catalogue.StopOrder;

/**
 * A maker who allows an oil pressure at idle down to 0.3 bar, where the catalogue's limit is 0.7.
 */
class MakersLimitTest {

  private static final Check PRESSURE = OneLook.check("oil-pressure-at-idle");
  private static final OneLook STERNDRIVE = OneLook.aboard("sterndrive-gasoline");

  /** The check, its limit changed in how grave it is, and in whether a law requires to keep it. */
  private static Check pressure(FindingClass grave, boolean byLaw) {
    return new Check(
        PRESSURE.id(),
        PRESSURE.subsystem(),
        PRESSURE.on(),
        PRESSURE.scope(),
        PRESSURE.guidance(),
        PRESSURE.criterion(),
        PRESSURE.outcomes().stream()
            .map(o -> o.name().equals("below-limit") ? changed(o, grave, byLaw) : o)
            .toList(),
        PRESSURE.expected());
  }

  private static Outcome changed(Outcome outcome, FindingClass grave, boolean byLaw) {
    var advice = outcome.advice().orElseThrow();
    var stop =
        grave == FindingClass.STOP
            ? Optional.of(StopOrder.DO_NOT_START)
            : Optional.<StopOrder>empty();
    return new Outcome(
        outcome.name(),
        outcome.scope(),
        grave,
        outcome.saying(),
        Optional.of(new Outcome.Advice(advice.action(), advice.by(), stop, byLaw)),
        outcome.citation(),
        outcome.sayable());
  }

  private static Measured measured(OneLook boat, Check check, String pressure) {
    var survey =
        boat.survey(
            "{\"check\": \"oil-pressure-at-idle\", \"on\": \"port\","
                + " \"readings\": {\"pressure\": \"%s\"}, \"conditions\": [\"engine-warm\"]}"
                    .formatted(pressure));
    var judge = new Judge(survey, check, survey.engines().get(0));
    return ((Sighting.Seen) judge.judge(survey.findings().get(0))).measured().orElseThrow();
  }

  private static Optional<String> hidden(Check check, String pressure) {
    var loose = STERNDRIVE.makersLimit("oil-pressure-at-idle", "\"lowest\": \"0.3 bar\"");
    return measured(loose, check, pressure).hidden().map(Outcome::name);
  }

  @Test
  void a_loose_limit_of_the_maker_does_not_hide_a_stop() {
    assertThat(hidden(pressure(FindingClass.STOP, false), "0.5 bar")).contains("below-limit");
  }

  @Test
  void a_loose_limit_of_the_maker_does_not_hide_what_a_law_requires() {
    assertThat(hidden(pressure(FindingClass.BEFORE_USE, true), "0.5 bar")).contains("below-limit");
  }

  @Test
  void of_anything_else_the_maker_knows_more_than_the_catalogue() {
    assertThat(hidden(pressure(FindingClass.BEFORE_USE, false), "0.5 bar")).isEmpty();
  }

  @Test
  void what_the_maker_finds_as_grave_as_the_catalogue_is_told_once() {
    assertThat(hidden(pressure(FindingClass.STOP, false), "0.2 bar")).isEmpty();
    assertThat(hidden(pressure(FindingClass.STOP, false), "1.5 bar")).isEmpty();
  }

  @Test
  void a_maker_who_asks_for_more_than_the_catalogue_hides_nothing() {
    var strict = STERNDRIVE.makersLimit("oil-pressure-at-idle", "\"lowest\": \"2 bar\"");
    var measured = measured(strict, pressure(FindingClass.STOP, true), "1.5 bar");
    assertThat(measured.measure().maker()).isPresent();
    assertThat(measured.hidden()).isEmpty();
  }

  @Test
  void without_a_limit_of_the_maker_nothing_is_hidden() {
    assertThat(measured(STERNDRIVE, pressure(FindingClass.STOP, true), "0.5 bar").hidden())
        .isEmpty();
  }
}
