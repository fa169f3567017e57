package org.seafettle.json;

import java.util.ArrayList;
import java.util.Optional;
import org.seafettle.quantity.Kind;
import org.seafettle.survey.Battery;
import org.seafettle.survey.Chemistry;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Outfit;
import org.seafettle.survey.Pump;

/** Reads the engines, batteries and pumps. */
final class OutfitBinder {

  private final Field root;
  private final ComponentNames names;

  OutfitBinder(Field root, ComponentNames names) {
    this.root = root;
    this.names = names;
  }

  /** The outfit, where no engine is missing and no two components share a name. */
  Optional<Outfit> bind(EngineBinder binder) {
    var engines = new ArrayList<Engine>();
    root.child("engines").items().forEach(e -> binder.bind(e).ifPresent(engines::add));
    var batteries = new ArrayList<Battery>();
    root.child("batteries").items().forEach(b -> battery(b).ifPresent(batteries::add));
    var pumps = new ArrayList<Pump>();
    root.child("pumps").items().forEach(p -> pump(p).ifPresent(pumps::add));
    return engines.isEmpty() || !names.distinct()
        ? Optional.empty()
        : Optional.of(new Outfit(engines, batteries, pumps));
  }

  private Optional<Battery> battery(Field battery) {
    var serves = new ArrayList<String>();
    for (var engine : battery.child("serves").items()) {
      engine
          .text()
          .filter(id -> names.is(engine, id, Component.Kind.ENGINE))
          .ifPresent(serves::add);
    }
    var chemistry = battery.child("chemistry").word(Chemistry.class);
    var nominal = battery.child("nominal").positive(Kind.VOLTAGE);
    var capacity = battery.child("capacity").positive(Kind.CHARGE);
    var cranking = battery.child("cranking").positive(Kind.CURRENT);
    var installed = battery.child("installed").whole(1950, 2100);
    return battery
        .child("id")
        .text()
        .map(id -> new Battery(id, serves, chemistry, nominal, capacity, cranking, installed));
  }

  private Optional<Pump> pump(Field pump) {
    var rated = pump.child("rated").positive(Kind.VOLUME_FLOW);
    var draws = pump.child("draws").positive(Kind.CURRENT);
    var fed = pump.child("fed-by");
    var battery = fed.text().filter(id -> names.is(fed, id, Component.Kind.BATTERY));
    return pump.child("id").text().map(id -> new Pump(id, rated, draws, battery));
  }
}
