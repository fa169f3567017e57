/**
 * What a report says: every word, number and date ready to be printed, every reference resolved.
 */
@NullMarked
package org.seafettle.report;

import org.jspecify.annotations.NullMarked;
