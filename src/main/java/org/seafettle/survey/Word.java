package org.seafettle.survey;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A closed set of words that a survey file may use, each written in lower case with hyphens. */
public interface Word {

  /** The word as the survey file writes it. */
  String word();

  static <E extends Enum<E> & Word> Optional<E> find(Class<E> words, String written) {
    return Arrays.stream(words.getEnumConstants())
        .filter(e -> e.word().equals(written))
        .findFirst();
  }

  static <E extends Enum<E> & Word> List<String> all(Class<E> words) {
    return Arrays.stream(words.getEnumConstants()).map(Word::word).toList();
  }

  /** The word that belongs to a constant's name: {@code BEFORE_USE} is {@code before-use}. */
  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
