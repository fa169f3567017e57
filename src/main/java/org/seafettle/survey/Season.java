package org.seafettle.survey;

import java.time.MonthDay;

/**
 * The part of the year in which a boat is used.
 *
 * @param from its first day
 * @param to its last day, in the next year where it lies before the first
 */
public record Season(MonthDay from, MonthDay to) {}
