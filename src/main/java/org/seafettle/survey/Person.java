package org.seafettle.survey;

import java.util.Optional;

/**
 * A person or firm.
 *
 * @param name as it is printed
 * @param role such as surveyor, yard, owner, buyer
 * @param contact how to reach them
 */
public record Person(String name, Optional<String> role, Optional<String> contact) {}
