/**
 * The same reading over the seasons: what changed, how fast, and whether chance would do as much.
 */
@NullMarked
package org.seafettle.trend;

import org.jspecify.annotations.NullMarked;
