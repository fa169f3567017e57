/** Surveys, the catalogue and assessments in and out; the only place that knows Jackson. */
@NullMarked
package org.seafettle.json;

import org.jspecify.annotations.NullMarked;
