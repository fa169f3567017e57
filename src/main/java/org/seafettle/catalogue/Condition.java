package org.seafettle.catalogue;

/**
 * A condition under which a reading has to be taken to be as certain as its instrument. It is no
 * finding: where it was not met, or not recorded, the reading only counts as less certain.
 *
 * @param word by which a finding states that it was met
 * @param says what it asks for
 * @param otherwise the expanded uncertainty (k = 2) of a reading taken without it, in the unit of
 *     the reading
 */
public record Condition(String word, String says, double otherwise) {}
