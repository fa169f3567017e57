/** Two surveys of one boat side by side. */
@NullMarked
package org.seafettle.difference;

import org.jspecify.annotations.NullMarked;
