package org.seafettle.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.problem.Spelling;
import org.seafettle.report.Words;

/** Reads the words of a language, and holds their keys against the supplied ones. */
final class WordFile {

  private final Templates templates;

  WordFile(Templates templates) {
    this.templates = templates;
  }

  Words words(String language, String supplied) {
    var name = "words-" + language + ".properties";
    if (!templates.names().contains(name)) {
      throw Refused.because(
          "There are no words for the language \"" + language + "\".",
          "Put a file "
              + name
              + " into the folder of templates, with every key of "
              + supplied
              + ".");
    }
    var texts = parsed(name);
    var wanted = Templates.properties(Templates.supplied().text(supplied));
    Refused.ifAny(differences(name, texts, wanted));
    Refused.ifAny(
        Stream.concat(months(name, texts).stream(), glossary(name, texts).stream()).toList());
    return new Words(Locale.forLanguageTag(language), texts);
  }

  private List<Problem> glossary(String name, Map<String, String> texts) {
    return texts.entrySet().stream()
        .filter(text -> text.getKey().startsWith("glossary.") && !text.getValue().contains(": "))
        .map(
            text ->
                new Problem(
                    Place.field(templates.place(name).file(), text.getKey()),
                    "It is not said where the word ends and its meaning begins.",
                    "Write the word, a colon, a blank and what it means."))
        .toList();
  }

  private List<Problem> months(String name, Map<String, String> texts) {
    return Stream.of("format.months", "format.months-short")
        .filter(key -> texts.get(key).split(",").length != 12)
        .map(
            key ->
                new Problem(
                    Place.field(templates.place(name).file(), key),
                    "There are not twelve names between commas.",
                    "Write the months from January to December."))
        .toList();
  }

  Map<String, String> parsed(String name) {
    try {
      return Templates.properties(templates.text(name));
    } catch (IllegalArgumentException badEscape) {
      throw new Refused(
          new Problem(
              templates.place(name),
              "A backslash starts an escape that is none.",
              "Write \\u and four hexadecimal digits, or two backslashes."));
    }
  }

  private ArrayList<Problem> differences(
      String name, Map<String, String> texts, Map<String, String> wanted) {
    var problems = new ArrayList<Problem>();
    var file = templates.place(name).file();
    for (var key : wanted.keySet()) {
      if (!texts.containsKey(key)) {
        problems.add(
            new Problem(
                Place.field(file, key),
                "The text is missing.",
                "Add a line for it; in English it is: " + wanted.get(key)));
      }
    }
    for (var key : texts.keySet()) {
      if (!wanted.containsKey(key)) {
        problems.add(
            new Problem(
                Place.field(file, key),
                "No report asks for this text.",
                Spelling.nearest(key, wanted.keySet())
                    .map(near -> "Did you mean \"" + near + "\"?")
                    .orElse("Take it out.")));
      }
    }
    return problems;
  }
}
