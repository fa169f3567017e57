/**
 * What is looked for and how it is judged: checks, criteria, sources, causes, actions, cautions.
 */
@NullMarked
package org.seafettle.catalogue;

import org.jspecify.annotations.NullMarked;
