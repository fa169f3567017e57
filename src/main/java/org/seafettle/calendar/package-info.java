/** Reminders to an iCalendar file; knows nothing of engines. */
@NullMarked
package org.seafettle.calendar;

import org.jspecify.annotations.NullMarked;
