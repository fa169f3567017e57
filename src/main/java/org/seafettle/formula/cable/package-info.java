/** Wires: what they carry, what they lose and what protects them. */
@NullMarked
package org.seafettle.formula.cable;

import org.jspecify.annotations.NullMarked;
