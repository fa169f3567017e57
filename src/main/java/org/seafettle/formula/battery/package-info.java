/** What a starting battery holds, how long it lasts and what it should read. */
@NullMarked
package org.seafettle.formula.battery;

import org.jspecify.annotations.NullMarked;
