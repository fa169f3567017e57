/** Draws the photographs of the sample surveys, and checks that the samples tell their stories. */
@NullMarked
package org.seafettle.samples;

import org.jspecify.annotations.NullMarked;
