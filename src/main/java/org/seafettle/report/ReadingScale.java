package org.seafettle.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.seafettle.assessment.Measured;
import org.seafettle.assessment.Result;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Measure;

/** A reading against its limits, drawn. */
final class ReadingScale {

  /** How wide the mark is drawn. */
  private static final double MARK = 12;

  private final Manuscript m;
  private final Measure measure;
  private final List<Stretch> stretches;
  private final ReadingWords words;

  ReadingScale(Manuscript m, Result result, Measured measured) {
    this.m = m;
    this.measure = measured.measure();
    this.stretches = Stretch.of(m, result, measure);
    this.words = new ReadingWords(m, result, measured);
  }

  private List<Double> limits() {
    return Stretch.limits(stretches);
  }

  /** Nothing is drawn where there is only one answer. */
  Optional<Scale> scale() {
    if (!words.limited()) {
      return Optional.empty();
    }
    var ruler = ruler();
    double value = measure.value();
    return Optional.of(
        new Scale(
            bands(ruler), ticks(ruler), ruler.at(value), Optional.empty(), bar(ruler), says()));
  }

  /** None where the mark would cover it: the words beside the drawing tell it. */
  private Optional<Scale.Bar> bar(Ruler ruler) {
    double half = measure.uncertainty().orElse(0);
    double from = measure.value() - half;
    double to = measure.value() + half;
    return ruler.place(to) - ruler.place(from) > MARK
        ? Optional.of(new Scale.Bar(ruler.at(from), ruler.at(to)))
        : Optional.empty();
  }

  private String says() {
    return m.words()
        .say(
            "scale.reading",
            words.name(),
            words.value(),
            m.phrases().list(limits().stream().map(words::told).toList()));
  }

  private Ruler ruler() {
    double u = measure.uncertainty().orElse(0);
    var all =
        DoubleStream.concat(
                limits().stream().mapToDouble(d -> d),
                DoubleStream.of(measure.value() - u, measure.value() + u))
            .summaryStatistics();
    double span = all.getMax() - all.getMin();
    double room = span > 0 ? span * 0.4 : Math.max(1e-3, Math.abs(all.getMax()) * 0.2);
    double least = all.getMin() >= 0 ? Math.max(0, all.getMin() - room) : all.getMin() - room;
    return new Ruler(least, all.getMax() + room);
  }

  private List<Scale.Band> bands(Ruler ruler) {
    return stretches.stream()
        .map(
            s ->
                ruler.band(
                    s.from().orElse(ruler.least()),
                    s.to().orElse(ruler.most()),
                    tint(s.judged()),
                    m.words().of("class-short", s.judged())))
        .toList();
  }

  private static Scale.Tint tint(FindingClass judged) {
    return switch (judged) {
      case STOP, BEFORE_USE -> Scale.Tint.GRAVE;
      case TIMELY, MONITOR, ADVICE -> Scale.Tint.MIDDLE;
      case OK -> Scale.Tint.SOUND;
    };
  }

  /** Every limit has its line; its value is left out where it would touch one nearer the mark. */
  private List<Scale.Tick> ticks(Ruler ruler) {
    var named = new TreeMap<Double, String>();
    var nearest =
        limits().stream()
            .sorted(Comparator.comparingDouble(limit -> Math.abs(limit - measure.value())))
            .toList();
    for (double limit : nearest) {
      var label = words.told(limit);
      boolean room =
          named.entrySet().stream()
              .allMatch(e -> ruler.apart(limit, label, e.getKey(), e.getValue()));
      if (room) {
        named.put(limit, label);
      }
    }
    return limits().stream()
        .map(limit -> ruler.tick(limit, named.getOrDefault(limit, "")))
        .toList();
  }
}
