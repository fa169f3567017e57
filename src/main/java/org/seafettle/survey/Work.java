package org.seafettle.survey;

import java.time.LocalDate;
import java.util.Optional;
import org.seafettle.quantity.Quantity;

/**
 * An entry in the service log.
 *
 * @param date when
 * @param on the component
 * @param what was done
 * @param by whom
 * @param at the engine's hours then
 */
public record Work(
    LocalDate date, String on, String what, Optional<String> by, Optional<Quantity> at) {}
