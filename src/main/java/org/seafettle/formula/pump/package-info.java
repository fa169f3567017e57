/** Bilge pumps, the water they must keep out, and the air of the spaces they stand in. */
@NullMarked
package org.seafettle.formula.pump;

import org.jspecify.annotations.NullMarked;
