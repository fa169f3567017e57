/** The powerhead: compression, sealed cases, hours, and the numbers on its labels. */
@NullMarked
package org.seafettle.formula.engine;

import org.jspecify.annotations.NullMarked;
