package org.seafettle.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.seafettle.catalogue.Check;
import org.seafettle.catalogue.Condition;
import org.seafettle.catalogue.Criterion;
import org.seafettle.catalogue.Interval;
import org.seafettle.catalogue.ReadingSpec;
import org.seafettle.quantity.Kind;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Component;
import org.seafettle.survey.Engine;
import org.seafettle.survey.Evidence;
import org.seafettle.survey.Finding;
import org.seafettle.survey.Survey;

/** Reads what was seen and measured for one check. */
final class EvidenceBinder {

  private final Check check;
  private final Optional<Survey> bare;
  private final Optional<Component> component;
  private final boolean partly;

  EvidenceBinder(
      Check check, Optional<Survey> bare, Optional<Component> component, Finding.State state) {
    this.check = check;
    this.bare = bare;
    this.component = component;
    this.partly = state instanceof Finding.State.Partly;
  }

  Evidence bind(Field item) {
    var words = words(item.child("is"));
    var readings = readings(item.child("readings"));
    if (!words.isEmpty() && !readings.isEmpty()) {
      item.child("is")
          .blame(
              "The finding gives a word and readings; only one of them can be judged.",
              "Keep the readings, or the word where nothing could be measured.");
    }
    return new Evidence(words, readings, conditions(item.child("conditions")), last(item));
  }

  private List<String> words(Field is) {
    var said = new ArrayList<String>();
    for (var field : is.oneOrMore()) {
      field.text().filter(word -> known(field, word)).ifPresent(said::add);
    }
    return said;
  }

  private boolean known(Field field, String word) {
    if (!check.words().contains(word)) {
      field.blame(
          "\"" + check.id() + "\" has no answer \"" + word + "\".",
          check.words().isEmpty() ? insteadOfWords() : Hints.words(word, check.words()));
      return false;
    }
    boolean meant =
        bare.flatMap(s -> component.map(c -> check.outcome(word, s, c).isPresent())).orElse(true);
    if (!meant) {
      field.blame(
          "\"" + word + "\" cannot be said of \"" + component.orElseThrow().id() + "\".",
          "Write a word that fits it, or correct what the survey says of it.");
    }
    return meant;
  }

  private String insteadOfWords() {
    return check.criterion() instanceof Interval
        ? "Write when it was last done: \"last\": {\"date\": …, \"hours\": …}."
        : "Write \"readings\" with " + quoted(specs()) + ".";
  }

  private List<String> specs() {
    return check.criterion().readings().stream().map(ReadingSpec::name).toList();
  }

  private static String quoted(List<String> names) {
    return "\"" + String.join("\", \"", names) + "\"";
  }

  private Map<String, List<Quantity>> readings(Field readings) {
    var bound = new LinkedHashMap<String, List<Quantity>>();
    for (var name : readings.names()) {
      var field = readings.child(name);
      var spec =
          check.criterion().readings().stream().filter(s -> s.name().equals(name)).findFirst();
      if (spec.isEmpty()) {
        field.blame(
            "\"" + check.id() + "\" has no reading \"" + name + "\".",
            specs().isEmpty() ? insteadOfReadings() : Hints.words(name, specs()));
      } else if (counted(field, spec.get())) {
        var values = ReadingBinder.bind(field, spec.get());
        if (!values.isEmpty()) {
          bound.put(name, values);
        }
      }
    }
    return bound;
  }

  private String insteadOfReadings() {
    return check.words().isEmpty()
        ? "Write when it was last done: \"last\": {\"date\": …, \"hours\": …}."
        : "Say it in a word: \"is\": \"" + check.words().get(0) + "\" or another of the check's.";
  }

  /** Whether there are as many values as there can be. */
  private boolean counted(Field field, ReadingSpec spec) {
    int given = field.oneOrMore().size();
    if (!spec.many()) {
      if (given > 1) {
        field.blame(
            given + " values for \"" + spec.name() + "\", which is read once.", "Write one value.");
      }
      return given == 1;
    }
    var cylinders =
        component
            .filter(Engine.class::isInstance)
            .map(c -> ((Engine) c).cylinders())
            .orElseGet(OptionalInt::empty);
    if (cylinders.isPresent() && (given > cylinders.getAsInt() || tooFew(given, cylinders))) {
      field.blame(
          given
              + (given == 1 ? " value" : " values")
              + " for "
              + cylinders.getAsInt()
              + (cylinders.getAsInt() == 1 ? " cylinder." : " cylinders."),
          "Write one value for each; say \"partly\" why some are missing.");
      return false;
    }
    if (given < 2 && check.criterion() instanceof Criterion.Spread) {
      field.blame(
          "One value for \"" + spec.name() + "\" cannot be compared with others.",
          "Write a list, one value for each cell or cylinder.");
      return false;
    }
    return true;
  }

  private boolean tooFew(int given, OptionalInt cylinders) {
    return given < cylinders.getAsInt() && !partly;
  }

  private List<String> conditions(Field conditions) {
    var known =
        check.criterion().readings().stream()
            .flatMap(s -> s.condition().stream())
            .map(Condition::word)
            .toList();
    var met = new ArrayList<String>();
    for (var field : conditions.items()) {
      field
          .text()
          .ifPresent(
              word -> {
                if (known.contains(word)) {
                  met.add(word);
                } else {
                  field.blame(
                      "\"" + check.id() + "\" has no condition \"" + word + "\".",
                      known.isEmpty()
                          ? "Leave it out, or write it into the \"note\"."
                          : Hints.words(word, known));
                }
              });
    }
    return met;
  }

  private Optional<Evidence.LastDone> last(Field item) {
    var last = item.child("last");
    if (last.present() && !(check.criterion() instanceof Interval)) {
      last.blame(
          "\"" + check.id() + "\" does not ask when it was last done.",
          "Put it under \"work\", or into the \"note\".");
      return Optional.empty();
    }
    var hours = last.child("hours").notNegative(Kind.DURATION);
    return last.child("date").date().map(date -> new Evidence.LastDone(date, hours));
  }
}
