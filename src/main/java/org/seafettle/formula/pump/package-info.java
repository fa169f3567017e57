/** Bilge pumps and the water they must keep out. */
@NullMarked
package org.seafettle.formula.pump;

import org.jspecify.annotations.NullMarked;
