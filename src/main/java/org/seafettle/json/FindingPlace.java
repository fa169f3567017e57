package org.seafettle.json;

import java.util.List;
import java.util.Optional;
import org.seafettle.catalogue.Check;
import org.seafettle.survey.Boat;
import org.seafettle.survey.Component;
import org.seafettle.survey.Component.Kind;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Survey;

/** Reads what a finding is on. */
final class FindingPlace {

  private final ComponentNames names;
  private final Optional<Survey> bare;

  FindingPlace(ComponentNames names, Optional<Survey> bare) {
    this.names = names;
    this.bare = bare;
  }

  /** The component, where it is there and the check can be on it. */
  Optional<String> on(Field item, Check check, Finding.State state) {
    var on = item.child("on");
    var id = on.present() ? named(on, check, state) : understood(item, check, state);
    return id.filter(name -> inScope(item, check, name, state));
  }

  private Optional<String> named(Field on, Check check, Finding.State state) {
    return on.text().filter(id -> fits(on, check, id, state));
  }

  private boolean fits(Field on, Check check, String id, Finding.State state) {
    var kind = names.kind(id);
    if (kind.filter(k -> k == check.on()).isPresent() || standsIn(check, id, state)) {
      return true;
    }
    if (kind.isEmpty()) {
      return names.is(on, id, check.on());
    }
    on.blame(
        "\""
            + check.id()
            + "\" is a check of "
            + aNoun(check.on())
            + "; \""
            + id
            + "\" is "
            + (kind.get() == Kind.BOAT ? "the boat" : aNoun(kind.get()))
            + ".",
        remedy(check));
    return false;
  }

  private String remedy(Check check) {
    var those = names.of(check.on());
    return those.isEmpty()
        ? "Enter the " + Hints.noun(check.on()) + " in the survey, or leave the finding out."
        : "Write one of: " + String.join(", ", those) + ".";
  }

  /** The component that is meant where the finding does not say. */
  private Optional<String> understood(Field item, Check check, Finding.State state) {
    var those = names.of(check.on());
    if (those.size() == 1) {
      return Optional.of(those.get(0));
    }
    if (those.isEmpty()) {
      var standIn = check.on() == Kind.PUMP ? List.of(Boat.ID) : names.of(Kind.ENGINE);
      if (standIn.size() == 1 && standsIn(check, standIn.get(0), state)) {
        return Optional.of(standIn.get(0));
      }
      item.blame(
          "The survey has no " + Hints.noun(check.on()) + " for \"" + check.id() + "\".",
          remedy(check));
      return Optional.empty();
    }
    item.blame(
        "The finding does not say on which " + Hints.noun(check.on()) + " it is.",
        "Add \"on\" with one of: " + String.join(", ", those) + ".");
    return Optional.empty();
  }

  /**
   * Where a battery or pump was not recorded, the engine or the boat stands in for it: one can say
   * there why it was not inspected.
   */
  private boolean standsIn(Check check, String id, Finding.State state) {
    boolean unseen =
        state instanceof Finding.State.NotInspected || state instanceof Finding.State.NotApplicable;
    return unseen
        && switch (check.on()) {
          case BATTERY ->
              names.kind(id).filter(k -> k == Kind.ENGINE).isPresent() && !hasBattery(id);
          case PUMP -> id.equals(Boat.ID) && names.of(Kind.PUMP).isEmpty();
          case ENGINE, BOAT -> false;
        };
  }

  private boolean hasBattery(String engine) {
    return bare.map(s -> s.outfit().batteries().stream().anyMatch(b -> b.servesEngine(engine)))
        .orElse(!names.of(Kind.BATTERY).isEmpty());
  }

  private boolean inScope(Field item, Check check, String id, Finding.State state) {
    if (bare.isEmpty() || state instanceof Finding.State.NotApplicable) {
      return true;
    }
    var why =
        bare.get().component(id).flatMap(c -> ScopeWords.outside(check.scope(), bare.get(), c));
    why.ifPresent(
        reason ->
            item.child("check")
                .blame(
                    "\"" + check.id() + "\" does not apply to \"" + id + "\": " + reason + ".",
                    "Leave the finding out, or correct what the survey says there."));
    return why.isEmpty();
  }

  private static String aNoun(Component.Kind kind) {
    return switch (kind) {
      case ENGINE -> "an engine";
      case BATTERY -> "a battery";
      case PUMP -> "a pump";
      case BOAT -> "the boat";
    };
  }
}
