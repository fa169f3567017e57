@NullMarked
package org.seafettle.report;

import org.jspecify.annotations.NullMarked;
