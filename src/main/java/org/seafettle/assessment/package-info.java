/** The judgement: survey, catalogue and earlier surveys in, assessment out; a pure function. */
@NullMarked
package org.seafettle.assessment;

import org.jspecify.annotations.NullMarked;
