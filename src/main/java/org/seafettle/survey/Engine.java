package org.seafettle.survey;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.seafettle.quantity.Quantity;

/**
 * An engine.
 *
 * @param id the word by which findings name it, such as {@code port}
 * @param type its kind
 * @param plate what stands on its plate
 * @param cylinders their number, 1 to 24
 * @param power at the shaft
 * @param hours on its meter on the day of the survey
 * @param circuit how it is cooled; an outboard that does not say is raw-water cooled
 * @param limits what its maker's manual says, which beats the catalogue
 */
public record Engine(
    String id,
    EngineType type,
    Plate plate,
    OptionalInt cylinders,
    Optional<Quantity> power,
    Optional<Quantity> hours,
    Optional<Circuit> circuit,
    List<MakersLimit> limits)
    implements Component {

  public Engine {
    if (cylinders.isPresent() && (cylinders.getAsInt() < 1 || cylinders.getAsInt() > 24)) {
      throw new IllegalArgumentException("an engine of " + cylinders.getAsInt() + " cylinders");
    }
    if (circuit.isEmpty() && type.isOutboard()) {
      circuit = Optional.of(Circuit.RAW_WATER);
    }
    limits = List.copyOf(limits);
  }

  @Override
  public Kind kind() {
    return Kind.ENGINE;
  }

  /** An engine with another serial number is another engine, whatever it is called. */
  @Override
  public boolean isSameAs(Component other) {
    return other instanceof Engine engine
        && id.equals(engine.id())
        && (plate.serial().isEmpty()
            || engine.plate().serial().isEmpty()
            || plate.serial().equals(engine.plate().serial()));
  }

  public Engine withLimits(List<MakersLimit> others) {
    return new Engine(id, type, plate, cylinders, power, hours, circuit, others);
  }

  public Optional<MakersLimit> limit(String check) {
    return limits.stream().filter(l -> l.check().equals(check)).findFirst();
  }

  /**
   * What stands on an engine's plate.
   *
   * @param maker as written
   * @param model as written
   * @param serial as written
   * @param year of manufacture, 1900 to 2100
   */
  public record Plate(
      Optional<String> maker, Optional<String> model, Optional<String> serial, OptionalInt year) {

    public Plate {
      if (year.isPresent() && (year.getAsInt() < 1900 || year.getAsInt() > 2100)) {
        throw new IllegalArgumentException("an engine of the year " + year.getAsInt());
      }
    }
  }
}
