/** Measures how long reports take; run by {@code mvn -B -Pbench verify -DskipTests}. */
@NullMarked
package org.seafettle.bench;

import org.jspecify.annotations.NullMarked;
