package org.seafettle.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.seafettle.catalogue.Retelling;
import org.seafettle.json.CatalogueReader;

/**
 * A language that nobody speaks: every text in brackets, two fifths longer, without one plain Latin
 * letter. What is printed plainly in it was never asked of the words.
 */
final class PseudoLanguage {

  static final String NAME = "qps";

  private static final String PLAIN = "abcdefghijklmnopqrstuvwxyz";
  private static final String ACCENTED = "áƀçđéƒĝħîĵķļṁñöþɋŕšţûṽŵẋýž";

  /** Placeholders stay; everything else that has letters is a word. */
  private static final Pattern PART = Pattern.compile("\\{\\d}|[\\p{L}]+|.", Pattern.DOTALL);

  private PseudoLanguage() {}

  /** Writes its words and its catalogue into a folder of templates. */
  static void write(Path folder) {
    try {
      Files.createDirectories(folder);
      Files.writeString(folder.resolve("words-" + NAME + ".properties"), file(words()));
      Files.writeString(folder.resolve("catalogue-" + NAME + ".properties"), file(catalogue()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> words() throws IOException {
    var english = new Properties();
    try (var in = Files.newBufferedReader(Path.of("templates/words-en.properties"))) {
      english.load(in);
    }
    var words = new TreeMap<String, String>();
    for (var key : english.stringPropertyNames()) {
      var text = english.getProperty(key);
      boolean form = key.startsWith("format.");
      words.put(key, form ? form(key, text) : pseudo(text));
    }
    return words;
  }

  private static String form(String key, String text) {
    return switch (key) {
      case "format.decimal" -> ",";
      case "format.title-within" -> "kept";
      case "format.months", "format.months-short" ->
          Pattern.compile(", ")
              .splitAsStream(text)
              .map(PseudoLanguage::pseudo)
              .collect(Collectors.joining(", "));
      case "format.money-range" -> pseudo(text);
      default -> text;
    };
  }

  static Map<String, String> catalogue() {
    var texts = new LinkedHashMap<String, String>();
    Retelling.texts(CatalogueReader.supplied())
        .forEach((key, text) -> texts.put(key, pseudo(text)));
    return texts;
  }

  /** What has no letters needs no translator. */
  static String pseudo(String text) {
    if (text.replaceAll("\\{\\d}", "").chars().noneMatch(Character::isLetter)) {
      return text;
    }
    var said =
        PART.matcher(text)
            .results()
            .map(
                part ->
                    Character.isLetter(part.group().codePointAt(0))
                        ? longer(part.group())
                        : part.group())
            .collect(Collectors.joining());
    return "[" + said + "]";
  }

  /** Every word grows, since it is a long word that a narrow column cannot hold. */
  private static String longer(String word) {
    var said = new StringBuilder();
    word.codePoints().map(PseudoLanguage::accented).forEach(said::appendCodePoint);
    said.append("ö".repeat(Math.round(word.length() * 0.4f)));
    return said.toString();
  }

  private static int accented(int letter) {
    int small = PLAIN.indexOf(Character.toLowerCase(letter));
    if (small < 0) {
      return letter;
    }
    int accented = ACCENTED.codePointAt(small);
    return Character.isUpperCase(letter) ? Character.toUpperCase(accented) : accented;
  }

  private static String file(Map<String, String> texts) {
    return texts.entrySet().stream()
        .map(
            t ->
                t.getKey()
                    + "="
                    + t.getValue().replace("\\", "\\\\").replaceAll("^ ", "\\\\u0020")
                    + "\n")
        .collect(Collectors.joining());
  }
}
