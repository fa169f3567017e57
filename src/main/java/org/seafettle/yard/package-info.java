/** A yard's season: what is kept of each boat, and what all boats together come to. */
@NullMarked
package org.seafettle.yard;

import org.jspecify.annotations.NullMarked;
