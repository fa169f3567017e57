package org.seafettle.report;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.survey.Word;

/**
 * The sentences of a report in one language, by key. A text may ask for values by {@code {0}},
 * {@code {1}} and so on; nothing else in it has a meaning.
 */
public final class Words {

  /** The keys that templates use start so. */
  private static final String PAGE = "page.";

  private static final Pattern ASKS = Pattern.compile("\\{(\\d)}");

  private final Locale locale;
  private final Map<String, String> texts;

  /**
   * @param locale the language
   * @param texts by key
   */
  public Words(Locale locale, Map<String, String> texts) {
    this.locale = locale;
    this.texts = Collections.unmodifiableMap(new TreeMap<>(texts));
  }

  public Locale locale() {
    return locale;
  }

  public Set<String> keys() {
    return texts.keySet();
  }

  /**
   * A text with its values put in.
   *
   * @throws IllegalStateException where there is no such text, or it asks for more values
   */
  public String say(String key, String... values) {
    var text = texts.get(key);
    if (text == null) {
      throw new IllegalStateException("no words for " + key);
    }
    return ASKS.matcher(text).replaceAll(asked -> value(key, asked.group(1), values));
  }

  /** A text that need not be there, with its values put in. */
  Optional<String> find(String key, String... values) {
    return texts.containsKey(key) ? Optional.of(say(key, values)) : Optional.empty();
  }

  /**
   * The names of the months, from January.
   *
   * @param key of a text with twelve names between commas
   */
  List<String> months(String key) {
    return List.of(say(key).split("\\s*,\\s*"));
  }

  /** A text for a number of things, which is its first value. */
  public String count(String key, int number, String... more) {
    var values =
        Stream.concat(Stream.of(Integer.toString(number)), Arrays.stream(more))
            .toArray(String[]::new);
    return say(key + (number == 1 ? ".one" : ".other"), values);
  }

  /** The word for a member of a closed set. */
  public String of(String family, Word word) {
    return say(family + "." + word.word());
  }

  /** The texts that stand in the templates, by the last part of their keys. */
  public Map<String, String> labels() {
    return texts.entrySet().stream()
        .filter(text -> text.getKey().startsWith(PAGE))
        .collect(
            Collectors.toMap(
                text -> text.getKey().substring(PAGE.length()),
                Map.Entry::getValue,
                (a, b) -> a,
                TreeMap::new));
  }

  private static String value(String key, String asked, String... values) {
    int number = Integer.parseInt(asked);
    if (number >= values.length) {
      throw new IllegalStateException("the words for " + key + " ask for {" + asked + "}");
    }
    return Matcher.quoteReplacement(values[number]);
  }
}
