package org.seafettle.survey;

import java.util.Optional;
import org.seafettle.quantity.Quantity;

/**
 * A bilge pump.
 *
 * @param id the word by which findings name it
 * @param rated flow on its plate, at no head
 * @param draws current on its plate
 * @param fedBy the battery that feeds it
 */
public record Pump(
    String id, Optional<Quantity> rated, Optional<Quantity> draws, Optional<String> fedBy)
    implements Component {

  @Override
  public Kind kind() {
    return Kind.PUMP;
  }
}
