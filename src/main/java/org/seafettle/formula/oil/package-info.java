/** Engine and gearcase oil: what dilutes it, what wears into it and how thick it is. */
@NullMarked
package org.seafettle.formula.oil;

import org.jspecify.annotations.NullMarked;
