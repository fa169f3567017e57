package org.seafettle.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.seafettle.quantity.MeasuredUnit;

/** What a report prints as the surveyor wrote it: names, notes, captions, numbers with units. */
final class SurveyorsWords {

  private static final Set<String> FREE =
      Set.of(
          "id",
          "place",
          "instruments",
          "name",
          "role",
          "contact",
          "hin",
          "maker",
          "model",
          "serial",
          "source",
          "on",
          "note",
          "not-inspected",
          "not-applicable",
          "partly",
          "done",
          "begun",
          "file",
          "caption",
          "says",
          "what",
          "by",
          "currency");

  private static final Pattern UNITS =
      Pattern.compile(
          "(?<=[\\d ])(?:"
              + Arrays.stream(MeasuredUnit.values())
                  .map(MeasuredUnit::symbol)
                  .filter(s -> !s.isEmpty())
                  .sorted(Comparator.comparing(String::length).reversed())
                  .map(Pattern::quote)
                  .collect(Collectors.joining("|"))
              + ")(?!\\p{L})");

  /** In groups of eight where it is whole, in three of four where it is short. */
  private static final Pattern HASH =
      Pattern.compile("\\b[0-9a-f]{4} [0-9a-f]{4} [0-9a-f]{4}\\b|\\b[0-9a-f]{8}\\b");

  private final List<String> words;

  private SurveyorsWords(Set<String> words) {
    this.words = words.stream().sorted(Comparator.comparing(String::length).reversed()).toList();
  }

  static SurveyorsWords of(Path survey) throws IOException {
    var words = new HashSet<String>();
    collect("", new ObjectMapper().readTree(Files.readString(survey)), words);
    return new SurveyorsWords(words);
  }

  private static void collect(String field, JsonNode node, Set<String> words) {
    if (node.isTextual() && FREE.contains(field)) {
      words.add(node.asText());
      words.add(node.asText().substring(node.asText().lastIndexOf('/') + 1));
    }
    node.properties().forEach(f -> collect(f.getKey(), f.getValue(), words));
    if (node.isArray()) {
      node.forEach(item -> collect(field, item, words));
    }
  }

  /** A printed text without what the surveyor wrote, in small letters. */
  String without(String printed) {
    var left = HASH.matcher(printed.replaceAll("[\\s\u00a0]+", " ")).replaceAll("");
    for (var word : words) {
      left =
          Pattern.compile(Pattern.quote(word), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
              .matcher(left)
              .replaceAll("");
    }
    return UNITS.matcher(left).replaceAll("");
  }
}
