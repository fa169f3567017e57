/** Surveys, catalogue and assessments in and out; the only place that knows the JSON library. */
@NullMarked
package org.seafettle.json;

import org.jspecify.annotations.NullMarked;
