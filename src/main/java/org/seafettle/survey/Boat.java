package org.seafettle.survey;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.seafettle.quantity.Quantity;

/**
 * The boat.
 *
 * @param name her name
 * @param hin hull identification number as read on the hull, 33 CFR 181.25 where it is of that form
 * @param length overall
 * @param built year of building, 1850 to 2100
 * @param water in which she lies
 * @param fuel in her tank
 * @param features what she is known to have ({@code true}) or not to have ({@code false})
 */
public record Boat(
    String name,
    Optional<String> hin,
    Optional<Quantity> length,
    OptionalInt built,
    Optional<Water> water,
    Optional<Fuel> fuel,
    Map<Feature, Boolean> features)
    implements Component {

  /** The word by which findings name the boat. */
  public static final String ID = "boat";

  public Boat {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a boat needs a name");
    }
    if (built.isPresent() && (built.getAsInt() < 1850 || built.getAsInt() > 2100)) {
      throw new IllegalArgumentException("built " + built.getAsInt());
    }
    features = Map.copyOf(features);
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Kind kind() {
    return Kind.BOAT;
  }

  /** The hull number in capitals without blanks and hyphens, to be held against another one. */
  public Optional<String> plainHin() {
    return hin.map(number -> number.replaceAll("[^A-Za-z0-9]", "").toUpperCase(Locale.ROOT));
  }

  /** Whether she has it, where that is known. */
  public Optional<Boolean> has(Feature feature) {
    return Optional.ofNullable(features.get(feature));
  }
}
