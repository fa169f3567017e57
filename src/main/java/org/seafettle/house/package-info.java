/** The face that the one who writes a report gives it: name, address, logo, colour. */
@NullMarked
package org.seafettle.house;

import org.jspecify.annotations.NullMarked;
