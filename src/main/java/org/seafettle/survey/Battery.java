package org.seafettle.survey;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.seafettle.quantity.Quantity;

/**
 * A battery, or a bank of equal ones.
 *
 * @param id the word by which findings name it
 * @param serves the engines it cranks; none for a house bank, which counts for every engine
 * @param chemistry what it is made of, where it is known
 * @param nominal nominal voltage, 12 or 24 V
 * @param capacity at the 20-hour rate
 * @param cranking cold-cranking rating, in amperes
 * @param installed year in which it was fitted
 */
public record Battery(
    String id,
    List<String> serves,
    Optional<Chemistry> chemistry,
    Optional<Quantity> nominal,
    Optional<Quantity> capacity,
    Optional<Quantity> cranking,
    OptionalInt installed)
    implements Component {

  public Battery {
    serves = List.copyOf(serves);
  }

  @Override
  public Kind kind() {
    return Kind.BATTERY;
  }

  /** A battery that was fitted in another year is another battery. */
  @Override
  public boolean isSameAs(Component other) {
    return other instanceof Battery battery
        && id.equals(battery.id())
        && (installed.isEmpty()
            || battery.installed().isEmpty()
            || installed.equals(battery.installed()));
  }

  /** Whether an engine depends on it. */
  public boolean servesEngine(String engine) {
    return serves.isEmpty() || serves.contains(engine);
  }
}
