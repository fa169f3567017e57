package org.seafettle.json;

import java.util.List;
import java.util.Optional;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.survey.Survey;

/** Reads a whole survey. */
final class SurveyBinder {

  private final Catalogue catalogue;

  SurveyBinder(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The survey; complete only where nothing was blamed. */
  Optional<Survey> bind(Field root) {
    var names = new ComponentNames(root);
    var occasion = OccasionBinder.bind(root.child("survey"));
    var boat = BoatBinder.bind(root.child("boat"));
    var outfit = new OutfitBinder(root, names).bind(new EngineBinder(new LimitBinder(catalogue)));
    var photos = RecordBinder.photos(root.child("photos"));
    var work = RecordBinder.work(root.child("work"), names);
    var prices = RecordBinder.prices(root.child("prices"), catalogue);
    var earlier = root.child("earlier").items().stream().flatMap(e -> e.text().stream()).toList();
    var bare =
        outfit.map(o -> new Survey(occasion, boat, o, List.of(), photos, work, prices, earlier));
    var ids =
        root.child("photos").items().stream().flatMap(p -> p.child("id").text().stream()).toList();
    var findings = new FindingBinder(catalogue, names, ids, bare).bind(root.child("findings"));
    return outfit.map(o -> new Survey(occasion, boat, o, findings, photos, work, prices, earlier));
  }
}
