@NullMarked
package org.seafettle.html;

import org.jspecify.annotations.NullMarked;
