/** Seafettle: from the survey of a boat's engines to a graded, dated condition report. */
@NullMarked
package org.seafettle;

import org.jspecify.annotations.NullMarked;
