/** Fuel in the tank: water, age, density and the pressure of its system. */
@NullMarked
package org.seafettle.formula.fuel;

import org.jspecify.annotations.NullMarked;
