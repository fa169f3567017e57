package org.seafettle.yard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.seafettle.catalogue.FindingClass;
import org.seafettle.catalogue.Subsystem;
import org.seafettle.report.Forms;
import org.seafettle.report.Words;

/**
 * How many boats have how grave a finding open in each subsystem.
 *
 * @param heads what the columns and the stretches stand for, gravest first
 * @param bars one for each subsystem that any survey looks at
 */
public record FleetChart(List<Head> heads, List<Bar> bars) {

  /** Of a bar's drawing, in its own units. */
  private static final double WIDTH = 300;

  private static final String UNSEEN = "unseen";

  public FleetChart {
    heads = List.copyOf(heads);
    bars = List.copyOf(bars);
  }

  /**
   * What a column stands for.
   *
   * @param tint how its stretches are tinted: a class, or {@code unseen}
   * @param title in a word or two
   */
  public record Head(String tint, String title) {}

  /**
   * A subsystem.
   *
   * @param name of the subsystem
   * @param boats how many boats stand in each column; empty for none
   * @param stretches the same as lengths, from left to right, without empty ones
   * @param says the same in words
   */
  public record Bar(String name, List<String> boats, List<Stretch> stretches, String says) {

    public Bar {
      boats = List.copyOf(boats);
      stretches = List.copyOf(stretches);
    }
  }

  /**
   * A part of a bar.
   *
   * @param tint that of its column
   * @param x its left end
   * @param width its length
   */
  public record Stretch(String tint, String x, String width) {}

  static FleetChart of(Fleet fleet, Words words) {
    var heads = heads(words);
    return new FleetChart(
        heads,
        Arrays.stream(Subsystem.values())
            .filter(fleet::looksAt)
            .map(s -> bar(fleet, words, heads, s))
            .toList());
  }

  private static List<FindingClass> classes() {
    return Arrays.stream(FindingClass.values()).sorted(Comparator.reverseOrder()).toList();
  }

  private static List<Head> heads(Words words) {
    var heads = new ArrayList<Head>();
    classes().forEach(c -> heads.add(new Head(c.word(), words.of("class-short", c))));
    heads.add(new Head(UNSEEN, words.say("season.unseen")));
    return heads;
  }

  private static Bar bar(Fleet fleet, Words words, List<Head> heads, Subsystem subsystem) {
    var counts = new ArrayList<Integer>();
    classes().forEach(c -> counts.add(fleet.boats(subsystem, c)));
    counts.add(fleet.boatsUnseen(subsystem));
    var name = words.of("subsystem", subsystem);
    return new Bar(
        Forms.capital(name),
        counts.stream().map(n -> n == 0 ? "" : Integer.toString(n)).toList(),
        stretches(heads, counts),
        says(words, name, heads, counts));
  }

  private static List<Stretch> stretches(List<Head> heads, List<Integer> counts) {
    double all = counts.stream().mapToInt(n -> n).sum();
    var stretches = new ArrayList<Stretch>();
    double from = 0;
    for (int i = 0; i < counts.size(); i++) {
      if (counts.get(i) > 0) {
        double width = WIDTH * counts.get(i) / all;
        stretches.add(new Stretch(heads.get(i).tint(), written(from), written(width)));
        from += width;
      }
    }
    return stretches;
  }

  private static String says(Words words, String name, List<Head> heads, List<Integer> counts) {
    var said = new ArrayList<String>();
    for (int i = 0; i < counts.size(); i++) {
      if (counts.get(i) > 0) {
        said.add(words.say("season.bar-part", heads.get(i).title(), counts.get(i) + ""));
      }
    }
    return words.say("season.bar", name, String.join(words.say("list.between"), said));
  }

  private static String written(double place) {
    return String.format(Locale.ROOT, "%.1f", place);
  }
}
