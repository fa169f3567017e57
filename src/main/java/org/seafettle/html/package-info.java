/** The view model and the templates in, XHTML out. */
@NullMarked
package org.seafettle.html;

import org.jspecify.annotations.NullMarked;
