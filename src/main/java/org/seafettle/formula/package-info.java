/** The engineering: one small pure class a formula, each with its source and where it holds. */
@NullMarked
package org.seafettle.formula;

import org.jspecify.annotations.NullMarked;
