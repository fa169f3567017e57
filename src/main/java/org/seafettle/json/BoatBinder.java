package org.seafettle.json;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.seafettle.quantity.Kind;
import org.seafettle.survey.Boat;
import org.seafettle.survey.Feature;
import org.seafettle.survey.Fuel;
import org.seafettle.survey.Water;

/** Reads the boat. */
final class BoatBinder {

  private BoatBinder() {}

  /** The boat, with a stand-in for a missing name, so that the rest can be checked. */
  static Boat bind(Field boat) {
    return new Boat(
        boat.child("name").text().orElse("?"),
        boat.child("hin").text(),
        boat.child("length").positive(Kind.LENGTH),
        boat.child("built").whole(1850, 2100),
        boat.child("water").word(Water.class),
        fuel(boat.child("fuel")),
        features(boat.child("features")));
  }

  private static Optional<Fuel> fuel(Field fuel) {
    var tank = fuel.child("tank").positive(Kind.VOLUME);
    return fuel.child("kind").text().flatMap(SurveyWords::fuel).map(kind -> new Fuel(kind, tank));
  }

  private static Map<Feature, Boolean> features(Field features) {
    var known = new EnumMap<Feature, Boolean>(Feature.class);
    for (var feature : Feature.values()) {
      features.child(feature.word()).flag().ifPresent(has -> known.put(feature, has));
    }
    return known;
  }
}
