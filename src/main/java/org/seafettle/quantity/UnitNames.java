package org.seafettle.quantity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.problem.Refused;
import org.seafettle.problem.Spelling;

/** Finds a unit by what was written, and says what was probably meant where there is none. */
final class UnitNames {

  private static final Map<String, MeasuredUnit> BY_NAME = byName();

  /** Words that mean several things, and how to say which. */
  private static final Map<String, String> AMBIGUOUS =
      Map.ofEntries(
          Map.entry("C", "Write °C (or Cel) for degrees Celsius."),
          Map.entry("F", "Write °F (or [degF]) for degrees Fahrenheit."),
          Map.entry("oz", "Write fl oz for a volume; give a mass in g or lb."),
          Map.entry("M", "Write m for metres, min for minutes or mo for months."),
          Map.entry("PS", "Write the power in kW (1 PS is 0.7355 kW)."),
          Map.entry("psia", "Write the pressure above that of the air, in psi."),
          Map.entry("bara", "Write the pressure above that of the air, in bar."),
          Map.entry("imp gal", "Write the volume in L (an imperial gallon is 4.546 L)."),
          Map.entry("UK gal", "Write the volume in L (an imperial gallon is 4.546 L)."));

  private UnitNames() {}

  /**
   * @param name the unit as written
   * @param number the number in front of it, for the remedy, or empty
   */
  static MeasuredUnit find(String name, String number) {
    var tidy = name.strip().replace('\u2126', 'Ω');
    return Optional.ofNullable(AMBIGUOUS.containsKey(tidy) ? null : BY_NAME.get(tidy))
        .orElseThrow(() -> unknown(tidy, number));
  }

  private static Refused unknown(String name, String number) {
    var meanings = AMBIGUOUS.get(name);
    if (meanings != null) {
      return Refused.because("\"" + name + "\" does not say which unit is meant.", meanings);
    }
    var sameLetters = sameLetters(name);
    if (!sameLetters.isEmpty()) {
      return Refused.because(
          "There is no unit \"" + name + "\"; capital and small letters matter.",
          "Write " + written(sameLetters, number) + ".");
    }
    var near =
        Spelling.nearest(name, BY_NAME.keySet().stream().filter(k -> k.length() > 1).toList());
    return Refused.because(
        "There is no unit \"" + name + "\".",
        near.map(k -> "Did you mean " + written(List.of(k), number) + "?")
            .orElse("Write a unit such as V, A, °C, psi, L/min or h after the number."));
  }

  /** The names that differ only in case, one for each unit, its symbol where that is among them. */
  private static List<String> sameLetters(String name) {
    var found = new LinkedHashMap<MeasuredUnit, String>();
    for (var entry : BY_NAME.entrySet()) {
      if (entry.getKey().toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT))) {
        found.putIfAbsent(entry.getValue(), entry.getKey());
      }
    }
    return new ArrayList<>(found.values());
  }

  private static String written(List<String> names, String number) {
    var before = number.isEmpty() ? "" : number + " ";
    return new TreeSet<>(names)
        .stream().map(n -> "\"" + before + n + "\"").collect(Collectors.joining(" or "));
  }

  private static Map<String, MeasuredUnit> byName() {
    var names = new LinkedHashMap<String, MeasuredUnit>();
    for (var unit : MeasuredUnit.values()) {
      Stream.concat(Stream.of(unit.symbol(), unit.code()), unit.spellings().stream())
          .distinct()
          .forEach(
              name -> {
                if (names.put(name, unit) != null) {
                  throw new IllegalStateException("two units are written " + name);
                }
              });
    }
    return names;
  }
}
