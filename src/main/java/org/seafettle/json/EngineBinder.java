package org.seafettle.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.seafettle.quantity.Kind;
import org.seafettle.survey.Circuit;
import org.seafettle.survey.Engine;
import org.seafettle.survey.EngineType;
import org.seafettle.survey.MakersLimit;

/** Reads an engine. */
final class EngineBinder {

  private final LimitBinder limits;

  EngineBinder(LimitBinder limits) {
    this.limits = limits;
  }

  /** The engine, where its name and type are known. */
  Optional<Engine> bind(Field engine) {
    var plate =
        new Engine.Plate(
            engine.child("maker").text(),
            engine.child("model").text(),
            engine.child("serial").text(),
            engine.child("year").whole(1900, 2100));
    var cylinders = engine.child("cylinders").whole(1, 24);
    var power = engine.child("power").positive(Kind.POWER);
    var hours = engine.child("hours").notNegative(Kind.DURATION);
    var cooling = engine.child("cooling").word(Circuit.class);
    var makers = limits(engine.child("limits"));
    var id = engine.child("id").text();
    return engine
        .child("type")
        .word(EngineType.class)
        .flatMap(
            type ->
                id.map(
                    name ->
                        new Engine(name, type, plate, cylinders, power, hours, cooling, makers)));
  }

  private List<MakersLimit> limits(Field list) {
    var bound = new ArrayList<MakersLimit>();
    for (var item : list.items()) {
      var limit = limits.bind(item);
      if (limit.isPresent()) {
        if (bound.stream().anyMatch(l -> l.check().equals(limit.get().check()))) {
          item.blame(
              "There are two limits for \"" + limit.get().check() + "\".",
              "Put them into one entry.");
        }
        bound.add(limit.get());
      }
    }
    return bound;
  }
}
