/** Machinery spaces: their ventilation and their fire extinguishers. */
@NullMarked
package org.seafettle.formula.space;

import org.jspecify.annotations.NullMarked;
