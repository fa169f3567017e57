package org.seafettle.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Locale;
import org.seafettle.catalogue.Caution;
import org.seafettle.catalogue.Scope;
import org.seafettle.survey.Word;

/** Words, scopes and numbers as a person would say them. */
final class Spoken {

  private Spoken() {}

  static String word(Word word) {
    return word.word().replace('-', ' ');
  }

  /** A caution, and for what it is meant. */
  static String caution(Caution caution) {
    var scope = scope(caution.scope());
    return scope.isEmpty() ? caution.text() : upper(scope.substring(2)) + ": " + caution.text();
  }

  /** For what something is true, to follow a clause; empty where it is true for everything. */
  static String scope(Scope scope) {
    var words = new ArrayList<String>();
    scope.engines().stream().sorted().map(Spoken::word).forEach(words::add);
    scope.circuits().stream().sorted().map(Spoken::word).forEach(words::add);
    scope.waters().stream().sorted().map(w -> word(w) + " water").forEach(words::add);
    scope.chemistries().stream().sorted().map(Spoken::word).forEach(words::add);
    scope.afloat().ifPresent(afloat -> words.add(afloat ? "afloat" : "ashore"));
    scope.features().forEach((f, has) -> words.add((has ? "with " : "without ") + word(f)));
    return words.isEmpty() ? "" : "; for " + String.join(", ", words);
  }

  static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** The same with a capital letter at its beginning. */
  static String upper(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
