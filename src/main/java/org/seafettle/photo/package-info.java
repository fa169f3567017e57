/** Reads, checks, orients, scales, strips and fingerprints pictures. */
@NullMarked
package org.seafettle.photo;

import org.jspecify.annotations.NullMarked;
