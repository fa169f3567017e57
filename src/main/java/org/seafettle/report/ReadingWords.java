package org.seafettle.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.seafettle.assessment.Measured;
import org.seafettle.assessment.Result;
import org.seafettle.catalogue.Condition;
import org.seafettle.catalogue.Interval;
import org.seafettle.catalogue.Measure;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Evidence;

/** A reading and its limits in words. */
final class ReadingWords {

  private final Manuscript m;
  private final Measured measured;
  private final Measure measure;
  private final List<Stretch> stretches;
  private final Result result;

  ReadingWords(Manuscript m, Result result, Measured measured) {
    this.m = m;
    this.result = result;
    this.measured = measured;
    this.measure = measured.measure();
    this.stretches = Stretch.of(m, result, measure);
  }

  /** The number, as it was read where it was read. */
  String value() {
    var read = shown().map(Measure.Shown::quantity);
    boolean asRead = read.filter(q -> same(q.in(measure.unit()), measure.value())).isPresent();
    if (asRead && (read.orElseThrow().plusMinus().isPresent() || measure.uncertainty().isEmpty())) {
      return m.phrases().evidence(List.of(read.orElseThrow()));
    }
    double uncertainty = measure.uncertainty().orElse(0);
    var oneOfSeveral = alike().map(Measure.Shown::quantity).filter(this::isTheNumber).findFirst();
    if (uncertainty <= 0 && oneOfSeveral.isPresent()) {
      return m.phrases().evidence(List.of(oneOfSeveral.get()));
    }
    return uncertainty > 0 ? uncertain(uncertainty) : computed(measure.value());
  }

  /** Three digits, or more where fewer would lay it on a limit or across one. */
  private String computed(double value) {
    var coarse = new BigDecimal(value).round(new MathContext(3, RoundingMode.HALF_EVEN));
    boolean sides =
        stretches.stream()
            .flatMap(s -> s.from().stream())
            .allMatch(l -> Double.compare(value, l) == Double.compare(coarse.doubleValue(), l));
    return told(sides && coarse.scale() >= 0 ? coarse.doubleValue() : value);
  }

  private String uncertain(double uncertainty) {
    var unit = unit();
    var half = Quantity.of(uncertainty, measure.unit()).differenceIn(unit);
    var value = Quantity.of(measure.value(), measure.unit()).in(unit);
    return m.phrases().uncertain(value, half, unit);
  }

  private boolean isTheNumber(Quantity read) {
    return same(read.in(measure.unit()), measure.value());
  }

  private static boolean same(double a, double b) {
    return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a));
  }

  private Optional<Measure.Shown> shown() {
    return alike().filter(s -> s.name().equals(measure.name())).findFirst().or(this::itself);
  }

  /** What was read in the number's own kind. */
  private Stream<Measure.Shown> alike() {
    return measure.shown().stream()
        .filter(s -> s.quantity().kind() == measure.unit().kind())
        .filter(s -> Units.isDifference(s.quantity().unit()) == Units.isDifference(measure.unit()));
  }

  /** A value of the scale in the unit in which the reading is told. */
  String told(double value) {
    if (isInterval()) {
      return m.phrases().percent(value);
    }
    var unit = unit();
    return m.phrases()
        .value(unit == measure.unit() ? value : Quantity.of(value, measure.unit()).in(unit), unit);
  }

  /** The reading of another name that the number is, such as the only laboratory content. */
  private Optional<Measure.Shown> itself() {
    var alike = alike().toList();
    return alike.size() == 1
        ? alike.stream()
            .filter(s -> !s.name().equals(measure.name()))
            .filter(s -> same(s.quantity().in(measure.unit()), measure.value()))
            .findFirst()
        : Optional.empty();
  }

  private MeasuredUnit unit() {
    return shown().map(s -> s.quantity().unit()).orElse(measure.unit());
  }

  String name() {
    var name = m.numberName(measure.name());
    return isDifference() ? m.words().say("reading.difference", name) : name;
  }

  /** How far values of one name lie apart has no name of its own. */
  private boolean isDifference() {
    var values = measure.shown().stream().filter(s -> s.name().equals(measure.name())).toList();
    return values.size() > 1
        && values.stream()
            .filter(s -> s.quantity().kind() == measure.unit().kind())
            .noneMatch(s -> same(s.quantity().in(measure.unit()), measure.value()));
  }

  /** The number and all that was read beside it. */
  String caption() {
    if (isInterval()) {
      return m.words().say("interval.used", value(), used());
    }
    return m.words().say("sentence", m.phrases().series(said()));
  }

  /** What was read, name by name, and under what conditions. */
  private List<String> said() {
    var beside =
        measure.shown().stream()
            .filter(s -> !s.name().equals(measure.name()) || measure.shown().size() > 1)
            .collect(
                Collectors.groupingBy(
                    Measure.Shown::name,
                    LinkedHashMap::new,
                    Collectors.mapping(Measure.Shown::quantity, Collectors.toList())));
    var said = new ArrayList<String>();
    var same = itself();
    same.ifPresent(s -> beside.remove(s.name()));
    var named = same.map(s -> m.numberName(s.name())).orElseGet(this::name);
    said.add(Phrases.capital(m.words().say("reading.named", named, value())));
    beside.forEach(
        (name, values) ->
            said.add(
                m.words().say("reading.named", m.numberName(name), m.phrases().evidence(values))));
    taken(m, result).ifPresent(said::add);
    return said;
  }

  /** Under what conditions it was read, where the check asks for some and the survey tells them. */
  static Optional<String> taken(Manuscript m, Result result) {
    var said = conditions(result, true);
    return said.isEmpty() ? Optional.empty() : Optional.of(m.phrases().series(said));
  }

  /** The conditions of its readings that the survey tells to have been met, or does not. */
  static List<String> conditions(Result result, boolean told) {
    var met = result.finding().map(f -> f.evidence().conditions()).orElse(List.of());
    var read = result.finding().map(f -> f.evidence().readings().keySet()).orElse(Set.of());
    return result.check().criterion().readings().stream()
        .filter(reading -> read.contains(reading.name()))
        .flatMap(reading -> reading.condition().stream())
        .filter(condition -> met.contains(condition.word()) == told)
        .map(Condition::says)
        .distinct()
        .toList();
  }

  /** Whether there is more than one answer. */
  boolean limited() {
    return stretches.size() > 1;
  }

  boolean isInterval() {
    return measure.name().equals(Interval.SHARE);
  }

  /** How much of an interval is over: {@code 14 of 12 months, 72 of 100 hours}. */
  String used() {
    var share = shareUsed();
    return result
        .finding()
        .flatMap(f -> f.evidence().last())
        .map(last -> m.words().say("interval.last", share, lastDone(last)))
        .orElse(share);
  }

  private String lastDone(Evidence.LastDone last) {
    var day = m.phrases().date(last.date());
    return last.at()
        .map(hours -> m.words().say("interval.last-at", day, m.phrases().quantity(hours)))
        .orElse(day);
  }

  private String shareUsed() {
    return m.phrases()
        .list(
            List.of("months", "hours").stream()
                .flatMap(
                    of ->
                        since("-since", of)
                            .flatMap(
                                s ->
                                    since("interval-", of)
                                        .map(i -> m.words().say("interval." + of, s, i)))
                            .stream())
                .toList());
  }

  private Optional<String> since(String which, String of) {
    var name = which.startsWith("-") ? of + which : which + of;
    return measure.shown().stream()
        .filter(s -> s.name().equals(name))
        .map(s -> m.phrases().value(s.quantity().value(), MeasuredUnit.ONE))
        .findFirst();
  }

  /** All limits in a sentence, each stretch with its class. */
  String limitsSaid() {
    return IntStream.range(0, stretches.size())
        .mapToObj(i -> isOneOfTwo(i) ? m.words().say("limit.found", said(i)) : said(i))
        .collect(Collectors.joining(m.words().say("list.apart")));
  }

  /** Where what was found lies beside a stretch of the same class, it is told which is which. */
  private boolean isOneOfTwo(int i) {
    var judged = stretches.get(i).judged();
    boolean before = i > 0 && stretches.get(i - 1).judged() == judged;
    boolean after = i + 1 < stretches.size() && stretches.get(i + 1).judged() == judged;
    return stretches.get(i).found() && (before || after);
  }

  /** On a limit the milder side holds. */
  private boolean isMilder(int i, int other) {
    return stretches.get(i).judged().compareTo(stretches.get(other).judged()) < 0;
  }

  private String said(int i) {
    var s = stretches.get(i);
    var judged = m.words().of("class", s.judged());
    if (s.from().isEmpty() && s.to().isEmpty()) {
      return judged;
    }
    if (s.from().isEmpty()) {
      var key = isMilder(i, i + 1) ? "limit.to" : "limit.below";
      return m.words().say(key, told(s.to().orElseThrow()), judged);
    }
    if (s.to().isEmpty()) {
      var key = isMilder(i, i - 1) ? "limit.from" : "limit.above";
      return m.words().say(key, told(s.from().orElseThrow()), judged);
    }
    return m.words()
        .say("limit.between", told(s.from().orElseThrow()), told(s.to().orElseThrow()), judged);
  }

  Measured measured() {
    return measured;
  }
}
