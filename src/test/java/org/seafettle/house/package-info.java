@NullMarked
package org.seafettle.house;

import org.jspecify.annotations.NullMarked;
