package org.seafettle.trend;

import java.util.List;

/**
 * How many of the orders, in which the same readings could have come, give each Mann-Kendall S. The
 * seasons are filled one after the other; what is known of the seasons before is which readings
 * they took, so that each set of readings is looked at once and not each of its orders.
 */
final class Orders {

  private final double[] values;
  private final double[] places;
  private final int middle;
  private final long[][] ways;

  private Orders(List<Course.Reading> readings) {
    values = readings.stream().mapToDouble(Course.Reading::value).toArray();
    places = readings.stream().mapToDouble(Course.Reading::at).toArray();
    middle = values.length * (values.length - 1) / 2;
    ways = new long[1 << values.length][0];
  }

  static Orders of(List<Course.Reading> readings) {
    var orders = new Orders(readings);
    orders.count();
    return orders;
  }

  long all() {
    return atLeast(0);
  }

  /** The orders whose S is at least so far from zero. */
  long atLeast(int distance) {
    long sum = 0;
    var complete = ways[ways.length - 1];
    for (int i = 0; i < complete.length; i++) {
      sum += Math.abs(i - middle) >= distance ? complete[i] : 0;
    }
    return sum;
  }

  /** A set is a number whose bits are the readings; a larger set is a larger number. */
  private void count() {
    ways[0] = new long[2 * middle + 1];
    ways[0][middle] = 1;
    for (int taken = 0; taken < ways.length - 1; taken++) {
      if (ways[taken].length > 0) {
        fillNextSeason(taken);
      }
    }
  }

  private void fillNextSeason(int taken) {
    int size = sizeOfSeason(Integer.bitCount(taken));
    int free = ways.length - 1 - taken;
    for (int next = free; next > 0; next = (next - 1) & free) {
      if (Integer.bitCount(next) == size) {
        add(taken, next, gain(taken, next));
      }
    }
  }

  private int sizeOfSeason(int first) {
    int end = first;
    while (end < places.length && places[end] == places[first]) {
      end++;
    }
    return end - first;
  }

  private void add(int taken, int next, int gain) {
    int together = taken | next;
    if (ways[together].length == 0) {
      ways[together] = new long[2 * middle + 1];
    }
    for (int i = Math.max(0, -gain); i < Math.min(2 * middle + 1, 2 * middle + 1 - gain); i++) {
      ways[together][i + gain] += ways[taken][i];
    }
  }

  private int gain(int earlier, int later) {
    int gain = 0;
    for (int i = 0; i < values.length; i++) {
      for (int j = 0; j < values.length; j++) {
        boolean inOrder = (earlier >> i & 1) == 1 && (later >> j & 1) == 1;
        gain += inOrder ? (int) Math.signum(values[j] - values[i]) : 0;
      }
    }
    return gain;
  }
}
