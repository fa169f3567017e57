package org.seafettle.html;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the formulas that the catalogue can reach may say in a report, read from their sources: the
 * rules that are not met, the quantities they speak of, the facts that are missing.
 */
final class FormulaWords {

  private static final Path CATALOGUE = Path.of("src/main/java/org/seafettle/catalogue");
  private static final Path FORMULA = Path.of("src/main/java/org/seafettle/formula");
  private static final Pattern IMPORTED =
      Pattern.compile("import org\\.seafettle\\.formula\\.([a-z]+)\\.([A-Z]\\w+);");
  private static final Pattern RULE = Pattern.compile("DoesNotHold\\.because\\(\\s*\"([a-z-]+)\"");
  private static final Pattern FACT =
      Pattern.compile("missing\\(\"([a-z-]+)\"\\)|, \"([a-z-]+)\"\\)");
  private static final Pattern MISSED = Pattern.compile("Known\\.missing\\(\\s*\"([a-z-]+)\"\\)");
  private static final Pattern CONSTANT = Pattern.compile("String ([A-Z_]+) =\\s*\"([^\"]*)\"");
  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?:within|positive|notNegative|new Rows)\\(\\s*"
              + "((?:[A-Z_]+|\"[^\"]*\")(?:\\s*\\+\\s*\"[^\"]*\")?)");

  private FormulaWords() {}

  /** The sources of the formulas that the catalogue names, and of those that these use. */
  static Map<Path, String> reachable() throws IOException {
    var found = new LinkedHashMap<Path, String>();
    var open = new ArrayDeque<Path>();
    for (var source : sources(CATALOGUE).values()) {
      IMPORTED
          .matcher(source)
          .results()
          .forEach(i -> open.add(FORMULA.resolve(i.group(1)).resolve(i.group(2) + ".java")));
    }
    while (!open.isEmpty()) {
      var file = open.remove();
      if (!found.containsKey(file)) {
        var text = Files.readString(file);
        found.put(file, text);
        sources(file.getParent()).keySet().stream()
            .filter(other -> uses(text, other))
            .forEach(open::add);
      }
    }
    return found;
  }

  private static boolean uses(String text, Path other) {
    var name = other.getFileName().toString().replace(".java", "");
    return Pattern.compile("\\b" + name + "\\b").matcher(text).find();
  }

  static Set<String> rules() throws IOException {
    var rules = new TreeSet<>(Set.of("outside", "not-above-zero", "no-number", "does-not-hold"));
    var texts = String.join("\n", reachable().values()) + catalogue();
    RULE.matcher(texts).results().forEach(r -> rules.add(r.group(1)));
    return rules;
  }

  static Set<String> quantities() throws IOException {
    return reachable().values().stream()
        .flatMap(text -> QUANTITY.matcher(text).results().map(q -> told(text, q)))
        .map(FormulaWords::word)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What derivations look for; a reading that they miss has its name in the catalogue. */
  static Set<String> facts() throws IOException {
    return Stream.concat(
            FACT.matcher(Files.readString(known()))
                .results()
                .map(f -> f.group(1) == null ? f.group(2) : f.group(1)),
            MISSED.matcher(catalogue()).results().map(f -> f.group(1)))
        .filter(f -> !Set.of("voltage", "temperature", "rested", "gravity").contains(f))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String catalogue() throws IOException {
    return String.join("\n", sources(CATALOGUE).values());
  }

  private static Path known() {
    return CATALOGUE.resolve("Known.java");
  }

  private static String told(String text, MatchResult quantity) {
    var constants =
        CONSTANT
            .matcher(text)
            .results()
            .collect(Collectors.toMap(c -> c.group(1), c -> c.group(2), (a, b) -> a, TreeMap::new));
    var told = new StringBuilder();
    for (var part : quantity.group(1).split("\\s*\\+\\s*")) {
      told.append(
          part.startsWith("\"") ? part.replace("\"", "") : constants.getOrDefault(part, part));
    }
    return told.toString();
  }

  /** As {@code DoesNotHold} makes it. */
  private static String word(String what) {
    return what.toLowerCase(Locale.ROOT)
        .replaceFirst("^(an?|the) ", "")
        .replace("'", "")
        .replaceAll("[^a-z0-9]+", "-");
  }

  private static Map<Path, String> sources(Path folder) throws IOException {
    var sources = new TreeMap<Path, String>();
    try (var files = Files.list(folder)) {
      for (var file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        sources.put(file, Files.readString(file));
      }
    }
    return sources;
  }
}
