/** What is wrong with an input, where, and what to do about it. */
@NullMarked
package org.seafettle.problem;

import org.jspecify.annotations.NullMarked;
