package org.seafettle.yard;

import java.util.HashSet;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Gives each boat's report a name of its own, whatever the others are called. */
public final class ReportNames {

  private final UnaryOperator<String> plain;
  private final UnaryOperator<String> mark;

  /**
   * @param plain turns a folder's name into characters that every system allows
   * @param mark a few characters that tell a folder's name from every other
   */
  public ReportNames(UnaryOperator<String> plain, UnaryOperator<String> mark) {
    this.plain = plain;
    this.mark = mark;
  }

  /**
   * A boat alone with her name keeps it; where several want the same, each is told by the folder
   * that her survey came in. It depends on nothing but the names.
   *
   * @param wanted the name that each source would get if it were alone
   * @return a name for each source, no two of them the same
   */
  public Map<String, String> give(SortedMap<String, String> wanted) {
    var often = counted(wanted);
    var told = new TreeMap<String, String>();
    wanted.forEach((source, name) -> told.put(source, name + "-" + plain.apply(source)));
    var toldOften = counted(told);
    var given = new TreeMap<String, String>();
    var taken = new HashSet<>(wanted.values());
    wanted.forEach(
        (source, name) -> {
          var other = told.get(source);
          boolean clear = toldOften.get(other) == 1 && !taken.contains(other);
          given.put(
              source,
              often.get(name) == 1 ? name : clear ? other : other + "-" + mark.apply(source));
        });
    return given;
  }

  private static Map<String, Long> counted(Map<String, String> names) {
    return names.values().stream()
        .collect(Collectors.groupingBy(name -> name, TreeMap::new, Collectors.counting()));
  }
}
