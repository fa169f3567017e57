/** Commands, exit codes, wiring, clock and streams; nothing depends on it. */
@NullMarked
package org.seafettle.cli;

import org.jspecify.annotations.NullMarked;
