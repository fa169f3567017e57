/** What changed between seasons. */
@NullMarked
package org.seafettle.trend;

import org.jspecify.annotations.NullMarked;
