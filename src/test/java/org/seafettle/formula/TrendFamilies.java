package org.seafettle.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.seafettle.trend.Course;
import org.seafettle.trend.Line;
import org.seafettle.trend.MannKendall;
import org.seafettle.trend.Norris;
import org.seafettle.trend.Span;
import org.seafettle.trend.Spread;
import org.seafettle.trend.TheilSen;

/** SC: readings over the seasons. */
final class TrendFamilies {

  /** Gilbert 1987, example 16.3. */
  private static final Course GILBERT =
      Course.of(
          List.of(1.0, 1.0, 1.0, 2.0, 3.0, 3.0, 4.0, 5.0),
          List.of(10.0, 22.0, 21.0, 30.0, 22.0, 30.0, 40.0, 40.0));

  private TrendFamilies() {}

  static void addTo(Families f) {
    f.number("SC-MKS", in -> MannKendall.of(course(in)).s());
    f.number("SC-MKV", in -> MannKendall.of(course(in)).variance());
    f.number("SC-MKZ", in -> MannKendall.of(course(in)).z());
    f.number("SC-MKP", TrendFamilies::smallestChance);
    f.words("SC-TS", TrendFamilies::theilSen);
    f.number("SC-NOR", TrendFamilies::norris);
    f.words("SC-NPI", TrendFamilies::prediction);
    f.words("SC-HRS", TrendFamilies::hours);
  }

  private static Course course(Inputs in) {
    var values = numbers(in.text("y"));
    var t = in.text("t");
    return Course.of(t.startsWith("1..") ? count(values.size()) : numbers(t), values);
  }

  private static List<Double> numbers(String written) {
    return Stream.of(written.split(" ")).map(Double::valueOf).toList();
  }

  private static List<Double> count(int n) {
    return IntStream.rangeClosed(1, n).mapToObj(i -> (double) i).toList();
  }

  private static double smallestChance(Inputs in) {
    var n = count((int) in.number("n"));
    double p = MannKendall.of(Course.of(n, n)).p();
    return in.asks("two-sided") ? p : p / 2;
  }

  private static String theilSen(Inputs in) {
    if (in.has("y")) {
      var line = TheilSen.of(course(in));
      assertThat(in.asks("(Conover)")).isFalse();
      return "" + (in.asks("intercept") ? line.intercept() : line.slope());
    }
    in.text("Gilbert ex. 16.3 data");
    var line = TheilSen.of(GILBERT);
    if (!in.has("90 % limits") && !in.asks("90 %")) {
      return in.asks("number") ? "" + line.slopes().size() : "" + line.slope();
    }
    var test = MannKendall.of(GILBERT);
    if (in.has("90 % limits")) {
      in.text("90 % limits");
      double rank = line.lowerRank(test, 0.9);
      return "" + (in.asks("M1") ? rank : line.slopes().size() + 1 - rank);
    }
    var limits = line.limits(test, 0.9);
    return limits.low() + " " + limits.high();
  }

  private static double norris(Inputs in) {
    in.text("nist-norris.csv");
    var line = Line.of(Norris.course());
    return in.asks("sd(B0)")
        ? line.interceptDeviation()
        : in.asks("sd(B1)")
            ? line.slopeDeviation()
            : in.asks("B0")
                ? line.intercept()
                : in.asks("B1") ? line.slope() : norrisScatter(in, line);
  }

  private static double norrisScatter(Inputs in, Line line) {
    return in.asks("residual sd")
        ? line.residualDeviation()
        : in.asks("R2")
            ? line.explained()
            : in.asks("regression SS")
                ? line.regressionSquares()
                : in.asks("Norris F") ? line.f() : line.residualSquares();
  }

  private static String prediction(Inputs in) {
    var line = Line.of(Norris.course());
    if (in.has("nist-norris.csv")) {
      in.text("nist-norris.csv");
      return line.meanPlace() + " " + line.squares();
    }
    double place = in.number("x0");
    var reading = line.readingWithin(place, 0.95);
    var mean = line.lineWithin(place, 0.95);
    assertThat(Math.sqrt(half(reading) * half(reading) - half(mean) * half(mean)))
        .as("t s")
        .isCloseTo(in.number("t") * line.residualDeviation(), within(1e-6));
    return DoubleStream.of(line.at(place), half(reading), half(mean))
        .mapToObj(Double::toString)
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }

  private static double half(Span span) {
    return (span.high() - span.low()) / 2;
  }

  private static String hours(Inputs in) {
    var all = numbers(in.text("hours"));
    var spread = Spread.of(all);
    if (in.has("t")) {
      in.text("t");
      return "" + TheilSen.of(Course.of(count(all.size()), all)).slope();
    }
    if (in.asks("prediction")) {
      var next = spread.next(0.95);
      return half(next) + " " + next.low() + " " + next.high();
    }
    return in.asks("median")
        ? "" + spread.median()
        : spread.mean() + " " + spread.standardDeviation();
  }
}
