/** Numbers with units and uncertainty; the only place that knows units. */
@NullMarked
package org.seafettle.quantity;

import org.jspecify.annotations.NullMarked;
