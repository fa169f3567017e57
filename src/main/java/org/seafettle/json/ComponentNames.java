package org.seafettle.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.seafettle.survey.Boat;
import org.seafettle.survey.Component;

/** The components that a survey names, whatever else is wrong with them. */
final class ComponentNames {

  private final Map<String, Component.Kind> kinds = new LinkedHashMap<>();
  private boolean distinct = true;

  ComponentNames(Field root) {
    kinds.put(Boat.ID, Component.Kind.BOAT);
    collect(root.child("engines"), Component.Kind.ENGINE);
    collect(root.child("batteries"), Component.Kind.BATTERY);
    collect(root.child("pumps"), Component.Kind.PUMP);
  }

  private void collect(Field list, Component.Kind kind) {
    for (var item : list.items()) {
      var id = item.child("id");
      id.text()
          .filter(name -> kinds.putIfAbsent(name, kind) != null)
          .ifPresent(
              name -> {
                distinct = false;
                id.blame(
                    "Something else is called \"" + name + "\" already.",
                    "Give every engine, battery and pump a name of its own, other than \"boat\".");
              });
    }
  }

  boolean distinct() {
    return distinct;
  }

  List<String> of(Component.Kind kind) {
    return kinds.keySet().stream().filter(id -> kinds.get(id) == kind).toList();
  }

  Set<String> all() {
    return kinds.keySet();
  }

  Optional<Component.Kind> kind(String id) {
    return Optional.ofNullable(kinds.get(id));
  }

  /** Whether it is the name of such a component; blames the field where it is not. */
  boolean is(Field field, String id, Component.Kind wanted) {
    if (kind(id).filter(k -> k == wanted).isPresent()) {
      return true;
    }
    var what = Hints.noun(wanted);
    field.blame(
        "There is no " + what + " called \"" + id + "\".",
        of(wanted).isEmpty()
            ? "Enter the " + what + " in the survey, or leave this out."
            : Hints.words(id, of(wanted)));
    return false;
  }
}
