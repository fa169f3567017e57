package org.seafettle.html;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.seafettle.problem.Place;
import org.seafettle.problem.Problem;
import org.seafettle.problem.Refused;
import org.seafettle.problem.Spelling;

/** The files that a report is set with: templates, style sheet and words, by their names. */
public final class Templates {

  /** Every supplied file. A file of the user's own replaces the one of the same name. */
  static final List<String> NAMES =
      List.of(
          "pre-purchase.ftlh",
          "season-end.ftlh",
          "season-overview.ftlh",
          "yearly-record.ftlh",
          "screen.css",
          "style.css",
          "words-en.properties",
          "parts/actions.ftlh",
          "parts/document.ftlh",
          "parts/evidence.ftlh",
          "parts/findings.ftlh",
          "parts/method.ftlh",
          "parts/page-one.ftlh",
          "parts/scales.ftlh",
          "parts/unseen.ftlh",
          "parts/years.ftlh");

  private static final String FOLDER = "/org/seafettle/templates/";
  private static final Pattern CATALOGUE = Pattern.compile("catalogue-[a-z]{2,3}\\.properties");
  private static final String ENGLISH = "words-en.properties";
  private static final Pattern WORDS = Pattern.compile("words-([a-z]{2,3})\\.properties");

  private final Map<String, String> texts;
  private final Map<String, Place> replaced;

  private Templates(Map<String, String> texts, Map<String, Place> replaced) {
    this.texts = Collections.unmodifiableMap(texts);
    this.replaced = replaced;
  }

  /** Those that come with the program. */
  public static Templates supplied() {
    return new Templates(
        NAMES.stream()
            .collect(
                Collectors.toMap(name -> name, Templates::suppliedText, (a, b) -> a, TreeMap::new)),
        Map.of());
  }

  /**
   * Those that come with the program, save for those that a folder replaces. Of supplied words
   * single ones may be replaced; words and texts of the catalogue in another language may be added.
   *
   * @throws Refused where the folder cannot be read, or holds a file of another name
   */
  public static Templates with(Path folder) {
    var texts = new TreeMap<>(supplied().texts);
    var replaced = new TreeMap<String, Place>();
    var problems = new ArrayList<Problem>();
    for (var file : files(folder)) {
      var name = folder.relativize(file).toString().replace('\\', '/');
      if (NAMES.contains(name)
          || WORDS.matcher(name).matches()
          || CATALOGUE.matcher(name).matches()) {
        texts.put(name, WORDS.matcher(name).matches() ? over(texts, name, file) : text(file));
        replaced.put(name, Place.file(file.toString()));
      } else {
        problems.add(
            new Problem(
                Place.file(file.toString()),
                "No template is called " + name + ".",
                Spelling.hint(name, NAMES)));
      }
    }
    Refused.ifAny(problems);
    return new Templates(texts, replaced);
  }

  /** Of a key that is written twice, the later text is meant. */
  private static String over(Map<String, String> texts, String name, Path file) {
    return texts.getOrDefault(name, "") + "\n" + text(file);
  }

  private static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new Refused(
          new Problem(
              Place.file(folder.toString()),
              "There is no such folder of templates.",
              "Name a folder with templates in it, or leave the option out."));
    }
    try (var all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw unreadable(folder);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (CharacterCodingException e) {
      throw new Refused(
          new Problem(Place.file(file.toString()), "The file is not UTF-8.", "Save it as UTF-8."));
    } catch (IOException e) {
      throw unreadable(file);
    }
  }

  private static Refused unreadable(Path file) {
    return new Refused(
        new Problem(
            Place.file(file.toString()),
            "It cannot be read.",
            "See that it exists and that you may read it."));
  }

  private static String suppliedText(String name) {
    try (var in = Templates.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its template " + name);
      }
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text of a file, which has to be one of {@link #names}. */
  String text(String name) {
    return texts.get(name);
  }

  /** The names of all files, in alphabetical order. */
  public List<String> names() {
    return List.copyOf(texts.keySet());
  }

  /** SHA-256 of all names and texts, in hexadecimal: what is set with other files differs. */
  public String digest() {
    try {
      var digest = MessageDigest.getInstance("SHA-256");
      texts.forEach((name, text) -> digest.update((name + "\0" + text + "\0").getBytes(UTF_8)));
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }

  /** The languages of which there are words, in alphabetical order. */
  public List<String> languages() {
    return texts.keySet().stream()
        .map(WORDS::matcher)
        .filter(Matcher::matches)
        .map(name -> name.group(1))
        .toList();
  }

  /** Where a file is, as a person would look for it. */
  public Place place(String name) {
    return replaced.getOrDefault(name, Place.file("templates/" + name));
  }

  /**
   * The words of a language.
   *
   * @param language such as {@code en}
   * @throws Refused where there are none, or where a key is missing or unknown
   */
  public org.seafettle.report.Words words(String language) {
    return new WordFile(this).words(language, ENGLISH);
  }

  /** The name of the file with the catalogue's texts in a language. */
  public static String catalogueFile(String language) {
    return "catalogue-" + language + ".properties";
  }

  /**
   * The texts of the catalogue in a language by their keys; none where there is no such file.
   *
   * @throws Refused where the file cannot be read
   */
  public Map<String, String> catalogue(String language) {
    var name = catalogueFile(language);
    return texts.containsKey(name) ? new WordFile(this).parsed(name) : Map.of();
  }

  static Map<String, String> properties(String text) {
    var properties = new Properties();
    try {
      properties.load(new StringReader(text));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return properties.stringPropertyNames().stream()
        .collect(Collectors.toMap(k -> k, properties::getProperty, (a, b) -> a, TreeMap::new));
  }
}
