/** What a printed document is held against. */
@NullMarked
package org.seafettle.pdf;

import org.jspecify.annotations.NullMarked;
