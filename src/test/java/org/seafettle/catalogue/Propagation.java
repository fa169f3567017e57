package org.seafettle.catalogue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.seafettle.json.CatalogueReader;
import org.seafettle.json.SurveyReader;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Evidence;

/**
 * What a derivation makes of the uncertainties of its readings, for the tests of other packages.
 */
public final class Propagation {

  private Propagation() {}

  /** The uncertainty of a sum of readings with these uncertainties. */
  public static double ofSum(double... uncertainties) {
    var readings = new LinkedHashMap<String, List<Quantity>>();
    var specs = new ArrayList<ReadingSpec>();
    for (double u : uncertainties) {
      var name = "reading-" + specs.size();
      var uncertain =
          new Quantity(
              BigDecimal.valueOf(100), Optional.of(BigDecimal.valueOf(u)), MeasuredUnit.ONE);
      readings.put(name, List.of(uncertain));
      specs.add(
          new ReadingSpec(
              name,
              MeasuredUnit.ONE,
              0,
              1000,
              true,
              false,
              OptionalDouble.empty(),
              Optional.empty()));
    }
    var evidence = new Evidence(List.of(), readings, List.of(), Optional.empty());
    var names = List.copyOf(readings.keySet());
    return Inputs.of(facts(evidence), specs)
        .spread(in -> names.stream().mapToDouble(in::get).sum())
        .orElseThrow();
  }

  /** Of the usual boat, with these readings on her engine. */
  static Facts facts(Evidence evidence) {
    try {
      var written = CatalogueCase.survey(JsonNodeFactory.instance.objectNode()).toString();
      var survey = SurveyReader.bind(written, CatalogueReader.supplied());
      return new Facts(survey, survey.engines().get(0), "sum", evidence);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
