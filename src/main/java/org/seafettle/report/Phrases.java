package org.seafettle.report;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.seafettle.quantity.MeasuredUnit;
import org.seafettle.quantity.Quantity;
import org.seafettle.survey.Component;
import org.seafettle.survey.Survey;

/** The small pieces that sentences about one survey are made of: also readings and names. */
final class Phrases extends Forms {

  /** More digits than that no reading has, and no computed number deserves. */
  private static final int MOST_DIGITS = 4;

  /** With fewer digits a limit that was converted would lie beside itself. */
  private static final int FEWEST_CONVERTED = 3;

  private final Units units;
  private final Survey survey;

  Phrases(Words words, Units units, Survey survey) {
    super(words);
    this.units = units;
    this.survey = survey;
  }

  /** A quantity in the units asked for, with the digits that it was recorded with. */
  String quantity(Quantity quantity) {
    return told(quantity.unit(), units.told(quantity));
  }

  /** The same without its uncertainty, for a narrow column. */
  String amount(Quantity quantity) {
    return quantity(new Quantity(quantity.amount(), Optional.empty(), quantity.unit()));
  }

  /** Readings in the units asked for, and as they were recorded where that is otherwise. */
  String evidence(List<Quantity> readings) {
    var told = joined(readings.stream().map(this::quantity));
    return readings.stream().allMatch(q -> units.instead(q.unit()) == q.unit())
        ? told
        : words().say("reading.converted", told, joined(readings.stream().map(this::recorded)));
  }

  private String joined(Stream<String> readings) {
    return readings.collect(Collectors.joining(words().say("list.readings")));
  }

  /**
   * A quantity as it was recorded; years, months and times a day in words, since their symbols are
   * not known.
   */
  String recorded(Quantity quantity) {
    return switch (quantity.unit()) {
      case YEAR -> spelled("unit.year", quantity);
      case MONTH -> spelled("unit.month", quantity);
      case PER_DAY -> spelled("unit.per-day", quantity);
      default -> digits(quantity.written());
    };
  }

  private String spelled(String key, Quantity quantity) {
    var number = new Quantity(quantity.amount(), quantity.plusMinus(), MeasuredUnit.ONE).written();
    return digits(words().say(key + (number.equals("1") ? ".one" : ".other"), number));
  }

  /** A computed value or a limit in the units asked for, rounded to what it deserves. */
  String value(double value, MeasuredUnit unit) {
    var instead = units.instead(unit);
    var told = instead == unit ? plain(value, MOST_DIGITS) : converted(value, unit);
    return told(unit, new Quantity(told, Optional.empty(), instead));
  }

  /** A limit of 0.7 bar is 10.2 psi and not 10.15 psi, yet not so coarse that readings touch it. */
  private BigDecimal converted(double value, MeasuredUnit unit) {
    int stated = BigDecimal.valueOf(value).stripTrailingZeros().precision();
    int digits = Math.min(MOST_DIGITS, Math.max(FEWEST_CONVERTED, stated));
    return plain(units.told(value, unit), digits);
  }

  /** A chance, 0 to 1; never told as certain. */
  String chance(double chance) {
    if (chance < 0.01) {
      return words().say("chance.least", percent(0.01));
    }
    return chance > 0.99 ? words().say("chance.most", percent(0.99)) : percent(chance);
  }

  /**
   * A value with its uncertainty, which is told to two digits, and the value no finer: without the
   * last of them where both end in 0.
   */
  String uncertain(double value, double uncertainty, MeasuredUnit unit) {
    var instead = units.instead(unit);
    var told =
        BigDecimal.valueOf(Quantity.of(uncertainty, unit).differenceIn(instead))
            .round(new MathContext(2, RoundingMode.HALF_UP));
    int decimals = Math.max(0, told.scale());
    var at = BigDecimal.valueOf(units.told(value, unit)).setScale(decimals, RoundingMode.HALF_EVEN);
    var half = told.setScale(decimals);
    while (half.scale() > 0 && isRound(at) && isRound(half)) {
      at = at.setScale(at.scale() - 1);
      half = half.setScale(half.scale() - 1);
    }
    return told(unit, new Quantity(at, Optional.of(half), instead));
  }

  private static boolean isRound(BigDecimal number) {
    return number.unscaledValue().mod(BigInteger.TEN).signum() == 0;
  }

  /** A difference of temperatures must not be read as a temperature. */
  private String told(MeasuredUnit as, Quantity quantity) {
    boolean mistakable = Units.isDifference(as) && !Units.isDifference(quantity.unit());
    return mistakable
        ? digits(words().say("unit.difference", recorded(quantity)))
        : recorded(quantity);
  }

  /** A difference or an uncertainty, told to two digits: 10 °C more are 18 °F more. */
  String difference(double value, MeasuredUnit unit) {
    var instead = units.instead(unit);
    var told = BigDecimal.valueOf(Quantity.of(value, unit).differenceIn(instead));
    return recorded(
        new Quantity(
            told.round(new MathContext(2, RoundingMode.HALF_UP)).stripTrailingZeros(),
            Optional.empty(),
            instead));
  }

  /** What a component is called in a sentence: {@code the port engine}. */
  String the(Component component) {
    return words().say("the." + kind(component), name(component));
  }

  /** What it is called in a table or a heading: {@code port engine}. */
  String title(Component component) {
    return words().say("title." + kind(component), name(component));
  }

  /** A name that already says what it is, such as {@code main-engine}, is not told so again. */
  private static String kind(Component component) {
    var kind = component.kind().name().toLowerCase(Locale.ROOT);
    return component.id().contains(kind) && component.kind() != Component.Kind.BOAT
        ? "named"
        : kind;
  }

  private String name(Component component) {
    return component.kind() == Component.Kind.BOAT ? survey.boat().name() : component.id();
  }

  private static BigDecimal plain(double value, int digits) {
    var context = new MathContext(digits, RoundingMode.HALF_EVEN);
    var rounded = BigDecimal.valueOf(value).round(context).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
