/** Service intervals in hours and on the calendar, and when the next one falls due. */
@NullMarked
package org.seafettle.formula.time;

import org.jspecify.annotations.NullMarked;
