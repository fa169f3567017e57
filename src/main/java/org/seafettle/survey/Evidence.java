package org.seafettle.survey;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.seafettle.quantity.Quantity;

/**
 * What was seen and measured.
 *
 * @param words the catalogue's words for it; where several fit, the worst counts
 * @param readings what was measured, by the catalogue's names; several values for several cells or
 *     cylinders
 * @param conditions under which it was read, by the catalogue's words
 * @param last when it was last done, for what falls due
 */
public record Evidence(
    List<String> words,
    Map<String, List<Quantity>> readings,
    List<String> conditions,
    Optional<LastDone> last) {

  public static final Evidence NONE =
      new Evidence(List.of(), Map.of(), List.of(), Optional.empty());

  public Evidence {
    words = List.copyOf(words);
    readings = Collections.unmodifiableMap(new LinkedHashMap<>(readings));
    conditions = List.copyOf(conditions);
  }

  public Optional<Quantity> reading(String name) {
    return Optional.ofNullable(readings.get(name)).map(values -> values.get(0));
  }

  public List<Quantity> all(String name) {
    return readings.getOrDefault(name, List.of());
  }

  /**
   * When something that falls due was last done.
   *
   * @param date the day
   * @param at the engine's hours on that day
   */
  public record LastDone(LocalDate date, Optional<Quantity> at) {}
}
