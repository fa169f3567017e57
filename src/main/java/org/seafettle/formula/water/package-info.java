/** Cooling water and antifreeze: when it freezes and what heat it carries away. */
@NullMarked
package org.seafettle.formula.water;

import org.jspecify.annotations.NullMarked;
