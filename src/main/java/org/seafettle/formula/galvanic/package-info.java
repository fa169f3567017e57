/** Metals under water: the potential of a drive and the anodes that protect it. */
@NullMarked
package org.seafettle.formula.galvanic;

import org.jspecify.annotations.NullMarked;
