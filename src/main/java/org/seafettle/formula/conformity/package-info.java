/** Whether a reading with its uncertainty keeps a limit. */
@NullMarked
package org.seafettle.formula.conformity;

import org.jspecify.annotations.NullMarked;
