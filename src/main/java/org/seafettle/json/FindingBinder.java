package org.seafettle.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.seafettle.catalogue.Catalogue;
import org.seafettle.catalogue.Check;
import org.seafettle.survey.Evidence;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Survey;

/** Reads the findings. */
final class FindingBinder {

  private final Catalogue catalogue;
  private final ComponentNames names;
  private final List<String> photos;
  private final Optional<Survey> bare;

  /**
   * @param catalogue the checks that can be named
   * @param names the components that can be named
   * @param photos the photographs that can be named
   * @param bare the survey without its findings, where it could be read so far
   */
  FindingBinder(
      Catalogue catalogue, ComponentNames names, List<String> photos, Optional<Survey> bare) {
    this.catalogue = catalogue;
    this.names = names;
    this.photos = photos;
    this.bare = bare;
  }

  List<Finding> bind(Field list) {
    var findings = new ArrayList<Finding>();
    var first = new HashMap<List<String>, Field>();
    for (var item : list.items()) {
      finding(item).ifPresent(f -> once(f, item, first, findings));
    }
    return findings;
  }

  private static void once(
      Finding finding, Field item, Map<List<String>, Field> first, List<Finding> findings) {
    var before = first.putIfAbsent(List.of(finding.check(), finding.on()), item);
    if (before == null) {
      findings.add(finding);
      return;
    }
    item.blame(
        "\""
            + finding.check()
            + "\" on \""
            + finding.on()
            + "\" is recorded already, in "
            + before.path()
            + ".",
        "Put both into one entry; where several words fit, \"is\" takes a list of them.");
  }

  private Optional<Check> check(Field item) {
    return item.child("check").text().flatMap(catalogue::check);
  }

  private Optional<Finding> finding(Field item) {
    photos(item);
    var state = FindingState.of(item, check(item));
    return check(item)
        .flatMap(
            check -> {
              var on = new FindingPlace(names, bare).on(item, check, state);
              var component = on.flatMap(id -> bare.flatMap(s -> s.component(id)));
              var evidence = new EvidenceBinder(check, bare, component, state).bind(item);
              return on.map(id -> complete(item, check, id, state, evidence));
            });
  }

  private Finding complete(
      Field item, Check check, String on, Finding.State state, Evidence evidence) {
    return new Finding(
        check.id(),
        on,
        state,
        evidence,
        item.child("photos").items().stream().flatMap(p -> p.text().stream()).toList(),
        item.child("note").text(),
        repair(item));
  }

  private static Optional<Finding.Repair> repair(Field item) {
    var begun = item.child("begun");
    if (begun.present() && item.child("done").present()) {
      begun.blame(
          "\"done\" and \"begun\" cannot both be.",
          "Keep \"done\" if the work is finished, else \"begun\".");
    }
    var done = item.child("done").text().map(what -> new Finding.Repair(true, what));
    return done.or(() -> begun.text().map(what -> new Finding.Repair(false, what)));
  }

  private void photos(Field item) {
    for (var photo : item.child("photos").items()) {
      photo
          .text()
          .filter(id -> !photos.contains(id))
          .ifPresent(
              id ->
                  photo.blame(
                      "There is no photograph called \"" + id + "\".",
                      photos.isEmpty()
                          ? "Enter it under photos, or leave it out here."
                          : Hints.words(id, photos)));
    }
  }
}
