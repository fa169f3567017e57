package org.seafettle.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import org.seafettle.catalogue.Criterion.Derived;
import org.seafettle.catalogue.Criterion.Scale;
import org.seafettle.catalogue.Criterion.Spread;

/**
 * Tells a catalogue in other words. Every text that a reader sees has a key made of the words that
 * name its place in the data, such as {@code check.oil-level.title}; what judges stays as it is.
 */
public final class Retelling {

  private final BinaryOperator<String> teller;
  private final Map<String, String> names = new LinkedHashMap<>();

  private Retelling(BinaryOperator<String> teller) {
    this.teller = teller;
  }

  /**
   * The catalogue in other words.
   *
   * @param texts by key; what is missing stays as it is
   */
  public static Catalogue of(Catalogue catalogue, Map<String, String> texts) {
    return new Retelling(texts::getOrDefault).catalogue(catalogue);
  }

  /** Every text of a catalogue by its key, in the order of the data. */
  public static Map<String, String> texts(Catalogue catalogue) {
    var texts = new LinkedHashMap<String, String>();
    new Retelling(
            (key, text) -> {
              texts.put(key, text);
              return text;
            })
        .catalogue(catalogue);
    return texts;
  }

  private Catalogue catalogue(Catalogue told) {
    var sources = told.sources().stream().map(this::source).toList();
    var checks = told.checks().stream().map(this::check).toList();
    var patterns = told.patterns().stream().map(this::pattern).toList();
    return new Catalogue(told.version(), told.digest(), checks, patterns, sources, names);
  }

  /** An empty text says nothing in any language. */
  private String tell(String key, String text) {
    return text.isEmpty() ? text : teller.apply(key, text);
  }

  private void name(Catalogue.Named kind, String word) {
    var key = kind.key(word);
    names.put(key, tell(key, Catalogue.Named.plain(word)));
  }

  private Source source(Source source) {
    return new Source(source.id(), tell("source." + source.id(), source.title()), source.rank());
  }

  private Check check(Check check) {
    var key = "check." + check.id() + ".";
    return new Check(
        check.id(),
        check.subsystem(),
        check.on(),
        check.scope(),
        guidance(key, check.guidance()),
        criterion(key, check.criterion()),
        outcomes(key, check.outcomes()),
        check.expected());
  }

  private Check.Guidance guidance(String key, Check.Guidance guidance) {
    var how = new ArrayList<String>();
    guidance.how().forEach(step -> how.add(tell(key + "how." + (how.size() + 1), step)));
    return new Check.Guidance(
        tell(key + "title", guidance.title()),
        how,
        tell(key + "why", guidance.why()),
        tell(key + "instrument", guidance.instrument()),
        guidance.since(),
        guidance.again());
  }

  private Criterion criterion(String key, Criterion criterion) {
    if (criterion instanceof Scale scale) {
      return new Scale(reading(key, scale.reading()), scale.limits());
    } else if (criterion instanceof Spread spread) {
      return new Spread(
          reading(key, spread.reading()), spread.relative(), spread.unit(), spread.limits());
    } else if (criterion instanceof Derived derived) {
      name(Catalogue.Named.NUMBER, derived.derivation().word());
      return new Derived(
          derived.derivation(),
          derived.readings().stream().map(r -> reading(key, r)).toList(),
          derived.unit(),
          derived.limits());
    } else if (criterion instanceof Interval) {
      name(Catalogue.Named.NUMBER, Interval.SHARE);
    }
    return criterion;
  }

  private ReadingSpec reading(String key, ReadingSpec spec) {
    name(Catalogue.Named.NUMBER, spec.name());
    return spec.with(spec.condition().map(c -> condition(key, c)));
  }

  private Condition condition(String key, Condition condition) {
    return new Condition(
        condition.word(),
        tell(key + "condition." + condition.word(), condition.says()),
        condition.otherwise());
  }

  private List<Outcome> outcomes(String key, List<Outcome> outcomes) {
    var counted = new HashMap<String, Integer>();
    return outcomes.stream()
        .map(o -> outcome(key + o.name() + nth(counted, o.name()) + ".", o))
        .toList();
  }

  private Outcome outcome(String key, Outcome outcome) {
    var saying = outcome.saying();
    var citation = outcome.citation();
    return new Outcome(
        outcome.name(),
        outcome.scope(),
        outcome.findingClass(),
        new Outcome.Saying(
            tell(key + "observed", saying.observed()),
            tell(key + "brief", saying.brief()),
            tell(key + "means", saying.means())),
        outcome.advice().map(this::advice),
        new Citation(source(citation.source()), tell(key + "at", citation.at())),
        outcome.sayable());
  }

  private Outcome.Advice advice(Outcome.Advice advice) {
    return new Outcome.Advice(
        action(advice.action()), advice.by(), advice.stop(), advice.requiredByLaw());
  }

  private Action action(Action action) {
    action.parts().forEach(part -> name(Catalogue.Named.PART, part));
    return new Action(
        action.id(),
        tell("action." + action.id(), action.does()),
        action.who(),
        action.parts(),
        action.hours(),
        cautions(action.cautions()));
  }

  private List<Caution> cautions(List<Caution> cautions) {
    var counted = new HashMap<String, Integer>();
    return cautions.stream()
        .map(c -> caution("caution." + c.id() + nth(counted, c.id()), c))
        .toList();
  }

  private Caution caution(String key, Caution caution) {
    return new Caution(caution.id(), caution.scope(), tell(key, caution.text()));
  }

  /** What has one name for different boats is counted from the second on. */
  private static String nth(Map<String, Integer> counted, String name) {
    int n = counted.merge(name, 1, Integer::sum);
    return n > 1 ? "." + n : "";
  }

  private Pattern pattern(Pattern pattern) {
    var key = "pattern." + pattern.id() + ".";
    return new Pattern(
        pattern.id(),
        pattern.scope(),
        pattern.needs(),
        tell(key + "cause", pattern.cause()),
        tell(key + "reasoning", pattern.reasoning()),
        tell(key + "confirms", pattern.confirms()),
        tell(key + "rules-out", pattern.rulesOut()),
        pattern.explains(),
        pattern.onlySettled(),
        pattern.raise());
  }
}
