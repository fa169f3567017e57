/** What was recorded on the day: boat, engines, batteries, pumps, findings and photographs. */
@NullMarked
package org.seafettle.survey;

import org.jspecify.annotations.NullMarked;
